package org.loomwright.core.electrical.check.current;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.Figure;
import org.loomwright.core.electrical.check.current.CurrentChecks.Recorded;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.testing.LoomSketch;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Small looms whose figures are worked out by hand: 12.6 V and 10 mΩ in the battery, 3 mΩ in a contact, 2 mΩ in an earth screw. */
class CurrentChecksTest {

    private static final Scenario PARKED =
            Scenario.of("parked", Engine.OFF, Temperature.ofCelsius(20));
    private static final Scenario ON = PARKED.with("K", "OUT");

    /** Battery at N1, switch at N1, lamp at N2: W1 203 mm and W2 1218 mm with take-up. */
    private static LoomSketch lamp(long amperes, long segmentMm, String size) {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", segmentMm)
                .device(Checked.device("BATTERY", DeviceKind.BATTERY, null, "N1", "LIVE"))
                .device(Checked.device("K", DeviceKind.SWITCH, null, "N1", "FEED", "OUT"))
                .device(
                        Checked.device(
                                "L", DeviceKind.LAMP, Checked.amperes(amperes), "N2", "FEED"))
                .wire(Checked.wire("W1", "44/0.30", "BATTERY/LIVE", "K/FEED"))
                .wire(Checked.wire("W2", size, "K/OUT", "L/FEED"));
    }

    private static double value(Figure figure) {
        return figure.value().doubleValue();
    }

    private static double figure(ElectricalFinding finding) {
        return value(Objects.requireNonNull(finding.figure()));
    }

    private static double limit(ElectricalFinding finding) {
        return value(Objects.requireNonNull(finding.limit()));
    }

    @Test
    void aWireOverItsRatingIsAWarningAsOriginalAndShowsTheChain() {
        // 12 A lamp: 1 ohm; W1 6 mohm/m x 0.203 m = 1.218, contact 3, W2 18.9 x 1.218 = 23.02 mohm,
        // battery 10: 12.6 V / 1.0372 = 12.148 A.
        ElectricalFinding finding =
                Checked.only(
                        Checked.find(lamp(12, 1_000, "14/0.30").loom(), PARKED, ON),
                        "electrical.current-over-rating");
        assertThat(finding.finding().severity()).isEqualTo(Severity.WARNING);
        assertThat(finding.finding().subject().id()).isEqualTo("W2");
        assertThat(finding.scenario()).isEqualTo("parked");
        assertThat(figure(finding)).isCloseTo(12.148, within(0.002));
        assertThat(limit(finding)).isEqualTo(8.75);
        assertThat(value(finding.margin().orElseThrow())).isCloseTo(-3.398, within(0.002));
        assertThat(finding.finding().text())
                .contains("rated 8.75 A (published: T1)", "as original");
    }

    @Test
    void theSameWireIsAFaultWhenItIsNew() {
        Loom loom = lamp(12, 1_000, "14/0.30").loom();
        ElectricalFinding finding =
                Checked.only(
                        Checked.checks(loom)
                                .find(
                                        Checked.readings(loom, List.of(ON)),
                                        null,
                                        new Additions(Set.of("W2"), Set.of())),
                        "electrical.current-over-rating");
        assertThat(finding.finding().severity()).isEqualTo(Severity.FAULT);
        assertThat(finding.finding().text()).doesNotContain("original");
    }

    @Test
    void aRecordedWireThatTheAdditionsOverloadIsAFault() {
        Loom recorded = lamp(5, 1_000, "14/0.30").loom();
        Loom loom =
                lamp(5, 1_000, "14/0.30")
                        .device(
                                Checked.device(
                                        "L2", DeviceKind.LAMP, Checked.amperes(5), "N2", "FEED"))
                        .wire(Checked.wire("W3", "14/0.30", "L/FEED", "L2/FEED"))
                        .loom();
        ElectricalFinding finding =
                Checked.only(
                        Checked.checks(loom)
                                .find(
                                        Checked.readings(loom, List.of(ON)),
                                        new Recorded(
                                                recorded, Checked.readings(recorded, List.of(ON))),
                                        new Additions(Set.of("W3"), Set.of("L2"))),
                        "electrical.current-over-rating");
        assertThat(finding.finding().severity()).isEqualTo(Severity.FAULT);
        assertThat(finding.finding().subject().id()).isEqualTo("W2");
        assertThat(finding.finding().text()).contains("As recorded (5.1");
    }

    @Test
    void whatIsNotKnownOfTheRecordedLoomIsNotBlamedOnAnybody() {
        Loom loom = lamp(12, 1_000, "14/0.30").loom();
        ElectricalFinding finding =
                Checked.only(
                        Checked.checks(loom)
                                .find(
                                        Checked.readings(loom, List.of(ON)),
                                        new Recorded(loom, List.of()),
                                        new Additions(Set.of(), Set.of("L"))),
                        "electrical.current-over-rating");
        assertThat(finding.finding().severity()).isEqualTo(Severity.WARNING);
        assertThat(finding.finding().text()).contains("is not known").doesNotContain("so as");
    }

    @Test
    void theShareThatALoadLosesIsThatOfTheResistancesInSeries() {
        // 5 A lamp: 2.4 ohm behind W1 1.218, contact 3 and 10.353 m of W2: 195.7 mohm as 14/0.30,
        // 304.4 as 9/0.30. So 199.9 / 2599.9 = 7.69 % and 308.6 / 2708.6 = 11.39 %.
        List<ElectricalFinding> thick = Checked.find(lamp(5, 10_000, "14/0.30").loom(), PARKED, ON);
        List<ElectricalFinding> thin = Checked.find(lamp(5, 10_000, "9/0.30").loom(), PARKED, ON);

        assertThat(Checked.of(thick, "electrical.voltage-drop")).isEmpty();
        ElectricalFinding finding = Checked.only(thin, "electrical.voltage-drop");
        assertThat(figure(finding)).isCloseTo(11.39, within(0.02));
        assertThat(limit(finding)).isEqualTo(10);
        assertThat(finding.finding().severity()).isEqualTo(Severity.WARNING);
        assertThat(finding.finding().subject().id()).isEqualTo("L");
        assertThat(finding.finding().text()).contains("lost in wire W2", "V1", "from memory");
    }

    @Test
    void aNewLoadIsHeldToTheAimAsWell() {
        Loom loom = lamp(5, 10_000, "14/0.30").loom();
        ElectricalFinding finding =
                Checked.only(
                        Checked.checks(loom)
                                .find(
                                        Checked.readings(loom, List.of(ON)),
                                        null,
                                        new Additions(Set.of("W2"), Set.of("L"))),
                        "electrical.voltage-drop");
        assertThat(finding.finding().severity()).isEqualTo(Severity.NOTE);
        assertThat(figure(finding)).isCloseTo(7.69, within(0.02));
        assertThat(limit(finding)).isEqualTo(5);
    }

    @Test
    void theWayBackCountsAndTheLampBetweenTwoSourcesDoesNot() {
        Loom loom =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 10_000)
                        .device(
                                Checked.device(
                                        "BATTERY", DeviceKind.BATTERY, null, "N1", "LIVE", "EARTH"))
                        .device(Checked.device("D", DeviceKind.DYNAMO, null, "N2", "D"))
                        .device(
                                Checked.device(
                                        "WARN",
                                        DeviceKind.LAMP,
                                        Checked.amperes(1),
                                        "N1",
                                        "IGN",
                                        "DYNAMO"))
                        .device(
                                Checked.device(
                                        "L",
                                        DeviceKind.LAMP,
                                        Checked.amperes(5),
                                        "N2",
                                        "FEED",
                                        "EARTH"))
                        .device(Checked.device("E1", DeviceKind.EARTH_POINT, null, "N2", "STUD"))
                        .device(Checked.device("E2", DeviceKind.EARTH_POINT, null, "N1", "STUD"))
                        .wire(Checked.wire("W1", "14/0.30", "BATTERY/LIVE", "L/FEED"))
                        .wire(Checked.wire("W2", "14/0.30", "L/EARTH", "E1/STUD"))
                        .wire(Checked.wire("W3", "14/0.30", "E2/STUD", "BATTERY/EARTH"))
                        .wire(Checked.wire("W4", "14/0.30", "BATTERY/LIVE", "WARN/IGN"))
                        .wire(Checked.wire("W5", "14/0.30", "WARN/DYNAMO", "D/D"))
                        .loom();
        List<Observed> observed =
                Observations.of(
                                loom,
                                Checked.allowed(loom),
                                Checked.readings(loom, List.of(PARKED)))
                        .scenarios();
        assertThat(observed.getFirst().paths())
                .singleElement()
                .satisfies(
                        path -> {
                            assertThat(path.key()).startsWith("L ");
                            assertThat(path.edges())
                                    .extracting(Flow.Edge::wire)
                                    .containsExactly("W1", "W2", null, null, "W3");
                        });
    }

    private static LoomSketch fused(Particulars fuse, long lampAmperes, String size) {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 1_000)
                .device(Checked.device("BATTERY", DeviceKind.BATTERY, null, "N1", "LIVE"))
                .device(Checked.device("F", DeviceKind.FUSE, null, fuse, "N1", "IN", "OUT"))
                .device(
                        Checked.device(
                                "L", DeviceKind.LAMP, Checked.amperes(lampAmperes), "N2", "FEED"))
                .wire(Checked.wire("W1", "44/0.30", "BATTERY/LIVE", "F/IN"))
                .wire(Checked.wire("W2", size, "F/OUT", "L/FEED"));
    }

    @Test
    void aFuseThatCarriesMoreThanTheWireBehindItIsToldWithThatWire() {
        Loom loom = fused(Checked.fused(FuseStyle.BLADE, 15), 5, "14/0.30").loom();
        ElectricalFinding finding =
                Checked.only(Checked.find(loom, PARKED), "electrical.fuse-over-wire");
        assertThat(finding.finding().severity()).isEqualTo(Severity.WARNING);
        assertThat(figure(finding)).isEqualTo(15);
        assertThat(limit(finding)).isEqualTo(8.75);
        assertThat(finding.finding().text()).contains("wire W2");
        // 5.2 A through it: 7.5 A x 0.8 = 6 A leaves room, and 7.5 A is not more than 8.75 A.
        assertThat(finding.remedy()).contains("marked 7.5 A");
    }

    @Test
    void theWireBeforeTheFuseIsNotProtectedByIt() {
        Loom loom = fused(Checked.fused(FuseStyle.BLADE, 20), 5, "44/0.30").loom();
        assertThat(Checked.of(Checked.find(loom, PARKED), "electrical.fuse-over-wire")).isEmpty();
    }

    @Test
    void aGlassFuseIsReadByWhatItCarriesAndItsTrapIsExplained() {
        // 35 on glass carries 17.5 A, which a 28/0.30 of 17.5 A stands; a blade of 35 A would not
        // do.
        Loom loom = fused(Checked.fused(FuseStyle.GLASS_BLOW_MARKED, 35), 5, "28/0.30").loom();
        List<ElectricalFinding> found = Checked.find(loom, PARKED);
        assertThat(Checked.of(found, "electrical.fuse-over-wire")).isEmpty();
        ElectricalFinding trap = Checked.only(found, "electrical.fuse-marking");
        assertThat(trap.finding().severity()).isEqualTo(Severity.NOTE);
        assertThat(trap.finding().text()).contains("35 A on it is where it blows", "17.5 A");
        assertThat(trap.remedy()).contains("a blade of at most 15 A");
    }

    @Test
    void aFuseIsToldWhenItsLoadIsTooMuch() {
        // 5 A lamp draws about 5.2 A: more than 5 A carries, more than 0.8 x 6.5.
        ElectricalFinding beyond =
                Checked.only(
                        Checked.find(
                                fused(Checked.fused(FuseStyle.BLADE, 5), 5, "14/0.30").loom(),
                                PARKED),
                        "electrical.fuse-under-load");
        assertThat(beyond.finding().severity()).isEqualTo(Severity.WARNING);
        assertThat(limit(beyond)).isEqualTo(5);

        ElectricalFinding aim =
                Checked.only(
                        Checked.find(
                                fused(Checked.fused(FuseStyle.BLADE, 6), 5, "14/0.30").loom(),
                                PARKED),
                        "electrical.fuse-under-load");
        assertThat(aim.finding().severity()).isEqualTo(Severity.NOTE);
        assertThat(limit(aim)).isEqualTo(4.8);
        assertThat(aim.finding().text()).contains("from memory");
        assertThat(aim.remedy()).contains("7.5 A blade");
    }

    @Test
    void aFuseThatNobodyStatedIsUnknown() {
        Loom loom = fused(Particulars.NONE, 5, "14/0.30").loom();
        assertThat(Checked.only(Checked.find(loom, PARKED), "electrical.fuse-unknown").finding())
                .satisfies(
                        finding -> {
                            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
                            assertThat(finding.text()).contains("live wires behind it: 1");
                        });
    }

    private static List<ElectricalFinding> allNew(Loom loom) {
        return Checked.checks(loom)
                .find(
                        Checked.readings(loom, List.of(PARKED)),
                        null,
                        new Additions(loom.wires().keySet(), loom.devices().keySet()));
    }

    @Test
    void aNewWireToAFuseMayBeAsLongAsTheRuleSays() {
        // Straight from the battery: 1.8 m. W1 is two tails of 100 mm, then the segment is added.
        assertThat(Checked.of(allNew(battery(1_600)), "electrical.fuse-far-from-source")).isEmpty();
        ElectricalFinding far =
                Checked.only(allNew(battery(1_601)), "electrical.fuse-far-from-source");
        assertThat(figure(far)).isEqualTo(1_801);
        assertThat(limit(far)).isEqualTo(1_800);
        assertThat(Checked.of(allNew(battery(1_601)), "electrical.unfused-new")).isEmpty();
    }

    private static Loom battery(long segmentMm) {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", segmentMm)
                .device(Checked.device("BATTERY", DeviceKind.BATTERY, null, "N1", "LIVE"))
                .device(
                        Checked.device(
                                "F",
                                DeviceKind.FUSE,
                                null,
                                Checked.fused(FuseStyle.BLADE, 10),
                                "N2",
                                "IN",
                                "OUT"))
                .device(Checked.device("L", DeviceKind.LAMP, Checked.amperes(5), "N2", "FEED"))
                .wire(Checked.wire("W1", "44/0.30", "BATTERY/LIVE", "F/IN"))
                .wire(Checked.wire("W2", "44/0.30", "F/OUT", "L/FEED"))
                .loom();
    }

    @Test
    void aNewWireToALoadWithoutAFuseIsAWarningAndARecordedOneANoteWithItsMetres() {
        Loom loom = lamp(5, 1_000, "14/0.30").loom();
        assertThat(Checked.of(allNew(loom), "electrical.unfused-new"))
                .extracting(one -> one.finding().subject().id())
                .containsExactly("W1", "W2");
        assertThat(Checked.of(Checked.find(loom, PARKED), "electrical.unfused-original"))
                .allSatisfy(one -> assertThat(one.finding().severity()).isEqualTo(Severity.NOTE))
                .extracting(one -> one.finding().text())
                .containsExactly(
                        "Circuit 'circuit of W1' has 0.2 m of live wire without a fuse (W1), as"
                                + " original.",
                        "Circuit 'circuit of W2' has 1.2 m of live wire without a fuse (W2), as"
                                + " original.");
    }

    private static Loom withSwitch(Particulars particulars, long lamps) {
        LoomSketch sketch =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 1_000)
                        .device(Checked.device("BATTERY", DeviceKind.BATTERY, null, "N1", "LIVE"))
                        .device(
                                Checked.device(
                                        "K",
                                        DeviceKind.SWITCH,
                                        null,
                                        particulars,
                                        "N1",
                                        "FEED",
                                        "OUT",
                                        "SIDE"))
                        .wire(Checked.wire("W0", "65/0.30", "BATTERY/LIVE", "K/FEED"));
        for (int i = 1; i <= lamps; i++) {
            sketch.device(
                            Checked.device(
                                    "L" + i, DeviceKind.LAMP, Checked.amperes(6), "N2", "FEED"))
                    .wire(
                            Checked.wire(
                                    "W" + i,
                                    "28/0.30",
                                    i == 2 ? "K/SIDE" : "K/OUT",
                                    "L" + i + "/FEED"));
        }
        return sketch.loom();
    }

    @Test
    void contactsFedFromOnePointCountTogether() {
        Scenario both = PARKED.with("K", "OUT", "SIDE");
        assertThat(
                        Checked.of(
                                Checked.find(withSwitch(Checked.rated(10), 2), ON),
                                "electrical.switch-overloaded"))
                .isEmpty();
        ElectricalFinding finding =
                Checked.only(
                        Checked.find(withSwitch(Checked.rated(10), 2), both),
                        "electrical.switch-overloaded");
        // Two lamps of 2 ohm: about 12.6 V / 1.027 ohm = 12.3 A.
        assertThat(figure(finding)).isCloseTo(12.3, within(0.1));
        assertThat(limit(finding)).isEqualTo(10);
        assertThat(finding.finding().severity()).isEqualTo(Severity.WARNING);
    }

    @Test
    void aSwitchThatTheAdditionsOverloadSaysHowMuchTheyPutOnIt() {
        Loom recorded = withSwitch(Checked.rated(10), 1);
        Loom loom = withSwitch(Checked.rated(10), 3);
        ElectricalFinding finding =
                Checked.only(
                        compared(loom, recorded, Set.of("W2", "W3"), Set.of("L2", "L3")),
                        "electrical.switch-overloaded");
        assertThat(finding.finding().severity()).isEqualTo(Severity.FAULT);
        assertThat(finding.finding().text()).contains("The additions put 6.", "made for 10 A");
    }

    @Test
    void aSwitchOfUnknownRatingIsToldWhenItsCurrentMoreThanDoubles() {
        Loom recorded = withSwitch(Particulars.NONE, 1);
        assertThat(
                        Checked.only(
                                        compared(
                                                withSwitch(Particulars.NONE, 4),
                                                recorded,
                                                Set.of("W2", "W3", "W4"),
                                                Set.of("L2", "L3", "L4")),
                                        "electrical.contact-rating-unknown")
                                .finding()
                                .severity())
                .isEqualTo(Severity.WARNING);
        assertThat(
                        Checked.of(
                                compared(
                                        withSwitch(Particulars.NONE, 3),
                                        recorded,
                                        Set.of("W2", "W3"),
                                        Set.of("L2", "L3")),
                                "electrical.contact-rating-unknown"))
                .isEmpty();
    }

    private static List<ElectricalFinding> compared(
            Loom loom, Loom recorded, Set<String> wires, Set<String> devices) {
        return Checked.checks(loom)
                .find(
                        Checked.readings(loom, List.of(ON)),
                        new Recorded(recorded, Checked.readings(recorded, List.of(ON))),
                        new Additions(wires, devices));
    }

    @Test
    void nothingFlowsNothingIsFound() {
        Loom loom = new LoomSketch("N1").segment("S1", "N1", "N2", 500).loom();
        assertThat(Checked.find(loom, PARKED)).isEmpty();
        assertThat(Checked.find(loom)).isEmpty();
    }
}
