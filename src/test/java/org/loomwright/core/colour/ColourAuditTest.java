package org.loomwright.core.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.ColourBench.Way;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.util.List;
import java.util.Map;

class ColourAuditTest {

    private static List<Finding> audit(LoomSketch sketch) {
        return audit(sketch.loom());
    }

    private static List<Finding> audit(Loom loom) {
        return ColourAudit.of(ColourBench.traced(loom), ColourBench.CODE);
    }

    private static LoomSketch stopLampIn(String colour) {
        ColourBench bench = new ColourBench();
        bench.circuit("X", "stop lamp", DeviceKind.LAMP, "FUSE-BOX/A4", Way.SWITCH, colour);
        return bench.sketch();
    }

    private static Loom of(LoomSketch sketch, int year, String... notStandard) {
        LoomDocument old = sketch.document();
        VehicleSheet sheet = old.vehicle();
        LoomDocument document =
                new LoomDocument(
                        old.name(),
                        new VehicleSheet(
                                sheet.name(),
                                year,
                                sheet.hand(),
                                sheet.earth(),
                                sheet.system(),
                                List.of(notStandard)),
                        old.datum(),
                        old.nodes(),
                        old.segments(),
                        old.devices(),
                        old.wires(),
                        old.checks());
        return LoomChecker.check(document, TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    @ParameterizedTest(name = "a stop lamp leg in {0}: {1} {2}")
    @CsvSource({
        "RP, colour.contradicts-feed, WARNING",
        "N, colour.contradicts-feed, WARNING",
        "B, colour.contradicts-feed, WARNING",
        "YR, colour.contradicts-feed, NOTE",
        "GN, colour.contradicts-function, WARNING",
        "GY, colour.contradicts-function, WARNING",
    })
    void aWrongColourIsFound(String colour, String code, Severity severity) {
        assertThat(audit(stopLampIn(colour)))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo(code);
                            assertThat(finding.severity()).isEqualTo(severity);
                            assertThat(finding.subject().id()).isEqualTo("X-LEG");
                            assertThat(finding.text())
                                    .contains("IGN-SWITCH (IGN), fuse FUSE-BOX A3 to A4, X-SWITCH")
                                    .contains("GP (green with purple tracer) would be right");
                        });
    }

    @ParameterizedTest
    @CsvSource({"G", "GP", "GO", "LG", "GS"})
    void aColourThatNothingPublishedSpeaksAgainstIsLeftAlone(String colour) {
        assertThat(audit(stopLampIn(colour))).isEmpty();
    }

    @Test
    void whatRestsOnMemoryIsShownAsSuch() {
        assertThat(audit(stopLampIn("YR")))
                .singleElement()
                .satisfies(it -> assertThat(it.text()).contains("(from memory)"));
    }

    @Test
    void anEarthThatIsNotBlackIsFound() {
        LoomSketch sketch =
                new ColourBench()
                        .sketch()
                        .device(
                                ColourBench.device(
                                        "L1", "stop lamp", DeviceKind.LAMP, "N3", "FEED", "EARTH"))
                        .wire("X1", "G", "FUSE-BOX/A4", "L1/FEED")
                        .wire("X2", "N", "L1/EARTH", "STUD/STUD");

        assertThat(audit(sketch))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("colour.contradicts-feed");
                            assertThat(finding.subject().id()).isEqualTo("X2");
                            assertThat(finding.text())
                                    .contains("an earth: copper and earth screws alone")
                                    .contains("B (black) would be right");
                        });
    }

    @Test
    void aBodyWithATracerThatTheListLacksIsANote() {
        assertThat(audit(stopLampIn("GLG"))).isEmpty();
        assertThat(audit(stopLampIn("LGK")))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("colour.not-in-code");
                            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
                        });
    }

    @Test
    void onANewWireItIsAWarning() {
        TracedLoom traced = ColourBench.traced(stopLampIn("LGK").loom());
        assertThat(ColourAudit.of(traced, ColourBench.CODE, List.of("X-LEG")))
                .isEqualTo(ColourAudit.outsideCode(traced, ColourBench.CODE, List.of("X-LEG")))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("colour.not-in-code");
                            assertThat(finding.severity()).isEqualTo(Severity.WARNING);
                            assertThat(finding.text())
                                    .contains("LGK (light green with pink tracer)")
                                    .contains("say it in words");
                        });
        assertThat(ColourAudit.of(traced, ColourBench.CODE, List.of("F1")))
                .extracting(Finding::severity)
                .containsExactly(Severity.NOTE);
    }

    @Test
    void aVehicleOlderThanTheSchemeGetsNotesThatSaySo() {
        assertThat(audit(of(stopLampIn("GN"), 1933)))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
                            assertThat(finding.text())
                                    .contains("1933", "may follow another scheme");
                        });
    }

    @Test
    void aVehicleThatWasChangedMayFollowAnotherScheme() {
        assertThat(audit(of(stopLampIn("GN"), 1954, "Rewired in the rear.")))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.severity()).isEqualTo(Severity.WARNING);
                            assertThat(finding.text()).contains("may follow another scheme");
                        });
    }

    @Test
    void behindARelayTheBodyMayFollowWhatWorksTheRelay() {
        ColourBench green = new ColourBench();
        green.circuit("X", "fan heater", DeviceKind.MOTOR, "FUSE-BOX/A2", Way.RELAY, "GO");
        assertThat(audit(green.sketch())).isEmpty();

        ColourBench red = new ColourBench();
        red.circuit("X", "thing", DeviceKind.MOTOR, "FUSE-BOX/A2", Way.RELAY, "RO");
        assertThat(audit(red.sketch()))
                .extracting(Finding::code)
                .containsExactly("colour.contradicts-feed");
    }

    @Test
    void aWireThatNothingFeedsIsNotJudged() {
        ColourBench bench = new ColourBench();
        bench.sketch()
                .device(ColourBench.device("J1", "joint", DeviceKind.JOINT, "N2", "JOINT"))
                .device(ColourBench.device("J2", "joint", DeviceKind.JOINT, "N3", "JOINT"))
                .wire("X", "GP", "J1/JOINT", "J2/JOINT");
        assertThat(audit(bench.sketch())).isEmpty();
    }

    @Test
    void theEngineLoomOfTheDemonstrationHasNothing() {
        assertThat(audit(DemoLooms.engine())).isEmpty();
    }

    @Test
    void exactlyTheThreeWrongColoursOfTheDemonstrationAreFound() {
        assertThat(audit(DemoLooms.main()))
                .allMatch(finding -> finding.severity() == Severity.WARNING)
                .extracting(finding -> finding.subject().id() + " " + finding.code())
                .containsExactly(
                        "W014 colour.contradicts-feed",
                        "W024 colour.contradicts-function",
                        "W045 colour.contradicts-feed");
        assertThat(audit(DemoLooms.main()))
                .extracting(Finding::text)
                .satisfiesExactly(
                        text -> assertThat(text).contains("W (white) would be right"),
                        text -> assertThat(text).contains("GP (green with purple tracer) would be"),
                        text -> assertThat(text).contains("B (black) would be right"));
    }

    @Test
    void withThoseThreePutRightTheDemonstrationHasNothing() {
        Map<String, String> right = Map.of("W014", "W", "W024", "GP", "W045", "B");
        List<Amendment> replaced =
                DemoLooms.main().wires().values().stream()
                        .filter(wire -> right.containsKey(wire.id()))
                        .map(wire -> recoloured(wire, right.getOrDefault(wire.id(), "")))
                        .toList();
        Loom mended =
                Amendments.apply(DemoLooms.main(), replaced, TestCatalogue.get())
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()))
                        .loom();

        assertThat(replaced).hasSize(3);
        assertThat(audit(mended)).isEmpty();
        assertThat(ColourClash.in(ColourBench.traced(mended))).isEmpty();
    }

    private static Amendment recoloured(Wire wire, String letters) {
        return new Amendment.ReplaceWire(
                "A-" + wire.id(), "", wire.id(), WireColour.parse(letters), wire.size());
    }
}
