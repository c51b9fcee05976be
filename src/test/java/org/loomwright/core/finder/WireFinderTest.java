package org.loomwright.core.finder;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.TracedLoom;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome.Rejected;
import org.loomwright.core.loom.CustomColour;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.quantity.Length;
import org.loomwright.exchange.ColourFiles;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.solver.SparseCholesky;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.util.List;

/** Wires of the demonstration, as somebody would look for them. */
class WireFinderTest {

    private static final ColourCode CODE = ColourFiles.load(TestCatalogue.get());
    private static final TracedLoom TRACED = traced(DemoLooms.main());
    private static final Simulation SIMULATION = simulation(TRACED.loom());
    private static final WireFinder FINDER = new WireFinder(TRACED, CODE, SIMULATION);

    private static TracedLoom traced(Loom loom) {
        Tracing tracing = Tracing.of(loom, TestCatalogue.get(), ElectricalFiles.behaviours());
        return TracedLoom.of(loom, tracing, TestCatalogue.get());
    }

    private static Simulation simulation(Loom loom) {
        return new Simulation(
                loom,
                TestCatalogue.get(),
                TestCatalogue.electrical(),
                ElectricalFiles.behaviours(),
                ElectricalSettings.USUAL,
                new SparseCholesky());
    }

    private static FoundWires find(Sighting sighting) {
        return FINDER.find(sighting)
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    private static List<String> ids(Sighting sighting) {
        return find(sighting).wires().stream().map(found -> found.wire().id()).toList();
    }

    private static List<String> codes(Sighting sighting) {
        return FINDER.find(sighting) instanceof Rejected<FoundWires>(List<Finding> reasons)
                ? reasons.stream().map(Finding::code).toList()
                : List.of();
    }

    @ParameterizedTest
    @CsvSource({
        "GU, W030",
        "gu, W030",
        "green with blue tracer, W030",
        "green/blue, W030",
        "Green with a BLUE stripe, W030",
        "LGN, W032",
        "light green with brown tracer, W032",
        "purple with white tracer, W055",
        "violet with white, W055"
    })
    void aColourInLettersOrWordsFindsItsWireFirst(String colour, String wire) {
        assertThat(ids(Sighting.of(colour))).startsWith(wire);
        assertThat(find(Sighting.of(colour)).wires().getFirst().score()).isEqualTo(100);
    }

    @Test
    void aDarkTracerLeavesSeveralToChooseFrom() {
        FoundWires found = find(Sighting.of("green with a dark tracer").at("instrument panel end"));

        assertThat(found.wires())
                .extracting(it -> it.wire().colour().letters())
                .contains("GB", "GU")
                .allMatch(letters -> letters.length() > 1);
        assertThat(found.wires())
                .extracting(FoundWire::score)
                .isSortedAccordingTo((one, other) -> Integer.compare(other, one));
        assertThat(found.wires().getFirst().reasons()).contains("it leaves the loom there");
    }

    @Test
    void aLookAlikeIsFoundBehindWhatFitsAndSaysWhy() {
        List<FoundWire> found = find(Sighting.of("N with U or P")).wires();

        assertThat(found.getFirst().wire().colour()).isEqualTo(WireColour.parse("NU"));
        assertThat(find(Sighting.of("blue with white tracer")).wires())
                .filteredOn(it -> it.wire().colour().letters().equals("PW"))
                .isNotEmpty()
                .allSatisfy(
                        it -> {
                            assertThat(it.score()).isLessThan(100);
                            assertThat(it.reasons())
                                    .contains("P is taken for U in poor light (from memory)");
                        });
    }

    @Test
    void thePlaceTellsTwoWiresOfOneColourApart() {
        assertThat(ids(Sighting.of("GP").at("STOPLAMP-NS"))).startsWith("W025");
        assertThat(ids(Sighting.of("GP").at("stop switch end"))).startsWith("W023");
        assertThat(ids(Sighting.of("GP").at("n42"))).startsWith("W024");
    }

    @Test
    void theSizeHelps() {
        assertThat(ids(Sighting.of("N").ofSize("37/0.90"))).startsWith("W001");
        Length thick = TestCatalogue.get().getSize("84/.012").outsideDiameter();
        assertThat(ids(new Sighting("N", null, null, thick, ""))).startsWith("W003");
        assertThat(ids(new Sighting("N", null, 28, null, ""))).startsWith("W011");
    }

    @Test
    void itIsToldWhereAWireGoes() {
        FoundWire found = find(Sighting.of("GU")).wires().getFirst();

        assertThat(found.from())
                .isEqualTo(
                        "SENDER of TEMP-GAUGE (water temperature gauge), at N27 (instrument panel"
                                + " end)");
        assertThat(found.colour()).isEqualTo("GU (green with blue tracer)");
        assertThat(found.route()).startsWith("N27", "N26").endsWith("N08", "N09");
    }

    @Test
    void aWireBehindASwitchIsLiveOnlyWithIt() {
        List<Expected> expected = new Expectations(TRACED, SIMULATION).of("W024");

        assertThat(expected)
                .extracting(Expected::state)
                .containsExactly(
                        "IGN-SWITCH (IGN), STOP-SWITCH (OUT) on, all else off",
                        "STOP-SWITCH (OUT) on, all else off",
                        "IGN-SWITCH (IGN) on, all else off");
        assertThat(millivolts(expected.get(0))).isBetween(11_000L, 12_600L);
        assertThat(millivolts(expected.get(1))).isZero();
        assertThat(millivolts(expected.get(2))).isZero();
        assertThat(expected.get(1).words())
                .isEqualTo("about 0.0 V with STOP-SWITCH (OUT) on, all else off");
    }

    @Test
    void aHornsEarthSideIsLiveUntilThePushIsPressed() {
        List<Expected> expected = new Expectations(TRACED, SIMULATION).of("W051");

        assertThat(expected)
                .extracting(Expected::state)
                .containsExactly("every switch off", "HORN-PUSH (PUSH) on, all else off");
        assertThat(millivolts(expected.get(0))).isGreaterThan(12_000L);
        assertThat(millivolts(expected.get(1))).isLessThan(1_000L);
    }

    @Test
    void aWireBehindTheFlasherUnitNeedsTheIndicatorSwitch() {
        List<Expected> expected = new Expectations(TRACED, SIMULATION).of("W033");

        assertThat(expected.getFirst().state()).contains("IGN-SWITCH (IGN)", "INDICATOR-SWITCH");
        assertThat(millivolts(expected.getFirst())).isGreaterThan(11_000L);
        assertThat(expected.stream().skip(1)).isNotEmpty().allMatch(it -> millivolts(it) < 100);
    }

    @Test
    void aWireBehindARelayNeedsWhatWorksTheRelay() {
        TracedLoom amended = traced(DemoLooms.amended().loom());
        List<Expected> expected = new Expectations(amended, simulation(amended.loom())).of("W112");

        assertThat(expected.getFirst().state()).contains("LIGHT-SWITCH (SIDE)", "FOG-SWITCH (OUT)");
        assertThat(millivolts(expected.getFirst())).isGreaterThan(11_000L);
        assertThat(expected.stream().skip(1)).hasSize(2).allMatch(it -> millivolts(it) < 100);
    }

    private static long millivolts(Expected expected) {
        return expected.volts() == null ? Long.MIN_VALUE : expected.volts().millivolts();
    }

    @Test
    void theMeterIsPutTheRightWayRound() {
        assertThat(find(Sighting.of("GU")).meter())
                .startsWith("Positive earth: the meter's red lead to the body");
        assertThat(find(Sighting.of("GU")).caution()).contains("Disconnect the battery before");
    }

    @Test
    void aWrongQuestionIsAnsweredWithFindings() {
        assertThat(codes(Sighting.of(""))).containsExactly("finder.nothing-asked");
        assertThat(codes(Sighting.of("puce"))).containsExactly("finder.word-unknown");
        assertThat(codes(Sighting.of("x".repeat(201)))).containsExactly("finder.too-long");
        assertThat(codes(Sighting.of("GN").at("the moon"))).containsExactly("finder.place-unknown");
        assertThat(codes(new Sighting("GG", "1/1", 0, Length.ZERO, "y".repeat(201))))
                .containsExactlyInAnyOrder(
                        "finder.size-unknown",
                        "finder.strands-not-sane",
                        "finder.diameter-not-sane",
                        "finder.word-unknown",
                        "finder.place-unknown");
    }

    @Test
    void onlyTheFirstAreMeasuredAndTheRestIsCounted() {
        FoundWires found = find(Sighting.of("").at("instrument panel end"));

        assertThat(found.wires()).hasSize(WireFinder.MOST_LISTED);
        assertThat(found.passedOver()).isPositive();
        assertThat(found.wires().get(WireFinder.MOST_MEASURED).expected()).isEmpty();
        assertThat(found.wires().getFirst().expected()).isNotEmpty();
    }

    @Test
    void aColourOfTheLoomIsFoundByNameAndLetters() {
        LoomDocument document =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 600)
                        .device("D1", DeviceKind.LAMP, "N1")
                        .device("D2", DeviceKind.SWITCH, "N2")
                        .wire("W1", "GXD", "D1/1", "D2/1")
                        .document()
                        .withCustomColours(List.of(new CustomColour("XD", "Gold", "#c9a227")));
        Loom loom =
                LoomChecker.check(document, TestCatalogue.get())
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
        WireFinder finder = new WireFinder(traced(loom), CODE, simulation(loom));
        for (String seen : List.of("green with gold", "GXD", "gxd")) {
            FoundWires found =
                    finder.find(Sighting.of(seen))
                            .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
            assertThat(found.wires()).extracting(FoundWire::score).containsExactly(100);
            assertThat(found.wires().getFirst().colour()).isEqualTo("GXD (green with Gold tracer)");
        }
    }
}
