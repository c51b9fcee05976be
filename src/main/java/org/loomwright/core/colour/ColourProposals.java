package org.loomwright.core.colour;

import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.ColourProposal.Choice;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.colour.code.ColourFunction;
import org.loomwright.core.colour.code.ColourWords;
import org.loomwright.core.colour.code.Leg;
import org.loomwright.core.colour.code.SupplyColour;
import org.loomwright.core.electrical.tracing.Role;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The code that feed and function of a wire call for. In this order: earth is black; the published use of its leg; the remembered use; the
 * body of its supply, plain for a feed, with a tracer behind a switch. What another function has at either end is passed over, unless
 * something published speaks against that wire's own colour: a wrong wire holds no code.
 * Immutable and thread-safe.
 */
public final class ColourProposals {

    private static final Provenance TRACER_RULE = new Provenance(Status.FOUND, "C10;C12");
    private static final int MOST_ALTERNATIVES = 5;

    private final TracedLoom traced;
    private final ColourCode code;
    private final Feeds feeds;
    private final Contradictions contradictions;

    /**
     * @param traced the loom in which the wires are, or will be
     * @param code the colour code
     */
    public ColourProposals(TracedLoom traced, ColourCode code) {
        this.traced = traced;
        this.code = code;
        this.feeds = new Feeds(traced, code);
        this.contradictions = new Contradictions(traced, code);
    }

    /**
     * @param wire id of a wire of the loom
     * @return the proposal, empty where tracing cannot say what the wire is
     * @throws IllegalArgumentException if the loom has no such wire
     */
    public Optional<ColourProposal> of(String wire) {
        Wire there = traced.loom().getWire(wire);
        return of(traced.trace(there), there.a(), there.b());
    }

    /**
     * @param trace what is known about a wire, which need not be in the loom yet
     * @param a where it begins
     * @param b where it ends
     * @return the proposal, empty where the trace does not say what the wire is
     * @throws IllegalArgumentException if the loom has no such points
     */
    public Optional<ColourProposal> of(WireTrace trace, WireEnd a, WireEnd b) {
        if (trace.role() == Role.EARTH_SIDE && trace.supply() == Supply.NONE) {
            return Optional.empty();
        }
        Set<Leg> legs = Legs.of(traced, trace, a, b);
        List<Wire> others = othersAt(trace, a, b);
        Map<WireColour, Choice> choices = new LinkedHashMap<>();
        byFunction(trace, legs).forEach(choice -> choices.putIfAbsent(choice.colour(), choice));
        byRule(trace, legs, others).forEach(choice -> choices.putIfAbsent(choice.colour(), choice));
        return choose(new ArrayList<>(choices.values()), trace, legs, others);
    }

    /** Wires of other nets that leave the loom where this one does. */
    private List<Wire> othersAt(WireTrace trace, WireEnd a, WireEnd b) {
        Set<Wire> others = new TreeSet<>(Comparator.comparing(Wire::id));
        others.addAll(traced.leavingWith(a));
        others.addAll(traced.leavingWith(b));
        return others.stream()
                .filter(other -> !other.id().equals(trace.wire()))
                .filter(other -> !traced.isOnNet(other, a) && !traced.isOnNet(other, b))
                .toList();
    }

    private List<Choice> byFunction(WireTrace trace, Set<Leg> legs) {
        List<Leg> order = List.copyOf(legs);
        return code.functions().stream()
                .filter(use -> use.leg() != Leg.OTHER && legs.contains(use.leg()))
                .filter(use -> use.covers(trace.serves()) && feeds.agrees(use, trace))
                .filter(use -> code.isUsedIn(use.colour(), year()))
                .sorted(
                        Comparator.comparing((ColourFunction use) -> !use.isPublished())
                                .thenComparing(use -> !feeds.agreesByBody(use.colour(), trace))
                                .thenComparing(use -> order.indexOf(use.leg()))
                                .thenComparing(ColourFunction::isGeneral))
                .map(use -> new Choice(use.colour(), reason(use), use.provenance()))
                .toList();
    }

    private int year() {
        return traced.loom().document().vehicle().year();
    }

    private static String reason(ColourFunction use) {
        return "%s is there for: %s".formatted(use.colour(), use.function());
    }

    private List<Choice> byRule(WireTrace trace, Set<Leg> legs, List<Wire> others) {
        if (trace.role() == Role.RETURN || trace.role() == Role.LOOSE) {
            return List.of();
        }
        Optional<SupplyColour> body = code.findBody(trace.supply(), year());
        return body.map(row -> byRule(row, trace, legs, others)).orElse(List.of());
    }

    private List<Choice> byRule(
            SupplyColour body, WireTrace trace, Set<Leg> legs, List<Wire> others) {
        List<Choice> choices = new ArrayList<>();
        String letters = body.colour().body();
        String fed =
                "%s is the body colour of what is fed from %s".formatted(letters, body.words());
        if (legs.contains(Leg.FEED)) {
            choices.add(new Choice(body.colour(), fed, body.provenance()));
        }
        if (trace.role() == Role.EARTH_SIDE) {
            String earth = code.earth().colour().body();
            choices.add(
                    new Choice(
                            new WireColour(letters, earth),
                            fed
                                    + ", and a black tracer marks a leg that is switched on the"
                                    + " earth side",
                            TRACER_RULE));
        }
        Set<WireColour> neighbours = new TreeSet<>();
        others.forEach(other -> neighbours.add(other.colour()));
        new NextTracer(code, traced.catalogue(), neighbours)
                .on(letters)
                .forEach(
                        free ->
                                choices.add(
                                        new Choice(
                                                free.colour(),
                                                fed + "; " + free.reason(),
                                                free.provenance())));
        return choices;
    }

    private Optional<ColourProposal> choose(
            List<Choice> choices, WireTrace trace, Set<Leg> legs, List<Wire> others) {
        List<Choice> free = new ArrayList<>();
        List<String> passedOver = new ArrayList<>();
        for (Choice choice : choices) {
            Optional<Wire> taken = takenBy(choice.colour(), trace, legs, others);
            if (taken.isEmpty()) {
                free.add(choice);
            } else if (free.isEmpty()) {
                passedOver.add(passedOver(choice, taken.get()));
            }
        }
        if (free.isEmpty()) {
            return Optional.empty();
        }
        Choice best = free.getFirst();
        String reason = String.join("; ", passedOver) + (passedOver.isEmpty() ? "" : "; so ");
        List<Choice> rest = free.subList(1, Math.min(free.size(), MOST_ALTERNATIVES + 1));
        return Optional.of(
                new ColourProposal(
                        new Choice(best.colour(), reason + best.reason(), best.provenance()),
                        rest));
    }

    private static String passedOver(Choice choice, Wire taken) {
        return "%s, but wire %s has that colour for %s where this one leaves the loom"
                .formatted(choice.reason(), taken.id(), taken.circuit());
    }

    /** A wire that has the colour, rightly, for another function. Earths share theirs, and a plain body is what every feed of a supply has. */
    private Optional<Wire> takenBy(
            WireColour colour, WireTrace trace, Set<Leg> legs, List<Wire> others) {
        if (legs.contains(Leg.FEED) && colour.tracer() == null) {
            return Optional.empty();
        }
        return others.stream()
                .filter(other -> other.colour().equals(colour))
                .filter(other -> !isSameFunction(trace, legs, other))
                .filter(other -> !contradictions.isRejected(other))
                .findFirst();
    }

    private boolean isSameFunction(WireTrace trace, Set<Leg> legs, Wire other) {
        WireTrace there = traced.trace(other);
        Set<Leg> otherLegs = Legs.of(traced, there, other.a(), other.b());
        boolean bothFeeds = legs.contains(Leg.FEED) && otherLegs.contains(Leg.FEED);
        boolean sameSupply = there.role() == trace.role() && there.supply() == trace.supply();
        boolean bothEarths = trace.role() == Role.RETURN && there.role() == Role.RETURN;
        boolean sameUse =
                there.serves().equals(trace.serves())
                        && legs.stream().anyMatch(otherLegs::contains);
        return bothEarths || sameUse || sameSupply && bothFeeds;
    }

    /**
     * Compares the colours that wires have with those proposed. A colour that is published for the wire is right even where another is
     * proposed first.
     *
     * @param wires ids of wires of the loom, for example those that amendments added
     * @return a warning for each that differs, or a note where the proposal is from memory
     */
    public List<Finding> differing(Collection<String> wires) {
        List<Finding> findings = new ArrayList<>();
        for (String id : new TreeSet<>(wires)) {
            of(id).ifPresent(proposal -> compare(traced.loom().getWire(id), proposal, findings));
        }
        return List.copyOf(findings);
    }

    private void compare(Wire wire, ColourProposal proposal, List<Finding> findings) {
        if (proposal.isRight(wire.colour())) {
            return;
        }
        String text =
                "New wire %s is to be %s; the code would have it %s: %s."
                        .formatted(
                                wire.id(),
                                words(wire.colour()),
                                words(proposal.colour()),
                                proposal.best().reasonWithSource());
        Subject subject = Subject.of(ThingKind.WIRE, wire.id());
        boolean isMemory = proposal.best().provenance().status() == Status.MEMORY;
        findings.add(
                isMemory
                        ? Finding.note("colour.new-differs", subject, text)
                        : Finding.warning("colour.new-differs", subject, text));
    }

    private String words(WireColour colour) {
        return ColourWords.withLetters(colour, traced.catalogue());
    }
}
