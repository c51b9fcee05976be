package org.loomwright.core.loom;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Colours that a loom declares: which are taken, and what they let through. */
class CustomColourCheckTest {

    private static final CustomColour GOLD = new CustomColour("XD", "gold", "#c9a227");
    private static final CustomColour TAN = new CustomColour("T", "tan", "#c8a06a");

    private static LoomDocument inColour(String letters, CustomColour... own) {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 600)
                .device("D1", DeviceKind.LAMP, "N1", "N1")
                .device("D2", DeviceKind.SWITCH, "N2", "N2")
                .wire("W1", letters, "D1/1", "D2/1")
                .document()
                .withCustomColours(List.of(own));
    }

    private static List<Finding> faults(LoomDocument document) {
        return LoomChecker.check(document, TestCatalogue.get())
                        instanceof Outcome.Rejected<Loom>(List<Finding> reasons)
                ? reasons
                : List.of();
    }

    private static Loom loom(LoomDocument document) {
        return LoomChecker.check(document, TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    @ParameterizedTest
    @CsvSource({"XD", "XDG", "GXD", "T", "TXD", "XDT", "LGT"})
    void aDeclaredColourIsBodyOrTracer(String letters) {
        assertThat(faults(inColour(letters, GOLD, TAN))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"XD", "XE", "GXE", "A", "GA"})
    void whatIsNotDeclaredIsStillRefused(String letters) {
        assertThat(faults(inColour(letters, TAN)))
                .extracting(Finding::code)
                .containsExactly("loom.colour-unknown");
    }

    @ParameterizedTest
    @CsvSource({
        "GD, gold, #c9a227, custom-colour-letters",
        "L, gold, #c9a227, custom-colour-letters",
        "X, gold, #c9a227, custom-colour-letters",
        "XDE, gold, #c9a227, custom-colour-letters",
        "d, gold, #c9a227, custom-colour-letters",
        "'', gold, #c9a227, custom-colour-letters",
        "N, gold, #c9a227, custom-colour-in-code",
        "LG, gold, #c9a227, custom-colour-in-code",
        "XD, '', #c9a227, custom-colour-name",
        "XD, ' gold', #c9a227, custom-colour-name",
        "XD, 24, #c9a227, custom-colour-name",
        "XD, light green, #c9a227, custom-colour-name-twice",
        "XD, PINK, #c9a227, custom-colour-name-twice",
        "XD, gold, #C9A227, custom-colour-swatch",
        "XD, gold, gold, custom-colour-swatch",
        "XD, gold, #c9a22, custom-colour-swatch",
    })
    void aColourThatCannotStandBesideTheCodeIsRefused(
            String letters, String name, String swatch, String code) {
        LoomDocument document = inColour("G", new CustomColour(letters, name, swatch));
        assertThat(faults(document))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("loom." + code);
                            assertThat(finding.subject().pointer()).isEqualTo("/customColours/0");
                            assertThat(finding.text()).contains("own colour");
                        });
    }

    @Test
    void lettersAndNamesStandOnce() {
        CustomColour again = new CustomColour("XD", "Gold", "#c9a227");
        assertThat(faults(inColour("XD", GOLD, again)))
                .extracting(finding -> finding.code() + " " + finding.subject().pointer())
                .containsExactly(
                        "loom.custom-colour-twice /customColours/1",
                        "loom.custom-colour-name-twice /customColours/1");
    }

    @Test
    void aLoomHasRoomForAFewOnly() {
        List<CustomColour> many = new ArrayList<>(Collections.nCopies(31, GOLD));
        assertThat(faults(inColour("G").withCustomColours(many)))
                .extracting(Finding::code)
                .containsExactly("loom.too-many");
    }

    @Test
    void aYarnMayHaveADeclaredColour() {
        Finish finish =
                new Finish(
                        "cotton-braid",
                        "XD",
                        List.of("T"),
                        12,
                        2,
                        new Evidence(Evidence.EvidenceKind.MEASURED, ""));
        LoomDocument braided =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 600)
                        .with("S1", segment -> segment.withFinish(finish))
                        .document();
        assertThat(faults(braided.withCustomColours(List.of(GOLD, TAN)))).isEmpty();
        assertThat(faults(braided)).extracting(Finding::code).contains("loom.colour-unknown");
    }

    @Test
    void theOrderOfDeclaringMeansNothing() {
        assertThat(loom(inColour("XD", GOLD, TAN))).isEqualTo(loom(inColour("XD", TAN, GOLD)));
        assertThat(loom(inColour("XD", GOLD, TAN))).isNotEqualTo(loom(inColour("XD", GOLD)));
    }

    @Test
    void amendmentsKeepAndMayUseThem() {
        Loom stock = loom(inColour("G", GOLD));
        Amendment replaced =
                new Amendment.ReplaceWire("A1", "", "W1", WireColour.parse("XDR"), "14/0.30");
        Loom amended =
                Amendments.apply(stock, List.of(replaced), TestCatalogue.get())
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()))
                        .loom();
        assertThat(amended.document().customColours()).containsExactly(GOLD);
        assertThat(amended.getWire("W1").colour().letters()).isEqualTo("XDR");

        Amendment unknown =
                new Amendment.ReplaceWire("A1", "", "W1", WireColour.parse("XE"), "14/0.30");
        assertThat(Amendments.apply(stock, List.of(unknown), TestCatalogue.get()))
                .isInstanceOfSatisfying(
                        Outcome.Rejected.class,
                        refused ->
                                assertThat(refused.reasons().toString())
                                        .contains("amendment.colour-unknown"));
    }

    @Test
    void theirFiguresAreTheLoomsOwnAndTheCodeStaysAsItIs() {
        Catalogue coloured = inColour("XD", GOLD).coloured(TestCatalogue.get());
        assertThat(coloured.findColour("XD").orElseThrow().provenance().status())
                .isEqualTo(Status.WORKSHOP);
        assertThat(coloured.colours()).isEqualTo(TestCatalogue.get().colours());
        assertThat(coloured.coloursWithOwn()).hasSize(coloured.colours().size() + 1);
        assertThat(TestCatalogue.get().findColour("XD")).isEmpty();
        assertThat(inColour("G").coloured(TestCatalogue.get())).isSameAs(TestCatalogue.get());
    }
}
