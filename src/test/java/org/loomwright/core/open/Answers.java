package org.loomwright.core.open;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendment.AddDevice;
import org.loomwright.core.amendment.Amendment.AddWire;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Evidence;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Fitting;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Opening.PassDirection;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.TestCatalogue;

import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A recorded loom and what is added to it, of which facts can be said.
 *
 * @param document the recorded loom
 * @param amendments devices and wires that are added
 */
record Answers(LoomDocument document, List<Amendment> amendments) {

    private static final Current SOME = Current.ofMilliamperes(5_000);

    /** Points that are answered by parts and not by saying a fact. */
    static final Set<OpenRule> NEED_PARTS =
            Set.of(
                    OpenRule.FEED,
                    OpenRule.RETURN,
                    OpenRule.FUSE,
                    OpenRule.SWITCH,
                    OpenRule.RELAY,
                    OpenRule.SENDER,
                    OpenRule.ALWAYS_LIVE,
                    OpenRule.TELL_TALE,
                    OpenRule.PANEL_LAMP);

    Loom stock() {
        return LoomChecker.check(document, TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    OpenReport report() {
        return Opened.report(stock(), amendments);
    }

    /** Says the fact that the point asks for. */
    Answers say(OpenPoint point, String service) {
        String id = point.subject().id();
        return switch (point.rule()) {
            case SERVICE -> particulars(id, it -> serving(it, service));
            case OWN_EARTH -> device(id, it -> renamed(it, it.name() + ", earthed"));
            case LOAD, STOCK_LOAD -> device(id, it -> Opened.taking(it, 1_000));
            case POLARITY -> particulars(id, Answers::earthed);
            case VOLTAGE -> particulars(id, it -> voltage(it));
            case FUSE_RATING, STOCK_FUSE_RATING -> device(id, Answers::marked);
            case CONTACT_RATING -> particulars(id, Answers::rated);
            case ROOM -> point(id);
            case FITTED -> fitted(id);
            case FINISH -> finish(id, it -> finish(it, it.picksPer25Mm(), it.lacquerCoats()));
            case PICKS -> finish(id, it -> withPicks(it));
            case LACQUER -> finish(id, it -> withCoats(it));
            case READINGS -> segment(id, Answers::readAgain);
            case PASSES -> opening(id);
            case CONDITION -> wire(id, Answers::inspected);
            case NOT_STANDARD -> notStandard();
            case FEED, RETURN, FUSE, SWITCH, RELAY, SENDER, ALWAYS_LIVE, TELL_TALE, PANEL_LAMP ->
                    throw new IllegalArgumentException(point + " needs a part");
        };
    }

    private Answers device(String id, UnaryOperator<Device> change) {
        UnaryOperator<Device> one = it -> it.id().equals(id) ? change.apply(it) : it;
        return new Answers(
                with(document.segments(), map(document.devices(), one), document.wires()),
                map(
                        amendments,
                        it ->
                                it instanceof AddDevice add
                                        ? new AddDevice(add.id(), "", one.apply(add.device()))
                                        : it));
    }

    private Answers wires(UnaryOperator<Wire> change) {
        return new Answers(
                with(document.segments(), document.devices(), map(document.wires(), change)),
                map(
                        amendments,
                        it ->
                                it instanceof AddWire add
                                        ? new AddWire(add.id(), "", change.apply(add.wire()))
                                        : it));
    }

    private Answers wire(String id, UnaryOperator<Wire> change) {
        return wires(it -> it.id().equals(id) ? change.apply(it) : it);
    }

    private Answers segment(String id, UnaryOperator<Segment> change) {
        UnaryOperator<Segment> one = it -> it.id().equals(id) ? change.apply(it) : it;
        return new Answers(
                with(map(document.segments(), one), document.devices(), document.wires()),
                amendments);
    }

    private static <T> List<T> map(List<T> parts, UnaryOperator<T> change) {
        return parts.stream().map(change).toList();
    }

    private LoomDocument with(List<Segment> segments, List<Device> devices, List<Wire> wires) {
        return new LoomDocument(
                document.name(),
                document.vehicle(),
                document.datum(),
                document.nodes(),
                segments,
                devices,
                wires,
                document.checks());
    }

    private Answers particulars(String id, UnaryOperator<Particulars> change) {
        return device(id, it -> Opened.with(it, change.apply(it.particulars())));
    }

    private static Particulars serving(Particulars it, String service) {
        return new Particulars(service, it.rating(), it.voltage(), it.needsEarth(), it.fuses());
    }

    private static Particulars earthed(Particulars it) {
        return new Particulars(
                it.serves(), it.rating(), it.voltage(), EarthPolarity.POSITIVE, it.fuses());
    }

    private static Particulars voltage(Particulars it) {
        return new Particulars(
                it.serves(), it.rating(), Voltage.ofMillivolts(6_000), it.needsEarth(), it.fuses());
    }

    private static Particulars rated(Particulars it) {
        return new Particulars(it.serves(), SOME, it.voltage(), it.needsEarth(), it.fuses());
    }

    private static Device renamed(Device it, String name) {
        return new Device(it.id(), name, it.kind(), it.load(), it.particulars(), it.points());
    }

    /** Fuses of the random looms stand between the first and the second point. */
    private static Device marked(Device it) {
        FittedFuse fuse =
                new FittedFuse(
                        it.points().get(0).name(),
                        it.points().get(1).name(),
                        FuseStyle.BLADE,
                        SOME);
        Particulars old = it.particulars();
        return Opened.with(
                it,
                new Particulars(
                        old.serves(),
                        old.rating(),
                        old.voltage(),
                        old.needsEarth(),
                        List.of(fuse)));
    }

    private Answers point(String place) {
        int slash = place.indexOf('/');
        String name = place.substring(slash + 1);
        return device(
                place.substring(0, slash),
                it ->
                        new Device(
                                it.id(),
                                it.name(),
                                it.kind(),
                                it.load(),
                                it.particulars(),
                                map(it.points(), point -> roomy(point, name))));
    }

    private static Point roomy(Point point, String name) {
        return point.name().equals(name)
                ? new Point(point.name(), point.node(), point.tail(), 4)
                : point;
    }

    private Answers fitted(String node) {
        Loom loom =
                Amendments.apply(stock(), amendments, TestCatalogue.get())
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()))
                        .loom();
        return wires(
                it ->
                        new Wire(
                                it.id(),
                                it.circuit(),
                                it.colour(),
                                it.size(),
                                fitted(it.a(), node, loom),
                                fitted(it.b(), node, loom),
                                it.condition()));
    }

    private static WireEnd fitted(WireEnd end, String node, Loom loom) {
        return loom.getPoint(end).node().equals(node)
                ? new WireEnd(end.device(), end.point(), end.terminal(), Fitting.EITHER)
                : end;
    }

    private Answers finish(String id, UnaryOperator<Finish> change) {
        return segment(id, it -> it.withFinish(change.apply(it.finish())));
    }

    private static Finish finish(Finish it, @Nullable Integer picks, int coats) {
        return new Finish(
                it.covering(),
                it.baseYarn(),
                it.tracers(),
                picks,
                coats,
                new Evidence(EvidenceKind.MEASURED, ""));
    }

    private static Finish withPicks(Finish it) {
        return new Finish(
                it.covering(), it.baseYarn(), it.tracers(), 9, it.lacquerCoats(), it.evidence());
    }

    private static Finish withCoats(Finish it) {
        return new Finish(
                it.covering(), it.baseYarn(), it.tracers(), it.picksPer25Mm(), 2, it.evidence());
    }

    private static Segment readAgain(Segment it) {
        return new Segment(
                it.id(),
                it.from(),
                it.to(),
                it.length(),
                List.of(it.length(), it.length()),
                it.leaves(),
                it.bendDegrees(),
                it.finish(),
                it.openings());
    }

    private Answers opening(String id) {
        UnaryOperator<Opening> turn =
                it ->
                        it.id().equals(id)
                                ? new Opening(
                                        it.id(),
                                        it.name(),
                                        it.kind(),
                                        it.position(),
                                        it.clearDiameter(),
                                        PassDirection.AWAY_FROM_DATUM)
                                : it;
        return new Answers(
                with(
                        map(document.segments(), it -> it.withOpenings(map(it.openings(), turn))),
                        document.devices(),
                        document.wires()),
                amendments);
    }

    private static Wire inspected(Wire it) {
        return new Wire(
                it.id(), it.circuit(), it.colour(), it.size(), it.a(), it.b(), Condition.GOOD);
    }

    private Answers notStandard() {
        VehicleSheet it = document.vehicle();
        LoomDocument said =
                new LoomDocument(
                        document.name(),
                        new VehicleSheet(
                                it.name(),
                                it.year(),
                                it.hand(),
                                it.earth(),
                                it.system(),
                                List.of("nothing")),
                        document.datum(),
                        document.nodes(),
                        document.segments(),
                        document.devices(),
                        document.wires(),
                        document.checks());
        return new Answers(said, amendments);
    }
}
