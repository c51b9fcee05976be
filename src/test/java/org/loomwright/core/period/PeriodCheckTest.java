package org.loomwright.core.period;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.testing.LoomSketch.end;
import static org.loomwright.testing.LoomSketch.mm;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendment.AddDevice;
import org.loomwright.core.amendment.Amendment.AddOpening;
import org.loomwright.core.amendment.Amendment.AddWire;
import org.loomwright.core.amendment.Amendment.ChangeCovering;
import org.loomwright.core.amendment.Amendment.ChangeLength;
import org.loomwright.core.amendment.Amendment.ChangeTerminal;
import org.loomwright.core.amendment.Amendment.ChangeVehicle;
import org.loomwright.core.amendment.Amendment.ExtendBranch;
import org.loomwright.core.amendment.Amendment.MoveWireEnd;
import org.loomwright.core.amendment.Amendment.RemoveWire;
import org.loomwright.core.amendment.Amendment.ReplaceWire;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Evidence;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.period.BackStep.Act;
import org.loomwright.core.period.PeriodItem.Aspect;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.exchange.PeriodFiles;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.util.List;
import java.util.Locale;

/** How additions to a vehicle of 1954 are judged, aspect by aspect, and the way back. */
class PeriodCheckTest {

    private static final PeriodCheck CHECK =
            new PeriodCheck(
                    TestCatalogue.get(),
                    ElectricalFiles.behaviours(),
                    PeriodFiles.load(TestCatalogue.get()));

    /** The wires of a sketch are metric, so this one is recorded with an imperial size. */
    private static final Loom STOCK =
            new LoomSketch("N1")
                    .segment("S1", "N1", "N2", 600)
                    .segment("S2", "N2", "N3", 300)
                    .segment("S3", "N2", "N4", 300)
                    .node(new Node("N3", "instrument panel end"))
                    .node(new Node("N4", "fuse box end"))
                    .device(at("A", "first joint", DeviceKind.JOINT, "N3"))
                    .device(at("B", "second joint", DeviceKind.JOINT, "N4"))
                    .device(at("C", "third joint", DeviceKind.JOINT, "N1"))
                    .wire(wire("W1", "14/.012", "A/1", "bullet-4.7", "B/1", "ring-4"))
                    .loom();

    private static Device at(String id, String name, DeviceKind kind, String node) {
        return new Device(id, name, kind, null, List.of(new Point("1", node, mm(80))));
    }

    private static Wire wire(
            String id, String size, String a, String terminalA, String b, String terminalB) {
        return new Wire(
                id,
                "circuit",
                WireColour.parse("G"),
                size,
                end(a, terminalA),
                end(b, terminalB),
                Condition.GOOD);
    }

    private static PeriodReport report(Amendment... amendments) {
        return report(List.of(), amendments);
    }

    private static PeriodReport report(List<Finding> colours, Amendment... amendments) {
        return Amendments.apply(STOCK, List.of(amendments), TestCatalogue.get())
                .map(amended -> CHECK.of(STOCK, amended, colours))
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    private static PeriodItem item(PeriodReport report, Aspect aspect) {
        return report.items().stream()
                .filter(item -> item.aspect() == aspect)
                .findFirst()
                .orElseThrow();
    }

    private static AddWire added(String size, String terminalA, String terminalB) {
        return new AddWire("X", "", wire("W9", size, "A/1", terminalA, "B/1", terminalB));
    }

    @Test
    void anUnchangedLoomHasNothingToJudgeAndNoWayBack() {
        PeriodReport report = report();
        assertThat(report.items()).isEmpty();
        assertThat(report.wayBack()).isEmpty();
        assertThat(report.counts())
                .hasSize(4)
                .allSatisfy((judgement, count) -> assertThat(count).isZero());
        assertThat(report.notes()).anyMatch(note -> note.contains("1954"));
    }

    @Test
    void aSizeThatTheRecordedLoomHasIsAsPeriod() {
        assertThat(item(report(added("14/.012", "ring-4", "ring-4")), Aspect.SIZE).judgement())
                .isEqualTo(Judgement.AS_PERIOD);
    }

    @Test
    void aMetricSizeIsAHiddenDeviationWithItsImperialSister() {
        PeriodItem size = item(report(added("28/0.30", "ring-4", "ring-4")), Aspect.SIZE);
        assertThat(size.judgement()).isEqualTo(Judgement.HIDDEN_DEVIATION);
        assertThat(size.alternative()).startsWith("28/.012");
        assertThat(size.why()).contains("from memory", "1954");
        assertThat(size.basis()).isNotNull();
    }

    @Test
    void anImperialSizeThatTheLoomDoesNotHaveIsAsPeriodByTheTable() {
        assertThat(item(report(added("44/.012", "ring-4", "ring-4")), Aspect.SIZE).judgement())
                .isEqualTo(Judgement.AS_PERIOD);
    }

    @Test
    void aBladeIsSeenAtTheFuseBoxAndNotBehindTheInstruments() {
        PeriodReport report = report(added("14/.012", "blade-6.3", "blade-6.3"));
        assertThat(item(report, Aspect.TERMINAL_A).judgement())
                .isEqualTo(Judgement.HIDDEN_DEVIATION);
        assertThat(item(report, Aspect.TERMINAL_B).judgement())
                .isEqualTo(Judgement.VISIBLE_DEVIATION);
        assertThat(item(report, Aspect.TERMINAL_B).alternative()).contains("bullet");
    }

    @Test
    void whereTheNameOfThePlaceDoesNotTellSomebodyIsAsked() {
        Wire wire = wire("W9", "14/.012", "C/1", "blade-6.3", "B/1", "ring-4");
        PeriodItem terminal = item(report(new AddWire("X", "", wire)), Aspect.TERMINAL_A);
        assertThat(terminal.judgement()).isEqualTo(Judgement.UNKNOWN);
        assertThat(terminal.why()).endsWith("Say whether it can be seen.");
    }

    @Test
    void aColourThatContradictsTheCodeDeviates() {
        Finding finding =
                Finding.warning(
                        "colour.contradicts-feed",
                        Subject.of(ThingKind.WIRE, "W9"),
                        "Wire W9 is green.");
        Amendment add = added("14/.012", "ring-4", "ring-4");
        PeriodItem colour = item(report(List.of(finding), add), Aspect.COLOUR);
        assertThat(colour.judgement()).isEqualTo(Judgement.VISIBLE_DEVIATION);
        assertThat(colour.why()).startsWith("Wire W9 is green.");
        assertThat(item(report(add), Aspect.COLOUR).judgement()).isEqualTo(Judgement.AS_PERIOD);
    }

    @ParameterizedTest
    @CsvSource({
        "relay, relay, VISIBLE_DEVIATION",
        "LED lamp, lamp, VISIBLE_DEVIATION",
        "sealed lamp, lamp, UNKNOWN",
        "radio, radio, UNKNOWN",
        "alternator, alternator, VISIBLE_DEVIATION",
        "earth screw, earth_point, AS_PERIOD",
        "hazard switch, switch, VISIBLE_DEVIATION"
    })
    void devicesAreJudgedByTheirKindAndTheWordsOfTheirName(
            String name, String kind, Judgement expected) {
        Device device = at("D", name, DeviceKind.valueOf(kind.toUpperCase(Locale.ROOT)), "N4");
        assertThat(item(report(new AddDevice("X", "", device)), Aspect.DEVICE).judgement())
                .isEqualTo(expected);
    }

    @Test
    void whereADeviceSitsIsNotReadFromWhatItServes() {
        Device relay = at("D", "fan relay", DeviceKind.RELAY, "N1");
        assertThat(item(report(new AddDevice("X", "", relay)), Aspect.DEVICE).judgement())
                .isEqualTo(Judgement.UNKNOWN);
        Device hidden = at("D", "fan relay behind the panel", DeviceKind.RELAY, "N1");
        assertThat(item(report(new AddDevice("X", "", hidden)), Aspect.DEVICE).judgement())
                .isEqualTo(Judgement.HIDDEN_DEVIATION);
    }

    @ParameterizedTest
    @CsvSource({"BLADE, VISIBLE_DEVIATION", "GLASS_BLOW_MARKED, AS_PERIOD"})
    void fusesAreJudgedByTheirStyle(FuseStyle style, Judgement expected) {
        Device fuse =
                new Device(
                        "F",
                        "fuse",
                        DeviceKind.FUSE,
                        null,
                        new Particulars(
                                null,
                                null,
                                null,
                                null,
                                List.of(
                                        new FittedFuse(
                                                "IN",
                                                "OUT",
                                                style,
                                                Current.ofMilliamperes(15_000)))),
                        List.of(new Point("IN", "N4", mm(80)), new Point("OUT", "N4", mm(80))));
        PeriodReport report = report(new AddDevice("X", "", fuse));
        assertThat(report.items()).singleElement().returns(expected, PeriodItem::judgement);
    }

    @Test
    void aFuseOfWhichNobodySaidTheStyleIsAskedAbout() {
        PeriodReport report =
                report(new AddDevice("X", "", at("F", "fuse", DeviceKind.FUSE, "N4")));
        assertThat(report.items())
                .singleElement()
                .returns(Aspect.FUSE, PeriodItem::aspect)
                .returns(Judgement.UNKNOWN, PeriodItem::judgement);
    }

    private static ExtendBranch leg(Finish finish) {
        return new ExtendBranch(
                "X",
                "",
                LoomSketch.plainSegment("S9", "N2", "N9", 200).withFinish(finish),
                new Node("N9", "control box end"));
    }

    private static Finish finish(String covering, String tracer) {
        boolean woven = covering.contains("braid");
        return new Finish(
                covering,
                woven ? "B" : null,
                tracer.isEmpty() ? List.of() : List.of(tracer),
                woven ? 12 : null,
                woven ? 2 : 0,
                new Evidence(EvidenceKind.ASSUMED, ""));
    }

    @ParameterizedTest
    @CsvSource({
        "cotton-braid, '', AS_PERIOD",
        "cotton-braid, R, VISIBLE_DEVIATION",
        "cotton-braid-fine, '', VISIBLE_DEVIATION",
        "heat-shrink, '', VISIBLE_DEVIATION"
    })
    void aNewLegIsHeldAgainstItsNeighbours(String covering, String tracer, Judgement expected) {
        assertThat(item(report(leg(finish(covering, tracer))), Aspect.COVERING).judgement())
                .isEqualTo(expected);
    }

    @Test
    void whatDiffersFromTheNeighbourIsNamed() {
        PeriodItem cover = item(report(leg(finish("cotton-braid", "R"))), Aspect.COVERING);
        assertThat(cover.why()).contains("S2", "tracers R, not no tracer");
        assertThat(cover.alternative()).contains("no tracer");
    }

    @Test
    void aChangedCoverIsJudgedAndItsEvidenceAloneIsNot() {
        Finish believed = finish("cotton-braid", "");
        assertThat(report(new ChangeCovering("X", "", "S2", believed)).items()).isEmpty();
        assertThat(report(new ChangeCovering("X", "", "S2", finish("pvc-tape", ""))).items())
                .singleElement()
                .returns(Judgement.HIDDEN_DEVIATION, PeriodItem::judgement);
    }

    @Test
    void aNewOpeningIsNamed() {
        PeriodReport report = report(new AddOpening("X", "", "S3", LoomSketch.grommet("O9", 100)));
        assertThat(item(report, Aspect.OPENING).judgement()).isEqualTo(Judgement.VISIBLE_DEVIATION);
        assertThat(acts(report)).containsExactly(Act.CLOSE_OPENING);
    }

    private static List<Act> acts(PeriodReport report) {
        return report.wayBack().stream().map(BackStep::act).toList();
    }

    @Test
    void aReplacedWireIsJudgedByColourAndSize() {
        PeriodReport report =
                report(new ReplaceWire("X", "", "W1", WireColour.parse("G"), "14/0.30"));
        assertThat(report.items())
                .extracting(PeriodItem::aspect)
                .containsExactly(Aspect.COLOUR, Aspect.SIZE);
        assertThat(item(report, Aspect.COLOUR).judgement()).isEqualTo(Judgement.AS_PERIOD);
        assertThat(report.wayBack())
                .singleElement()
                .satisfies(step -> assertThat(step.text()).contains("G 14/.012"));
    }

    @Test
    void endsAndTerminalsGoBackToWhereTheyWere() {
        PeriodReport moved = report(new MoveWireEnd("X", "", "W1", Side.B, end("C/1", "ring-5")));
        assertThat(acts(moved)).containsExactly(Act.MOVE_END_BACK);
        assertThat(moved.wayBack().getFirst().text()).contains("C/1", "B/1", "4 mm ring");
        assertThat(acts(report(new ChangeTerminal("X", "", "W1", Side.A, "blade-6.3"))))
                .containsExactly(Act.CHANGE_TERMINAL_BACK);
    }

    @Test
    void whatWasTakenOutIsPutBack() {
        PeriodReport report = report(new RemoveWire("X", "", "W1"));
        assertThat(report.items()).isEmpty();
        assertThat(report.wayBack())
                .singleElement()
                .returns(Act.PUT_BACK, BackStep::act)
                .satisfies(step -> assertThat(step.text()).contains("W1", "A/1", "B/1"));
    }

    @Test
    void aLengthAndAnEarthGoBackToo() {
        assertThat(acts(report(new ChangeLength("X", "", "S3", mm(350)))))
                .containsExactly(Act.RECOVER_SEGMENT);
        assertThat(
                        acts(
                                report(
                                        new ChangeVehicle(
                                                "X",
                                                "",
                                                EarthPolarity.NEGATIVE,
                                                Voltage.ofMillivolts(12_000)))))
                .containsExactly(Act.VEHICLE);
    }

    @Test
    void stepsComeInTheOrderOfTheWork() {
        PeriodReport report =
                report(
                        new ExtendBranch(
                                "X1",
                                "",
                                LoomSketch.plainSegment("S9", "N2", "N9", 200),
                                new Node("N9", "end")),
                        new AddDevice("X2", "", at("D", "lamp", DeviceKind.LAMP, "N9")),
                        new AddWire(
                                "X3",
                                "",
                                wire("W9", "14/.012", "D/1", "bullet-4.7", "B/1", "ring-4")));
        assertThat(acts(report))
                .containsExactly(Act.CAP_WIRE, Act.TAKE_OUT_DEVICE, Act.TIE_BACK_LEG);
        assertThat(item(report, Aspect.DEVICE).wayBack()).startsWith("Take out D (lamp)");
    }
}
