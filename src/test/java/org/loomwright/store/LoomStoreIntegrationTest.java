package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.loomwright.app.LoomContent;
import org.loomwright.app.LoomContents;
import org.loomwright.app.LoomStore;
import org.loomwright.app.LoomSummary;
import org.loomwright.app.NotFoundException;
import org.loomwright.app.Page;
import org.loomwright.app.PageKey;
import org.loomwright.app.StaleVersionException;
import org.loomwright.app.StoredLoom;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.loom.CustomColour;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Fitting;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.DatabaseTest;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.RandomLooms;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

@DatabaseTest
class LoomStoreIntegrationTest {

    private static final Instant NOON = Instant.parse("2026-03-04T12:00:00.123456Z");

    private final LoomStore looms;
    private final LoomContents contents;
    private final JdbcClient jdbc;
    private final TransactionTemplate inTransaction;

    @Autowired
    LoomStoreIntegrationTest(
            LoomStore looms,
            LoomContents contents,
            JdbcClient jdbc,
            TransactionTemplate inTransaction) {
        this.looms = looms;
        this.contents = contents;
        this.jdbc = jdbc;
        this.inTransaction = inTransaction;
    }

    @Test
    void testsRunInAConnectionZoneThatIsNotUtc() {
        assertThat(jdbc.sql("show timezone").query(String.class).single())
                .isEqualTo("Pacific/Chatham");
    }

    @Test
    void whatIsReadEqualsWhatWasWrittenInOrder() {
        for (int seed = 1; seed <= 20; seed++) {
            LoomDocument document = Contents.varied(seed, RandomLooms.Size.CAR);
            StoredLoom made = create(Contents.of(document), NOON);
            StoredLoom read = looms.get(made.id());
            assertThat(read.document()).isEqualTo(document.ordered());
            assertThat(read).isEqualTo(made);
            assertThat(read.createdAt()).isEqualTo(NOON);
            assertThat(Contents.of(read.document()).hash()).isEqualTo(read.contentHash());
        }
    }

    @Test
    void everyKindOfDeviceHasItsPlace() {
        LoomSketch sketch = new LoomSketch("N1").segment("S1", "N1", "N2", 600);
        for (DeviceKind kind : DeviceKind.values()) {
            sketch.device("D" + kind.ordinal(), kind, "N2");
        }
        LoomContent content = Contents.of(sketch.document());
        create(content, NOON);
        assertThat(contents.get(content.hash())).isEqualTo(content.document().ordered());
    }

    @Test
    void whatIsSaidOfDevicesPointsAndEndsComesBack() {
        Device box =
                new Device(
                        "D1",
                        "fuse box",
                        DeviceKind.FUSE_BOX,
                        null,
                        new Particulars(
                                "horns",
                                Current.ofMilliamperes(30_001),
                                Voltage.ofMillivolts(6_000),
                                EarthPolarity.NEGATIVE,
                                List.of(
                                        new FittedFuse(
                                                "B",
                                                "A",
                                                FuseStyle.GLASS_BLOW_MARKED,
                                                Current.ofMilliamperes(35_000)))),
                        List.of(
                                new Point("A", "N1", LoomSketch.mm(80), 50),
                                new Point("B", "N1", LoomSketch.mm(80), 1)));
        Wire wire =
                LoomSketch.plainWire("W1", "NU", "D1/A", "D2/1")
                        .withEnd(Side.A, new WireEnd("D1", "A", "ring-5", Fitting.AFTER_COVERING))
                        .withEnd(
                                Side.B,
                                new WireEnd("D2", "1", "bullet-4.7", Fitting.BEFORE_COVERING));
        LoomContent content =
                Contents.of(
                        new LoomSketch("N1")
                                .segment("S1", "N1", "N2", 600)
                                .device(box)
                                .device("D2", DeviceKind.HORN, "N2")
                                .wire(wire)
                                .document());
        create(content, NOON);
        assertThat(contents.get(content.hash())).isEqualTo(content.document().ordered());
    }

    @Test
    void coloursOfTheLoomComeBackWithTheWiresThatHaveThem() {
        LoomDocument document =
                oneWire("XDT", "14/0.30")
                        .document()
                        .withCustomColours(
                                List.of(
                                        new CustomColour("XD", "gold", "#c9a227"),
                                        new CustomColour("T", "tan", "#c8a06a")));
        LoomContent content = Contents.of(document);
        create(content, NOON);
        LoomDocument read = contents.get(content.hash());
        assertThat(read).isEqualTo(document.ordered());
        assertThat(Contents.of(read).hash()).isEqualTo(content.hash());
        assertThat(idsHaving("XDT")).hasSize(1);
    }

    @Test
    void contentIsKeptOnceHoweverManyNameIt() {
        LoomContent content = Contents.small(77);
        StoredLoom first = create(content, NOON);
        StoredLoom second = create(content, NOON);
        assertThat(first.id()).isNotEqualTo(second.id());
        assertThat(
                        jdbc.sql("select count(*) from loom_content where content_hash = ?")
                                .param(content.hash())
                                .query(Integer.class)
                                .single())
                .isEqualTo(1);
        assertThat(
                        jdbc.sql(
                                        """
                                        select count(distinct content_id) from loom
                                        where id in (?, ?)
                                        """)
                                .param(first.id())
                                .param(second.id())
                                .query(Integer.class)
                                .single())
                .isEqualTo(1);
    }

    @Test
    void aChangeCountsUpTheVersionAndKeepsTheOldContent() {
        LoomContent before = Contents.small(101);
        LoomContent after = Contents.small(102);
        StoredLoom made = create(before, NOON);
        StoredLoom changed = change(made, 1, after, NOON.plusSeconds(60));
        assertThat(changed.version()).isEqualTo(2);
        assertThat(changed).isEqualTo(looms.get(made.id()));
        assertThat(changed.document()).isEqualTo(after.document().ordered());
        assertThat(changed.createdAt()).isEqualTo(NOON);
        assertThat(changed.updatedAt()).isEqualTo(NOON.plusSeconds(60));
        assertThat(contents.find(before.hash())).contains(before.document().ordered());
    }

    @Test
    void aChangeFromAnOldVersionIsRefusedAndSaysSo() {
        StoredLoom made = create(Contents.small(103), NOON);
        change(made, 1, Contents.small(104), NOON);
        assertThatThrownBy(() -> change(made, 1, Contents.small(105), NOON))
                .isInstanceOfSatisfying(
                        StaleVersionException.class,
                        refusal -> {
                            assertThat(refusal.id()).isEqualTo(made.id().toString());
                            assertThat(refusal.expected()).isEqualTo(1);
                            assertThat(refusal.actual()).isEqualTo(2);
                        });
        assertThat(looms.get(made.id()).contentHash()).isEqualTo(Contents.small(104).hash());
        assertThat(contents.find(Contents.small(105).hash())).isEmpty();
    }

    @Test
    void aLoomThatIsNotThereIsNotFound() {
        UUID nobody = UUID.randomUUID();
        assertThat(looms.find(nobody)).isEmpty();
        assertThatThrownBy(() -> looms.get(nobody)).isInstanceOf(NotFoundException.class);
        assertThatThrownBy(
                        () ->
                                inTransaction.execute(
                                        status ->
                                                looms.change(
                                                        nobody, 1, "x", Contents.small(1), NOON)))
                .isInstanceOf(NotFoundException.class);
    }

    @Test
    void pagesHoldEveryLoomOnceWhileOthersAppear() {
        Instant start = Instant.parse("2040-01-01T00:00:00Z");
        LoomContent content = Contents.small(7);
        List<UUID> newestFirst = new ArrayList<>();
        for (int i = 0; i < 23; i++) {
            newestFirst.addFirst(create(content, start.plusSeconds(i / 5)).id());
        }
        List<UUID> seen = new ArrayList<>();
        PageKey key = new PageKey(start.plusSeconds(100), new UUID(-1, -1));
        for (int round = 0; round < 5; round++) {
            Page<LoomSummary> page = looms.list(key, 5);
            page.items().stream()
                    .filter(loom -> !loom.createdAt().isBefore(start))
                    .forEach(loom -> seen.add(loom.id()));
            create(content, start.plusSeconds(200 + round));
            key = PageKey.parse(page.nextKey() == null ? key.toText() : page.nextKey().toText());
        }
        assertThat(seen).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(newestFirst);
    }

    @Test
    void theLastPageHasNoNextKey() {
        Instant past = Instant.parse("1990-01-01T00:00:00Z");
        StoredLoom oldest = create(Contents.small(8), past);
        StoredLoom newer = create(Contents.small(8), past.plusSeconds(1));
        PageKey key = new PageKey(past.plusSeconds(2), newer.id());
        Page<LoomSummary> first = looms.list(key, 1);
        assertThat(first.items()).extracting(LoomSummary::id).containsExactly(newer.id());
        Page<LoomSummary> last = looms.list(first.nextKey(), 1);
        assertThat(last.items()).extracting(LoomSummary::id).containsExactly(oldest.id());
        assertThat(last.nextKey()).isNull();
    }

    @Test
    void aLineOfTheListCountsTheParts() {
        Instant at = Instant.parse("2050-01-01T00:00:00Z");
        StoredLoom loom = create(Contents.small(9), at);
        LoomSummary line = looms.list(new PageKey(at.plusSeconds(1), loom.id()), 1).items().get(0);
        assertThat(line.id()).isEqualTo(loom.id());
        assertThat(line.segments()).isEqualTo(loom.document().segments().size());
        assertThat(line.devices()).isEqualTo(loom.document().devices().size());
        assertThat(line.wires()).isEqualTo(loom.document().wires().size());
        assertThat(line.vehicle()).isEqualTo(loom.document().vehicle().name());
        assertThat(line.contentHash()).isEqualTo(loom.contentHash());
    }

    @Test
    void loomsAreFoundByTheColourOfAWireTheyHaveNow() {
        StoredLoom greenBrown = create(oneWire("GN", "9/0.30"), NOON);
        StoredLoom green = create(oneWire("G", "84/0.30"), NOON);
        StoredLoom repainted = create(oneWire("GN", "28/0.30"), NOON);
        change(repainted, 1, oneWire("GP", "28/0.30"), NOON);
        assertThat(idsHaving("GN")).contains(greenBrown.id());
        assertThat(idsHaving("GN")).doesNotContain(green.id(), repainted.id());
        assertThat(idsHaving("G")).contains(green.id()).doesNotContain(greenBrown.id());
        assertThat(idsHaving("GP")).contains(repainted.id());
        assertThat(looms.listHavingSize("84/0.30", null, 200).items())
                .extracting(LoomSummary::id)
                .contains(green.id())
                .doesNotContain(greenBrown.id());
    }

    @Test
    void theColourQuestionUsesItsIndex() {
        inTransaction.executeWithoutResult(
                status -> {
                    jdbc.sql("set local enable_seqscan = off").update();
                    List<String> plan =
                            jdbc.sql(
                                            """
                                            explain select content_id from wire
                                            where body = 'G' and tracer = 'N'
                                            """)
                                    .query(String.class)
                                    .list();
                    assertThat(String.join("\n", plan)).contains("wire_by_colour");
                });
    }

    @Test
    void aContentIsWrittenWholeOrNotAtAll() {
        LoomDocument whole = Contents.small(300).document();
        LoomDocument broken =
                new LoomDocument(
                        whole.name(),
                        whole.vehicle(),
                        "no such node",
                        whole.nodes(),
                        whole.segments(),
                        whole.devices(),
                        whole.wires(),
                        whole.checks());
        LoomContent content = new LoomContent("e".repeat(64), broken);
        assertThatThrownBy(() -> create(content, NOON)).hasMessageContaining("datum_is_a_node");
        assertThat(contents.find(content.hash())).isEmpty();
    }

    private List<UUID> idsHaving(String colour) {
        return looms.listHavingColour(WireColour.parse(colour), null, 200).items().stream()
                .map(LoomSummary::id)
                .toList();
    }

    private static LoomContent oneWire(String colour, String size) {
        LoomDocument plain =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 600)
                        .device("D1", DeviceKind.LAMP, "N1")
                        .device("D2", DeviceKind.SWITCH, "N2")
                        .wire("W1", colour, "D1/1", "D2/1")
                        .document();
        return Contents.of(
                new LoomDocument(
                        plain.name() + " " + colour + " " + size,
                        plain.vehicle(),
                        plain.datum(),
                        plain.nodes(),
                        plain.segments(),
                        plain.devices(),
                        plain.wires().stream().map(wire -> sized(wire, size)).toList(),
                        plain.checks()));
    }

    private static Wire sized(Wire wire, String size) {
        return new Wire(
                wire.id(),
                wire.circuit(),
                wire.colour(),
                size,
                wire.a(),
                wire.b(),
                wire.condition());
    }

    private StoredLoom create(LoomContent content, Instant at) {
        return inTransaction.execute(
                status -> looms.create(UUID.randomUUID(), "a loom", content, at));
    }

    private StoredLoom change(StoredLoom loom, long version, LoomContent content, Instant at) {
        return inTransaction.execute(
                status -> looms.change(loom.id(), version, loom.name(), content, at));
    }
}
