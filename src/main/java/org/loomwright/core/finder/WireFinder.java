package org.loomwright.core.finder;

import org.loomwright.core.colour.TracedLoom;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.colour.code.ColourWords;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Outcome.Accepted;
import org.loomwright.core.finding.Outcome.Rejected;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the wires of a loom that may be the one that somebody sees. Colour counts 50, place 30, each thing said about size 20; the score is
 * the share reached of what was asked (own weights: a rank, no probability). A wire whose colour cannot be the one seen is left out. Cost:
 * linear in the number of wires, and some simulations for the first few.
 */
public final class WireFinder {

    /** So many wires are listed. */
    public static final int MOST_LISTED = 12;

    /** For so many of them it is told what to measure. */
    public static final int MOST_MEASURED = 5;

    private static final int COLOUR_WEIGHT = 50;
    private static final int PLACE_WEIGHT = 30;
    private static final int SIZE_WEIGHT = 20;

    private final TracedLoom traced;
    private final ColourCode code;
    private final ColourReader reader;
    private final Places places;
    private final Sizes sizes;
    private final Expectations expectations;

    /**
     * @param traced a loom
     * @param code the colour code
     * @param simulation of the same loom
     */
    public WireFinder(TracedLoom traced, ColourCode code, Simulation simulation) {
        this.traced = traced;
        this.code = code;
        this.reader = new ColourReader(traced.catalogue());
        this.places = new Places(traced.loom());
        this.sizes = new Sizes(traced.catalogue());
        this.expectations = new Expectations(traced, simulation);
    }

    /** A wire with its score and reasons. */
    private record Ranked(Wire wire, int score, List<String> reasons) {}

    /**
     * @param sighting what somebody sees
     * @return the wires that it may be, the best first, or what is wrong with the question
     */
    public Outcome<FoundWires> find(Sighting sighting) {
        List<Finding> wrong = new ArrayList<>(sizes.check(sighting));
        Outcome<SeenColour> colour = reader.read(sighting.colour());
        if (colour instanceof Rejected<SeenColour>(List<Finding> reasons)) {
            wrong.addAll(reasons);
        }
        Set<String> meant = meant(sighting, wrong);
        if (sighting.saysNothing()) {
            wrong.add(
                    fault(
                            "finder.nothing-asked",
                            "Say what you see: a colour, a size or a place."));
        }
        return wrong.isEmpty() && colour instanceof Accepted<SeenColour>(SeenColour seen)
                ? Outcome.accepted(found(seen, sighting, meant))
                : Outcome.rejected(wrong);
    }

    private Set<String> meant(Sighting sighting, List<Finding> wrong) {
        if (sighting.place().isBlank()) {
            return Set.of();
        }
        boolean isTooLong = sighting.place().length() > ColourReader.LONGEST;
        Set<String> meant = isTooLong ? Set.of() : places.meant(sighting.place());
        if (meant.isEmpty()) {
            wrong.add(
                    fault(
                            "finder.place-unknown",
                            isTooLong
                                    ? "A place is described in at most %d characters."
                                            .formatted(ColourReader.LONGEST)
                                    : "No breakout, end or device of this loom is called '%s'."
                                            .formatted(sighting.place().strip())));
        }
        return meant;
    }

    private static Finding fault(String rule, String text) {
        return Finding.fault(rule, Subject.of(ThingKind.REQUEST, ""), text);
    }

    private FoundWires found(SeenColour seen, Sighting sighting, Set<String> meant) {
        List<Ranked> ranked =
                traced.loom().wires().values().stream()
                        .map(wire -> rank(wire, seen, sighting, meant))
                        .flatMap(Optional::stream)
                        .filter(it -> it.score() > 0)
                        .sorted(
                                Comparator.comparingInt(Ranked::score)
                                        .reversed()
                                        .thenComparing(it -> it.wire().id()))
                        .toList();
        List<FoundWire> listed = new ArrayList<>();
        for (Ranked one : ranked.subList(0, Math.min(ranked.size(), MOST_LISTED))) {
            listed.add(described(one, listed.size() < MOST_MEASURED));
        }
        return new FoundWires(listed, ranked.size() - listed.size(), meter(), FoundWires.CAUTION);
    }

    private Optional<Ranked> rank(
            Wire wire, SeenColour seen, Sighting sighting, Set<String> meant) {
        Tally tally = new Tally();
        if (!seen.saysNothing()) {
            boolean hasFaded = wire.condition() == Condition.FADED;
            Optional<Fit> fit = seen.fit(wire.colour(), hasFaded, code);
            if (fit.isEmpty()) {
                return Optional.empty();
            }
            tally.add(COLOUR_WEIGHT, fit.get());
        }
        sizes.fits(wire, sighting).forEach(fit -> tally.add(SIZE_WEIGHT, fit));
        if (!meant.isEmpty()) {
            tally.add(PLACE_WEIGHT, places.fit(wire, meant));
        }
        return Optional.of(new Ranked(wire, tally.score(), tally.reasons()));
    }

    private FoundWire described(Ranked one, boolean measured) {
        Wire wire = one.wire();
        return new FoundWire(
                wire,
                one.score(),
                one.reasons(),
                ColourWords.withLetters(wire.colour(), traced.catalogue()),
                words(wire.a()),
                words(wire.b()),
                places.route(wire),
                measured ? expectations.of(wire.id()) : List.of());
    }

    private String words(WireEnd end) {
        Point point = traced.loom().getPoint(end);
        return "%s of %s (%s), at %s (%s)"
                .formatted(
                        end.point(),
                        end.device(),
                        traced.loom().getDevice(end.device()).name(),
                        point.node(),
                        traced.loom().getNode(point.node()).name());
    }

    private String meter() {
        return switch (traced.loom().document().vehicle().earth()) {
            case POSITIVE ->
                    "Positive earth: the meter's red lead to the body, the black to the wire.";
            case NEGATIVE ->
                    "Negative earth: the meter's black lead to the body, the red to the wire.";
        };
    }
}
