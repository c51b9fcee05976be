package org.loomwright.core.loom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.testing.LoomSketch.BLACK_BRAID;
import static org.loomwright.testing.LoomSketch.end;
import static org.loomwright.testing.LoomSketch.grommet;
import static org.loomwright.testing.LoomSketch.mm;
import static org.loomwright.testing.LoomSketch.plainDevice;
import static org.loomwright.testing.LoomSketch.plainSegment;
import static org.loomwright.testing.LoomSketch.plainWire;

import org.assertj.core.api.AbstractListAssert;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Opening.PassDirection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;
import org.loomwright.testing.TestLooms;

import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** One test for each fault, then several faults together. */
class LoomCheckerTest {

    private static LoomSketch sketch() {
        return TestLooms.frontSketch();
    }

    private static List<Finding> faults(LoomDocument document) {
        return switch (LoomChecker.check(document, TestCatalogue.get())) {
            case Outcome.Accepted<Loom> accepted -> List.of();
            case Outcome.Rejected<Loom>(List<Finding> reasons) -> reasons;
        };
    }

    /** Asserts on "code pointer" of every fault. */
    private static AbstractListAssert<?, List<? extends String>, String, ?> places(
            LoomSketch sketch) {
        return places(sketch.document());
    }

    private static AbstractListAssert<?, List<? extends String>, String, ?> places(
            LoomDocument document) {
        return assertThat(
                faults(document).stream()
                        .map(finding -> finding.code() + " " + finding.subject().pointer())
                        .toList());
    }

    private static LoomDocument withVehicle(UnaryOperator<VehicleSheet> change) {
        LoomDocument old = sketch().document();
        return new LoomDocument(
                old.name(),
                change.apply(old.vehicle()),
                old.datum(),
                old.nodes(),
                old.segments(),
                old.devices(),
                old.wires(),
                old.checks());
    }

    private static VehicleSheet vehicle(VehicleSheet old, int year, int millivolts, String... not) {
        return new VehicleSheet(
                old.name(),
                year,
                old.hand(),
                old.earth(),
                Voltage.ofMillivolts(millivolts),
                List.of(not));
    }

    private static LoomSketch withFinish(Finish finish) {
        return sketch().with("S1", segment -> segment.withFinish(finish));
    }

    private static Finish finish(
            String covering, @Nullable String yarn, List<String> tracers, int picks, int coats) {
        return new Finish(
                covering, yarn, tracers, picks, coats, new Evidence(EvidenceKind.ASSUMED, ""));
    }

    private static LoomSketch withSegment(
            List<Length> readings, @Nullable Departure leaves, int bends) {
        return sketch().with(
                        "S1",
                        old ->
                                new Segment(
                                        "S1",
                                        "N1",
                                        "N2",
                                        mm(600),
                                        readings,
                                        leaves,
                                        bends,
                                        BLACK_BRAID,
                                        old.openings()));
    }

    @Test
    void aSoundDocumentHasNoFaultAndBecomesTheLoom() {
        places(sketch()).isEmpty();
        assertThat(sketch().loom().document()).isEqualTo(sketch().document().ordered());
    }

    @Test
    void aFaultNamesTheThingTheRuleAndThePlace() {
        assertThat(faults(sketch().wire("W9", "G", "D7/1", "L1/1").document()))
                .singleElement()
                .satisfies(
                        fault -> {
                            assertThat(fault.severity()).isEqualTo(Severity.FAULT);
                            assertThat(fault.code()).isEqualTo("loom.device-unknown");
                            assertThat(fault.subject().pointer()).isEqualTo("/wires/5/a");
                            assertThat(fault.text())
                                    .isEqualTo(
                                            "End A of wire W9 is on device D7, which does not"
                                                    + " exist.");
                        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "-x", "a b", "ä1", "x/y", ".x"})
    void anIdMustBeShortAndPlain(String id) {
        places(sketch().wire(id, "G", "F1/1", "L1/1"))
                .containsExactly("loom.id-malformed /wires/5");
    }

    @Test
    void anIdOfFortyCharactersIsTakenAndOneMoreIsNot() {
        places(sketch().wire("x".repeat(40), "G", "F1/1", "L1/1")).isEmpty();
        places(sketch().wire("x".repeat(41), "G", "F1/1", "L1/1"))
                .containsExactly("loom.id-malformed /wires/5");
    }

    @Test
    void anIdMayStandOnlyOnceAmongThingsOfItsKind() {
        places(sketch().wire("W1", "G", "F1/1", "L1/1")).containsExactly("loom.id-twice /wires/5");
        places(sketch().device("L1", DeviceKind.LAMP, "N1", "N1"))
                .containsExactly("loom.id-twice /devices/5");
        places(sketch().check("C1", "N1", "N2", 600)).containsExactly("loom.id-twice /checks/1");
        places(sketch().opening("S3", "O1", 10))
                .containsExactly("loom.id-twice /segments/2/openings/0");
        places(sketch().wire("S1", "G", "F1/1", "L1/1")).isEmpty();
    }

    @Test
    void aPointMayStandOnlyOnceOnItsDevice() {
        Device twice =
                new Device(
                        "D9",
                        "lamp",
                        DeviceKind.LAMP,
                        null,
                        List.of(new Point("1", "N1", mm(1)), new Point("1", "N2", mm(1))));

        places(sketch().device(twice)).containsExactly("loom.id-twice /devices/5/points/1");
    }

    @Test
    void namesMustSaySomethingAndNotTooMuch() {
        Wire mute =
                new Wire(
                        "W9",
                        " ",
                        WireColour.parse("G"),
                        "14/0.30",
                        end("F1/1"),
                        end("L1/1"),
                        Condition.GOOD);
        Device novel = new Device("D9", "x".repeat(301), DeviceKind.LAMP, null, List.of());

        places(sketch().wire(mute)).containsExactly("loom.text-length /wires/5");
        places(sketch().device(novel))
                .containsExactly(
                        "loom.text-length /devices/5", "loom.device-without-point /devices/5");
    }

    @Test
    void theVehicleMustBePossible() {
        places(withVehicle(old -> vehicle(old, 1884, 12_000)))
                .containsExactly("loom.year-not-sane /vehicle/year");
        places(withVehicle(old -> vehicle(old, 2101, 12_000)))
                .containsExactly("loom.year-not-sane /vehicle/year");
        places(withVehicle(old -> vehicle(old, 1954, 3_999)))
                .containsExactly("loom.voltage-not-sane /vehicle/systemVoltageV");
        places(withVehicle(old -> vehicle(old, 1954, 48_001)))
                .containsExactly("loom.voltage-not-sane /vehicle/systemVoltageV");
        places(withVehicle(old -> vehicle(old, 1954, 6_000, "fine", " ")))
                .containsExactly("loom.text-length /vehicle/notStandard/1");
    }

    @Test
    void lengthsMustBePositiveAndSane() {
        places(sketch().with("S3", segment -> segment.withLength(mm(0))))
                .containsExactly("loom.length-not-positive /segments/2");
        places(sketch().with("S3", segment -> segment.withLength(mm(15_000)))).isEmpty();
        places(sketch().with("S3", s -> s.withLength(Length.ofMicrometres(15_000_001))))
                .containsExactly("loom.length-not-sane /segments/2");
        places(sketch().check("C2", "N1", "N2", 60_001))
                .containsExactly("loom.length-not-sane /checks/1");
        places(withSegment(List.of(mm(600), mm(-1)), null, 0))
                .containsExactly("loom.length-not-positive /segments/0");
    }

    @Test
    void aTailMayBeNothingButNotLess() {
        places(sketch().device(withTail(mm(0)))).isEmpty();
        places(sketch().device(withTail(mm(-1))))
                .containsExactly("loom.length-negative /devices/5/points/0");
        places(sketch().device(withTail(mm(5_001))))
                .containsExactly("loom.length-not-sane /devices/5/points/0");
    }

    private static Device withTail(Length tail) {
        return new Device("D9", "lamp", DeviceKind.LAMP, null, List.of(new Point("1", "N1", tail)));
    }

    @Test
    void listsMayNotBeEndless() {
        places(withSegment(Collections.nCopies(200, mm(600)), null, 0)).isEmpty();
        places(withSegment(Collections.nCopies(201, mm(600)), null, 0))
                .containsExactly("loom.too-many /segments/0");
    }

    @Test
    void aDocumentThatIsTooLargeIsRefusedForThatAlone() {
        LoomSketch sketch = sketch().wire("", "G", "nobody/1", "nobody/2");
        IntStream.range(0, 20_000).forEach(i -> sketch.wire("X" + i, "G", "F1/1", "L1/1"));

        places(sketch).containsExactly("loom.too-many ");
    }

    @Test
    void aLoomHasAtLeastOneSegment() {
        places(new LoomSketch("N1").node("N1")).containsExactly("loom.no-segment ");
    }

    @Test
    void aLegLeavesAtAnHourAndAtAnAngle() {
        places(withSegment(List.of(), new Departure(12, 180), 3_600)).isEmpty();
        places(withSegment(List.of(), new Departure(0, 0), 0))
                .containsExactly("loom.clock-not-sane /segments/0");
        places(withSegment(List.of(), new Departure(13, 181), 0))
                .containsExactly(
                        "loom.clock-not-sane /segments/0", "loom.number-not-sane /segments/0");
        places(withSegment(List.of(), null, -1))
                .containsExactly("loom.number-not-sane /segments/0");
    }

    @Test
    void aCoveringMustBeKnownAndFitItsYarns() {
        places(withFinish(finish("silk", null, List.of(), 1, 1)))
                .containsExactly("loom.covering-unknown /segments/0");
        places(withFinish(finish("cotton-braid", null, List.of(), 1, 1)))
                .containsExactly("loom.yarn-missing /segments/0");
        places(withFinish(finish("pvc-tape", "B", List.of(), 1, 1)))
                .containsExactly("loom.yarn-without-weave /segments/0");
        places(withFinish(finish("cotton-braid", "B", List.of("R", "Q"), 1, 1)))
                .containsExactly("loom.colour-unknown /segments/0");
    }

    @Test
    void picksAndCoatsMustBeSane() {
        places(withFinish(finish("cotton-braid", "B", List.of(), 101, 21)))
                .containsExactly(
                        "loom.number-not-sane /segments/0", "loom.number-not-sane /segments/0");
    }

    @Test
    void anOpeningStandsOnItsSegmentAndHasASize() {
        places(sketch().opening("S3", "O9", 300)).isEmpty();
        places(sketch().opening("S3", "O9", 301))
                .containsExactly("loom.opening-off-segment /segments/2/openings/0");
        places(sketch().opening("S3", grommet("O9", -1)))
                .containsExactly("loom.opening-off-segment /segments/2/openings/0");
        Opening tight =
                new Opening("O9", "hole", OpeningKind.HOLE, mm(10), mm(0), PassDirection.EITHER);
        places(sketch().opening("S3", tight))
                .containsExactly("loom.length-not-positive /segments/2/openings/0");
    }

    @Test
    void everyNodeThatIsMentionedMustExist() {
        LoomDocument document = sketch().document();
        LoomDocument without =
                new LoomDocument(
                        document.name(),
                        document.vehicle(),
                        document.datum(),
                        document.nodes().stream().filter(n -> !n.id().equals("N6")).toList(),
                        document.segments(),
                        document.devices(),
                        document.wires(),
                        document.checks());

        places(without)
                .containsExactlyInAnyOrder(
                        "loom.node-unknown /segments/4",
                        "loom.node-unknown /devices/4/points/0",
                        "loom.node-unknown /devices/4/points/1",
                        "loom.node-unknown /checks/0");
    }

    @Test
    void aSegmentMayNotRunToItsOwnStart() {
        places(sketch().segment("S9", "N2", "N2", 100))
                .containsExactly("loom.segment-loop /segments/5");
    }

    @Test
    void theDatumMustExistAndBeTheRoot() {
        LoomDocument nowhere = new LoomSketch("N1").segment("S1", "N1", "N2", 100).document();
        LoomDocument unknown =
                new LoomDocument(
                        nowhere.name(),
                        nowhere.vehicle(),
                        "N7",
                        nowhere.nodes(),
                        nowhere.segments(),
                        List.of(),
                        List.of(),
                        List.of());

        places(unknown).containsExactly("loom.datum-unknown /datum");
        places(new LoomSketch("N2").segment("S1", "N1", "N2", 100))
                .contains("loom.datum-not-root /datum");
    }

    @Test
    void twoSegmentsMayNotLeadToOneNode() {
        places(sketch().segment("S9", "N4", "N5", 100))
                .containsExactly("loom.node-reached-twice /nodes/4");
    }

    @Test
    void everythingMustHangOnTheDatum() {
        places(sketch().segment("S9", "N8", "N9", 100))
                .containsExactly("loom.second-root /nodes/6");
    }

    @Test
    void aRingIsNamedOnceWithItsNodes() {
        LoomDocument ring =
                sketch().segment("S7", "N7", "N8", 100)
                        .segment("S8", "N8", "N9", 100)
                        .segment("S9", "N9", "N7", 100)
                        .document();

        assertThat(faults(ring))
                .singleElement()
                .satisfies(
                        fault -> {
                            assertThat(fault.code()).isEqualTo("loom.ring");
                            assertThat(fault.text()).contains("N8, N9, N7");
                        });
    }

    @Test
    void aLoadMustBeSane() {
        places(sketch().device(withLoad(1_000_000))).isEmpty();
        places(sketch().device(withLoad(1_000_001)))
                .containsExactly("loom.load-not-sane /devices/5");
        places(sketch().device(withLoad(-1))).containsExactly("loom.load-not-sane /devices/5");
    }

    private static Device withLoad(int milliamperes) {
        return new Device(
                "D9",
                "lamp",
                DeviceKind.LAMP,
                Current.ofMilliamperes(milliamperes),
                plainDevice("D9", DeviceKind.LAMP, "N1").points());
    }

    @Test
    void aWireHasAColourASizeAndTerminalsOfTheCatalogue() {
        Wire odd =
                new Wire(
                        "W9",
                        "odd",
                        WireColour.parse("GT"),
                        "1/1",
                        end("F1/1", "spoon"),
                        end("L1/1", "fork"),
                        Condition.GOOD);

        places(sketch().wire(odd))
                .containsExactly(
                        "loom.colour-unknown /wires/5",
                        "loom.size-unknown /wires/5",
                        "loom.terminal-unknown /wires/5/a",
                        "loom.terminal-unknown /wires/5/b");
    }

    @Test
    void aWireEndsOnExistingPointsAndNotTwiceOnTheSame() {
        places(sketch().wire("W9", "G", "F1/9", "L9/1"))
                .containsExactly("loom.point-unknown /wires/5/a", "loom.device-unknown /wires/5/b");
        places(sketch().wire("W9", "G", "F1/1", "F1/1"))
                .containsExactly("loom.wire-to-itself /wires/5");
        places(sketch().wire("W9", "G", "F1/1", "F1/2")).isEmpty();
    }

    @Test
    void aCheckRunsFromOneNodeToAnother() {
        places(sketch().check("C2", "N1", "N1", 100))
                .containsExactly("loom.check-nowhere /checks/1");
        places(sketch().check("C2", "N1", "N77", 100))
                .containsExactly("loom.node-unknown /checks/1");
    }

    @Test
    void allFaultsOfOneDocumentAreToldTogether() {
        LoomSketch poor =
                sketch().segment(plainSegment("S1x", "N2", "N9", -5))
                        .segment("S9", "N4", "N5", 100)
                        .opening("S3", "O1", 900)
                        .device("D9", DeviceKind.LAMP, "N77")
                        .wire(plainWire("W1", "T", "D9/1", "D9/2"))
                        .check("C2", "N88", "N88", 0);

        places(poor)
                .containsExactlyInAnyOrder(
                        "loom.length-not-positive /segments/5",
                        "loom.node-reached-twice /nodes/4",
                        "loom.id-twice /segments/2/openings/0",
                        "loom.opening-off-segment /segments/2/openings/0",
                        "loom.node-unknown /devices/5/points/0",
                        "loom.id-twice /wires/5",
                        "loom.colour-unknown /wires/5",
                        "loom.point-unknown /wires/5/b",
                        "loom.node-unknown /checks/1",
                        "loom.check-nowhere /checks/1",
                        "loom.length-not-positive /checks/1");
    }
}
