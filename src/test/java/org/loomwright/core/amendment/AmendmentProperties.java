package org.loomwright.core.amendment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.core.amendment.Amending.accept;
import static org.loomwright.core.amendment.Amending.refuse;

import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.AmendedLoom.Piece;
import org.loomwright.core.amendment.Amendment.AddDevice;
import org.loomwright.core.amendment.Amendment.AddOpening;
import org.loomwright.core.amendment.Amendment.AddWire;
import org.loomwright.core.amendment.Amendment.BreakOutBranch;
import org.loomwright.core.amendment.Amendment.ChangeCovering;
import org.loomwright.core.amendment.Amendment.ChangeDevice;
import org.loomwright.core.amendment.Amendment.ChangeLength;
import org.loomwright.core.amendment.Amendment.ChangeTerminal;
import org.loomwright.core.amendment.Amendment.ChangeVehicle;
import org.loomwright.core.amendment.Amendment.ExtendBranch;
import org.loomwright.core.amendment.Amendment.MoveWireEnd;
import org.loomwright.core.amendment.Amendment.RemoveBranch;
import org.loomwright.core.amendment.Amendment.RemoveDevice;
import org.loomwright.core.amendment.Amendment.RemoveOpening;
import org.loomwright.core.amendment.Amendment.RemoveWire;
import org.loomwright.core.amendment.Amendment.ReplaceWire;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Length;
import org.loomwright.testing.RandomLooms;
import org.loomwright.testing.RandomLooms.Size;
import org.loomwright.testing.TestLooms;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What is true of any amendments on any loom. */
class AmendmentProperties {

    private static final int LOOMS = 45;

    private static Loom loom(long seed) {
        return RandomLooms.of(seed, seed % 3 == 0 ? Size.CAR : Size.SMALL);
    }

    @Test
    void theGeneratorMakesEveryKindThatCanBeIndependent() {
        Set<Class<?>> kinds = new LinkedHashSet<>();
        for (long seed = 0; seed < LOOMS; seed++) {
            RandomAmendments.independent(loom(seed), seed, 30)
                    .forEach(amendment -> kinds.add(amendment.getClass()));
        }

        assertThat(kinds)
                .containsExactlyInAnyOrder(
                        AddWire.class,
                        RemoveWire.class,
                        ReplaceWire.class,
                        MoveWireEnd.class,
                        ChangeTerminal.class,
                        BreakOutBranch.class,
                        ExtendBranch.class,
                        ChangeLength.class,
                        AddDevice.class,
                        ChangeDevice.class,
                        ChangeVehicle.class,
                        ChangeCovering.class,
                        AddOpening.class,
                        RemoveOpening.class);
    }

    @Test
    void theOrderOfIndependentAmendmentsDoesNotMatter() {
        for (long seed = 0; seed < LOOMS; seed++) {
            Loom stock = loom(seed);
            List<Amendment> amendments = RandomAmendments.independent(stock, seed, 30);
            List<Amendment> shuffled = new ArrayList<>(amendments);
            Collections.shuffle(shuffled, new Random(seed));

            AmendedLoom inOrder = accept(stock, amendments);
            AmendedLoom inDisorder = accept(stock, shuffled);

            assertThat(inDisorder.loom()).as("seed %d", seed).isEqualTo(inOrder.loom());
            assertThat(inDisorder.pieces()).isEqualTo(inOrder.pieces());
            assertThat(inDisorder.voided().keySet()).isEqualTo(inOrder.voided().keySet());
            assertThat(Set.copyOf(inDisorder.takenOut())).isEqualTo(Set.copyOf(inOrder.takenOut()));
            assertThat(inDisorder.origins().keySet()).isEqualTo(inOrder.origins().keySet());
        }
    }

    @Test
    void aBadAmendmentAnywhereIsToldAndBlamesNoOther() {
        for (long seed = 0; seed < LOOMS; seed++) {
            Loom stock = loom(seed);
            List<Amendment> amendments =
                    new ArrayList<>(RandomAmendments.independent(stock, seed, 20));
            int index = new Random(seed).nextInt(amendments.size() + 1);
            amendments.add(index, new RemoveWire("bad", "", "nobody"));

            assertThat(refuse(stock, amendments.toArray(Amendment[]::new)))
                    .singleElement()
                    .extracting(finding -> finding.subject().pointer())
                    .isEqualTo("/amendments/" + index + "/wire");
        }
    }

    @Test
    void undoingEveryAmendmentInReverseGivesTheStockLoomBack() {
        for (long seed = 0; seed < LOOMS; seed++) {
            Loom stock = loom(seed);
            List<Amendment> amendments =
                    RandomAmendments.independent(stock, seed, 30).stream()
                            .filter(amendment -> undo(amendment, stock).isPresent())
                            .toList();
            List<Amendment> thereAndBack = new ArrayList<>(amendments);
            amendments.reversed().forEach(done -> undo(done, stock).ifPresent(thereAndBack::add));

            AmendedLoom amended = accept(stock, thereAndBack);

            assertThat(amendments).isNotEmpty();
            assertThat(amended.loom()).as("seed %d", seed).isEqualTo(stock);
            assertThat(amended.origins()).isEmpty();
            assertThat(amended.pieces()).isEmpty();
            assertThat(amended.takenOut()).isEmpty();
            assertThat(amended.voided()).isEmpty();
        }
    }

    /** The amendment that takes another one back; empty where only leaving it out of the list does. */
    private static Optional<Amendment> undo(Amendment amendment, Loom stock) {
        String id = amendment.id() + "-back";
        return switch (amendment) {
            case AddWire a -> Optional.of(new RemoveWire(id, "", a.wire().id()));
            case AddDevice a -> Optional.of(new RemoveDevice(id, "", a.device().id()));
            case AddOpening a -> Optional.of(new RemoveOpening(id, "", a.opening().id()));
            case BreakOutBranch a -> Optional.of(new RemoveBranch(id, "", a.branch().id()));
            case ExtendBranch a -> Optional.of(new RemoveBranch(id, "", a.branch().id()));
            case ChangeLength a ->
                    Optional.of(
                            new ChangeLength(
                                    id,
                                    "",
                                    a.segment(),
                                    TestLooms.segment(stock, a.segment()).length()));
            case ChangeCovering a ->
                    Optional.of(
                            new ChangeCovering(
                                    id,
                                    "",
                                    a.segment(),
                                    TestLooms.segment(stock, a.segment()).finish()));
            case MoveWireEnd a ->
                    Optional.of(
                            new MoveWireEnd(
                                    id,
                                    "",
                                    a.wire(),
                                    a.side(),
                                    TestLooms.wire(stock, a.wire()).end(a.side())));
            case ChangeTerminal a ->
                    Optional.of(
                            new ChangeTerminal(
                                    id,
                                    "",
                                    a.wire(),
                                    a.side(),
                                    TestLooms.wire(stock, a.wire()).end(a.side()).terminal()));
            case ChangeDevice a -> Optional.of(as(stock.getDevice(a.device()), id));
            case ChangeVehicle a -> {
                VehicleSheet was = stock.document().vehicle();
                yield Optional.of(new ChangeVehicle(id, "", was.earth(), was.system()));
            }
            case RemoveWire a -> Optional.empty();
            case RemoveDevice a -> Optional.empty();
            case RemoveOpening a -> Optional.empty();
            case RemoveBranch a -> Optional.empty();
            case ReplaceWire a -> Optional.empty();
        };
    }

    private static ChangeDevice as(Device was, String id) {
        return new ChangeDevice(
                id, "", was.id(), was.name(), was.kind(), was.load(), was.particulars());
    }

    @Test
    void leavingAnIndependentAmendmentOutIsTheSameAsNeverHavingMadeIt() {
        for (long seed = 0; seed < LOOMS; seed++) {
            Loom stock = loom(seed);
            List<Amendment> amendments = RandomAmendments.independent(stock, seed, 20);
            List<Amendment> withOneMore = new ArrayList<>(amendments);
            Amendment extra = new AddWire("extra", "", extraWire(stock));
            withOneMore.add((int) seed % amendments.size(), extra);
            List<Amendment> undone = new ArrayList<>(withOneMore);
            undone.add(new RemoveWire("undo", "", "W-extra"));

            AmendedLoom without = accept(stock, amendments);

            assertThat(accept(stock, withOneMore).loom()).isNotEqualTo(without.loom());
            assertThat(accept(stock, undone)).as("seed %d", seed).isEqualTo(without);
        }
    }

    private static Wire extraWire(Loom stock) {
        Wire model = stock.wires().values().iterator().next();
        return new Wire(
                "W-extra",
                "extra",
                model.colour(),
                model.size(),
                model.a(),
                model.b(),
                model.condition());
    }

    @Test
    void breakoutsLeaveEveryRouteAPathOfTheSameLength() {
        for (long seed = 0; seed < LOOMS; seed++) {
            Loom stock = loom(seed);
            Loom amended = accept(stock, RandomAmendments.breakouts(stock, seed, 25)).loom();

            for (Wire wire : stock.wires().values()) {
                List<Segment> route = route(amended, wire);
                assertThat(isPath(route, node(amended, wire.a()))).isTrue();
                assertThat(length(route)).isEqualTo(length(route(stock, wire)));
            }
        }
    }

    @Test
    void piecesAddUpToTheirWholeInLengthAndBends() {
        for (long seed = 0; seed < LOOMS; seed++) {
            Loom stock = loom(seed);
            AmendedLoom amended = accept(stock, RandomAmendments.breakouts(stock, seed, 25));
            Map<String, Length> lengths = new TreeMap<>();
            Map<String, Integer> bends = new TreeMap<>();
            for (Segment segment : amended.loom().segments().values()) {
                Piece piece = amended.piece(segment.id());
                lengths.merge(piece.recorded().id(), segment.length(), Length::plus);
                bends.merge(piece.recorded().id(), segment.bendDegrees(), Integer::sum);
            }

            for (Segment segment : stock.segments().values()) {
                assertThat(lengths).containsEntry(segment.id(), segment.length());
                assertThat(bends).containsEntry(segment.id(), segment.bendDegrees());
            }
        }
    }

    @Test
    void openingsKeepTheirDistanceFromTheDatum() {
        for (long seed = 0; seed < LOOMS; seed++) {
            Loom stock = loom(seed);
            Loom amended = accept(stock, RandomAmendments.breakouts(stock, seed, 25)).loom();

            assertThat(openingDistances(amended)).isEqualTo(openingDistances(stock));
        }
    }

    @Test
    void anAddedOpeningStandsWhereItWasAskedForHoweverOftenItsSegmentIsSplit() {
        for (long seed = 0; seed < LOOMS; seed++) {
            Loom stock = loom(seed);
            List<Amendment> amendments =
                    RandomAmendments.independent(stock, seed, 40).stream()
                            .filter(amendment -> !(amendment instanceof ChangeLength))
                            .toList();
            Map<String, Length> distances = openingDistances(accept(stock, amendments).loom());

            for (Amendment amendment : amendments) {
                if (amendment instanceof AddOpening added) {
                    String from = TestLooms.segment(stock, added.segment()).from();
                    Length asked = distance(stock, from).plus(added.opening().position());
                    assertThat(distances).containsEntry(added.opening().id(), asked);
                }
            }
        }
    }

    @Test
    void everyPartThatIsNotAsRecordedHasAnOriginAndOnlyThat() {
        for (long seed = 0; seed < LOOMS; seed++) {
            Loom stock = loom(seed);
            AmendedLoom amended = accept(stock, RandomAmendments.independent(stock, seed, 30));

            for (Wire wire : amended.loom().wires().values()) {
                boolean asRecorded = wire.equals(stock.wires().get(wire.id()));
                Origin origin = amended.origin(ThingKind.WIRE, wire.id());
                assertThat(origin.equals(Origin.STOCK)).isEqualTo(asRecorded);
            }
        }
    }

    private static Map<String, Length> openingDistances(Loom loom) {
        Map<String, Length> distances = new HashMap<>();
        for (Segment segment : loom.segments().values()) {
            Length start = distance(loom, segment.from());
            segment.openings()
                    .forEach(
                            opening -> distances.put(opening.id(), start.plus(opening.position())));
        }
        return distances;
    }

    private static Length distance(Loom loom, String node) {
        return length(toDatum(loom, node));
    }

    private static Length length(List<Segment> segments) {
        return Length.sum(segments.stream().map(Segment::length).toList());
    }

    private static String node(Loom loom, WireEnd end) {
        return loom.getPoint(end).node();
    }

    private static List<Segment> toDatum(Loom loom, String node) {
        List<Segment> path = new ArrayList<>();
        Optional<Segment> next = loom.findArriving(node);
        while (next.isPresent()) {
            path.add(next.get());
            next = loom.findArriving(next.get().from());
        }
        return path;
    }

    /** Both ways to the datum without what they share; written anew here so as not to trust the program's own routing. */
    private static List<Segment> route(Loom loom, Wire wire) {
        List<Segment> out = toDatum(loom, node(loom, wire.a()));
        List<Segment> back = toDatum(loom, node(loom, wire.b()));
        Set<Segment> shared = new LinkedHashSet<>(out);
        shared.retainAll(Set.copyOf(back));
        return Stream.concat(out.stream(), back.reversed().stream())
                .filter(segment -> !shared.contains(segment))
                .toList();
    }

    private static boolean isPath(List<Segment> route, String start) {
        String at = start;
        for (Segment segment : route) {
            if (segment.to().equals(at)) {
                at = segment.from();
            } else if (segment.from().equals(at)) {
                at = segment.to();
            } else {
                return false;
            }
        }
        return true;
    }
}
