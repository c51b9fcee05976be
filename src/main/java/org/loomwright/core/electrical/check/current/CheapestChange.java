package org.loomwright.core.electrical.check.current;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.electrical.check.current.Flow.Edge;
import org.loomwright.core.electrical.check.remedy.OwnFeeds;
import org.loomwright.core.electrical.check.remedy.OwnFeeds.Request;
import org.loomwright.core.electrical.check.remedy.Proposal;
import org.loomwright.core.electrical.check.remedy.ThickerWires;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;

import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The cheapest single change that brings a figure within its limit: thicker wires before relays before other feeds ({@link
 * Proposal.Kind} says why). What calculation calls enough is tried on the changed loom: every scenario in which the limit is broken is
 * simulated again, the figure must hold and no load that was on may have gone off. Cost: a few simulations for each figure.
 */
final class CheapestChange {

    /** Ways of loads that are tried for a relay or another feed. Own choice. */
    private static final int MOST_PATHS = 2;

    /** A load that still gets this share of its current still works. Own choice: lamps and motors are off or on, not in between. */
    private static final double STILL_ON = 0.9;

    private final Observations now;
    private final Compared looms;
    private final Catalogue catalogue;
    private final Function<Loom, AllowedCurrents> allowed;
    private final Function<Loom, Simulation> simulate;
    private final Map<List<Amendment>, Optional<Trial>> tried = new HashMap<>();
    private final ThickerWires thicker;
    private final OwnFeeds ownFeeds;

    CheapestChange(
            Compared looms,
            Catalogue catalogue,
            ElectricalTables tables,
            CurrentRules rules,
            Function<Loom, AllowedCurrents> allowed,
            Function<Loom, Simulation> simulate) {
        this.now = looms.now();
        this.looms = looms;
        this.catalogue = catalogue;
        this.allowed = allowed;
        this.simulate = simulate;
        this.thicker = new ThickerWires(now.loom(), catalogue);
        this.ownFeeds = new OwnFeeds(now.loom(), catalogue, tables, rules.fuseLoad().value());
    }

    Optional<Proposal> of(Cure cure) {
        Stream<Proposal> wires = thicker.of(cure.thicker()).stream();
        Stream<Proposal> relays =
                cure.paths().stream().limit(MOST_PATHS).flatMap(path -> relays(path, cure));
        Stream<Proposal> feeds =
                cure.paths().stream().limit(MOST_PATHS).flatMap(path -> feeds(path, cure));
        return Stream.of(wires, relays, feeds)
                .flatMap(Function.identity())
                .filter(proposal -> helps(proposal, cure))
                .findFirst();
    }

    private boolean helps(Proposal proposal, Cure cure) {
        return tried.computeIfAbsent(proposal.amendments(), this::attempt)
                .filter(trial -> cure.broken().stream().allMatch(it -> holds(trial, it, cure)))
                .isPresent();
    }

    private Optional<Trial> attempt(List<Amendment> amendments) {
        return switch (Amendments.apply(now.loom(), amendments, catalogue)) {
            case Outcome.Accepted<AmendedLoom>(AmendedLoom amended) ->
                    Optional.of(
                            new Trial(
                                    amended.loom(),
                                    allowed.apply(amended.loom()),
                                    simulate.apply(amended.loom())));
            case Outcome.Rejected<AmendedLoom> refused -> Optional.empty();
        };
    }

    private static boolean holds(Trial trial, Observed broken, Cure cure) {
        return trial.readings(broken.flow().readings().scenario())
                .filter(readings -> cure.measure().holds(trial, readings))
                .filter(readings -> stillOn(broken, readings))
                .isPresent();
    }

    private static boolean stillOn(Observed before, Readings after) {
        return before.paths().stream()
                .filter(path -> !path.charges())
                .allMatch(
                        path ->
                                after.ofDevice(path.load().device()).stream()
                                        .filter(reading -> isSame(reading, path.load()))
                                        .anyMatch(
                                                reading ->
                                                        Math.abs(reading.current().milliamperes())
                                                                >= STILL_ON
                                                                        * path.current()
                                                                                .milliamperes()));
    }

    private static boolean isSame(ElementReading one, ElementReading other) {
        return one.element() == other.element()
                && one.from().equals(other.from())
                && one.to().equals(other.to());
    }

    /** After the last switch, and after what carries too much if that comes later still. */
    private Stream<Proposal> relays(LoadPath path, Cure cure) {
        List<Edge> out = path.out();
        int contact = last(out, edge -> edge.is(Element.CONTACT));
        int through = last(out, cure.through()::test);
        if (contact < 0) {
            return Stream.empty();
        }
        return out.stream()
                .skip(Math.max(contact, through))
                .filter(edge -> edge.wire() != null)
                .findFirst()
                .stream()
                .flatMap(edge -> ownFeeds.relays(request(edge)).stream());
    }

    /** Where the additions begin, behind what carries too much. */
    private Stream<Proposal> feeds(LoadPath path, Cure cure) {
        int through = last(path.out(), cure.through()::test);
        return path.out().stream()
                .skip(through + 1L)
                .filter(edge -> edge.wire() != null && looms.isAdded(edge.wire()))
                .findFirst()
                .stream()
                .flatMap(edge -> ownFeeds.feeds(request(edge)).stream());
    }

    private static int last(List<Edge> edges, Predicate<Edge> wanted) {
        for (int i = edges.size() - 1; i >= 0; i--) {
            if (wanted.test(edges.get(i))) {
                return i;
            }
        }
        return -1;
    }

    private Request request(Edge edge) {
        Wire wire = now.loom().getWire(Objects.requireNonNull(edge.wire()));
        Side load = wire.a().place().equals(edge.to()) ? Side.A : Side.B;
        return new Request(wire, load, Current.ofMilliamperes(most(wire)), leastLeft(wire));
    }

    private long most(Wire wire) {
        int index = now.wires().find(wire.id());
        return now.scenarios().stream()
                .mapToLong(one -> one.currents().current(index).milliamperes())
                .max()
                .orElse(0);
    }

    /** What is left of a rating in the worst place and time that any wire of the loom meets: new wires may have to go there. */
    private Ratio leastLeft(Wire wire) {
        int index = now.wires().find(wire.id());
        double rating = now.wires().size(index).rating().toDoubleAmperes();
        double left =
                now.scenarios().stream()
                        .mapToDouble(
                                one -> one.currents().allowed(index).toDoubleAmperes() / rating)
                        .min()
                        .orElse(1);
        return Ratio.rounded(left, RoundingMode.FLOOR);
    }
}
