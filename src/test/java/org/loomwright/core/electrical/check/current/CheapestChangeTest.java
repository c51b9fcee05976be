package org.loomwright.core.electrical.check.current;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.current.CurrentChecks.Recorded;
import org.loomwright.core.electrical.check.remedy.Proposal;
import org.loomwright.core.electrical.check.remedy.Proposal.Kind;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.testing.LoomSketch;

import java.util.List;
import java.util.Set;

/** Changes that are proposed, made and simulated. */
class CheapestChangeTest {

    private static final Scenario ON =
            Scenario.of("on", Engine.OFF, Temperature.ofCelsius(20)).with("K", "OUT");

    /** Battery - stud - ammeter - switch - lamps at the end of a long segment. */
    private static LoomSketch car(long ammeterAmperes, long switchAmperes) {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 1_000)
                .segment("S2", "N2", "N3", 4_000)
                .device(Checked.device("BATTERY", DeviceKind.BATTERY, null, "N1", "LIVE"))
                .device(Checked.device("STUD", DeviceKind.RELAY, null, "N1", "BATT"))
                .device(
                        Checked.device(
                                "METER",
                                DeviceKind.AMMETER,
                                null,
                                Checked.rated(ammeterAmperes),
                                "N2",
                                "BATT",
                                "LOAD"))
                .device(
                        Checked.device(
                                "K",
                                DeviceKind.SWITCH,
                                null,
                                Checked.rated(switchAmperes),
                                "N2",
                                "FEED",
                                "OUT"))
                .device(Checked.device("L1", DeviceKind.LAMP, Checked.amperes(5), "N3", "FEED"))
                .wire(Checked.wire("W1", "37/0.90", "BATTERY/LIVE", "STUD/BATT"))
                .wire(Checked.wire("W2", "84/0.30", "STUD/BATT", "METER/BATT"))
                .wire(Checked.wire("W3", "84/0.30", "METER/LOAD", "K/FEED"))
                .wire(Checked.wire("W4", "28/0.30", "K/OUT", "L1/FEED"));
    }

    private static LoomSketch withPair(LoomSketch sketch, String feed, String size) {
        return sketch.device(Checked.device("J", DeviceKind.JOINT, null, "N3", "1"))
                .device(Checked.device("A1", DeviceKind.LAMP, Checked.amperes(6), "N3", "FEED"))
                .device(Checked.device("A2", DeviceKind.LAMP, Checked.amperes(6), "N3", "FEED"))
                .wire(Checked.wire("X1", size, feed, "J/1"))
                .wire(Checked.wire("X2", "28/0.30", "J/1", "A1/FEED"))
                .wire(Checked.wire("X3", "28/0.30", "J/1", "A2/FEED"));
    }

    private static final Additions PAIR =
            new Additions(Set.of("X1", "X2", "X3"), Set.of("J", "A1", "A2"));

    private static CheckedFinding checked(
            Loom loom, Loom recorded, Additions additions, String code, String subject) {
        List<CheckedFinding> found =
                Checked.checks(loom)
                        .findWithChanges(
                                Checked.readings(loom, List.of(ON)),
                                new Recorded(recorded, Checked.readings(recorded, List.of(ON))),
                                additions,
                                Checked::simulation);
        return found.stream()
                .filter(one -> one.finding().finding().code().equals(code))
                .filter(one -> one.finding().finding().subject().id().equals(subject))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + found));
    }

    private static List<ElectricalFinding> after(Loom loom, Proposal change) {
        return Checked.find(Checked.with(loom, change), ON);
    }

    /** The changed loom has no such finding any more but a note on the aim, and every lamp still burns. */
    private static void assertPutRight(Loom loom, CheckedFinding checked, Kind kind) {
        Proposal change = checked.change().orElseThrow();
        assertThat(change.kind()).isEqualTo(kind);
        assertThat(checked.finding().remedy()).isEqualTo(change.text());
        String code = checked.finding().finding().code();
        assertThat(Checked.of(after(loom, change), code))
                .extracting(one -> one.finding().subject().id())
                .doesNotContain(checked.finding().finding().subject().id());
        assertThat(Checked.lit(Checked.with(loom, change), ON)).containsAll(Checked.lit(loom, ON));
    }

    @Test
    void aWireOverItsRatingGetsTheNextSizeThatDoes() {
        // About 12 A: 14/0.30 carries 8.75 A, 21/0.30 12.75 A.
        Loom loom = withPair(car(60, 60), "METER/LOAD", "14/0.30").loom();
        CheckedFinding checked =
                checked(loom, car(60, 60).loom(), PAIR, "electrical.current-over-rating", "X1");
        assertPutRight(loom, checked, Kind.THICKER_WIRE);
        assertThat(checked.finding().remedy()).contains("Take 21/0.30 instead of 14/0.30");
    }

    @Test
    void aLoadThatLosesTooMuchGetsTheThinnestWireThatDoes() {
        // About 12 A through 5.2 m of 9/0.30 alone lose 1.8 V.
        Loom loom = withPair(car(60, 60), "METER/LOAD", "9/0.30").loom();
        CheckedFinding checked =
                checked(loom, car(60, 60).loom(), PAIR, "electrical.voltage-drop", "A1");
        assertPutRight(loom, checked, Kind.THICKER_WIRE);
    }

    @Test
    void anOverloadedSwitchGetsARelayWithAFusedFeed() {
        Loom loom = withPair(car(60, 10), "K/OUT", "35/0.30").loom();
        CheckedFinding checked =
                checked(loom, car(60, 10).loom(), PAIR, "electrical.switch-overloaded", "K");
        assertPutRight(loom, checked, Kind.RELAY);
        assertThat(checked.finding().remedy()).contains("STUD/BATT", "15 A blade fuse", "X1");
    }

    @Test
    void theRelayBringsNoNewFault() {
        Loom loom = withPair(car(60, 10), "K/OUT", "35/0.30").loom();
        Proposal change =
                checked(loom, car(60, 10).loom(), PAIR, "electrical.switch-overloaded", "K")
                        .change()
                        .orElseThrow();
        assertThat(after(loom, change))
                .extracting(one -> one.finding().code())
                .doesNotContain(
                        "electrical.current-over-rating",
                        "electrical.fuse-over-wire",
                        "electrical.fuse-under-load",
                        "electrical.fuse-unknown");
    }

    @Test
    void anOverloadedAmmeterIsLeftOutByAnotherFeed() {
        Loom loom = withPair(car(10, 60), "METER/LOAD", "44/0.30").loom();
        CheckedFinding checked =
                checked(loom, car(10, 60).loom(), PAIR, "electrical.ammeter-overloaded", "METER");
        assertPutRight(loom, checked, Kind.OTHER_FEED);
        assertThat(checked.finding().remedy()).contains("Feed wire X1 from STUD/BATT");
    }

    @Test
    void whereNoSingleChangeHelpsThatIsSaid() {
        // The recorded lamp alone is too much for the meter, and nothing was added that could go
        // elsewhere.
        Loom loom =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 1_000)
                        .device(Checked.device("BATTERY", DeviceKind.BATTERY, null, "N1", "LIVE"))
                        .device(
                                Checked.device(
                                        "METER",
                                        DeviceKind.AMMETER,
                                        null,
                                        Checked.rated(3),
                                        "N2",
                                        "BATT",
                                        "LOAD"))
                        .device(
                                Checked.device(
                                        "L1", DeviceKind.LAMP, Checked.amperes(5), "N2", "FEED"))
                        .wire(Checked.wire("W1", "28/0.30", "BATTERY/LIVE", "METER/BATT"))
                        .wire(Checked.wire("W2", "28/0.30", "METER/LOAD", "L1/FEED"))
                        .loom();
        Scenario parked = Scenario.of("parked", Engine.OFF, Temperature.ofCelsius(20));
        List<CheckedFinding> found =
                Checked.checks(loom)
                        .findWithChanges(
                                Checked.readings(loom, List.of(parked)),
                                null,
                                Additions.NONE,
                                Checked::simulation);
        assertThat(found)
                .filteredOn(
                        one ->
                                one.finding()
                                        .finding()
                                        .code()
                                        .equals("electrical.ammeter-overloaded"))
                .singleElement()
                .satisfies(
                        one -> {
                            assertThat(one.change()).isEmpty();
                            assertThat(one.finding().remedy()).startsWith("No thicker wire");
                        });
    }
}
