package org.loomwright.core.period;

import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.period.Comparison.Sight;
import org.loomwright.core.period.Comparison.Verdict;
import org.loomwright.core.period.PeriodItem.Aspect;
import org.loomwright.core.period.PeriodPart.Kind;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Colour, conductor size and terminals of every wire that is new or differs from how it was recorded. */
final class WireItems {

    /** From about this year on the colour code was in use; published without a finer date. */
    private static final int SCHEME_SINCE = 1936;

    private final Comparison comparison;
    private final List<Finding> colours;
    private final ItemList items;
    private final Set<String> recordedSizes = new HashSet<>();
    private final Set<String> recordedTerminals = new HashSet<>();

    WireItems(Comparison comparison, List<Finding> colours, ItemList items) {
        this.comparison = comparison;
        this.colours = colours;
        this.items = items;
        comparison.stock().wires().values().stream()
                .filter(WireItems::speaks)
                .forEach(this::noteRecorded);
    }

    /** A wire that somebody mended or renewed does not show what was there when the vehicle was new. */
    private static boolean speaks(Wire wire) {
        return wire.condition() != Condition.REPAIRED && wire.condition() != Condition.NEW;
    }

    private void noteRecorded(Wire wire) {
        recordedSizes.add(wire.size());
        recordedTerminals.add(wire.a().terminal());
        recordedTerminals.add(wire.b().terminal());
    }

    void addAll() {
        comparison.loom().wires().values().stream()
                .filter(wire -> comparison.isNew(ThingKind.WIRE, wire.id()))
                .forEach(this::add);
    }

    private void add(Wire wire) {
        Wire before = comparison.stock().wires().get(wire.id());
        Subject subject = Subject.of(ThingKind.WIRE, wire.id());
        if (before == null || isRenewed(wire, before)) {
            items.add(subject, Aspect.COLOUR, wire.colour().letters(), colour(wire));
            items.add(subject, Aspect.SIZE, wire.size(), size(wire));
        }
        for (Side side : Side.values()) {
            if (before == null || !isSameEnd(wire.end(side), before.end(side))) {
                items.add(subject, aspect(side), words(wire.end(side)), terminal(wire.end(side)));
            }
        }
    }

    private static boolean isRenewed(Wire wire, Wire before) {
        return !wire.colour().equals(before.colour())
                || !wire.size().equals(before.size())
                || wire.condition() != before.condition();
    }

    private static boolean isSameEnd(WireEnd end, WireEnd before) {
        return end.isOnSamePointAs(before) && end.terminal().equals(before.terminal());
    }

    private static Aspect aspect(Side side) {
        return switch (side) {
            case A -> Aspect.TERMINAL_A;
            case B -> Aspect.TERMINAL_B;
        };
    }

    private String words(WireEnd end) {
        String name = comparison.catalogue().getTerminal(end.terminal()).name();
        return "%s at %s".formatted(name, end.place());
    }

    private Verdict colour(Wire wire) {
        Wire before = comparison.stock().wires().get(wire.id());
        if (before != null && before.colour().equals(wire.colour())) {
            return Verdict.of(Judgement.AS_PERIOD, "The colour is the one that was recorded.");
        }
        if (comparison.year() < SCHEME_SINCE) {
            return Verdict.of(
                    Judgement.UNKNOWN,
                    "The vehicle is older than the colour code: say which scheme it follows.");
        }
        return colours.stream()
                .filter(finding -> finding.subject().kind() == ThingKind.WIRE)
                .filter(finding -> finding.subject().id().equals(wire.id()))
                .findFirst()
                .map(finding -> offColour(wire, finding))
                .orElseGet(
                        () ->
                                Verdict.of(
                                        Judgement.AS_PERIOD,
                                        "Nothing was found against the colour in the code."));
    }

    private Verdict offColour(Wire wire, Finding finding) {
        Sight sight = either(comparison.sightOf(wire.a()), comparison.sightOf(wire.b()));
        return Verdict.of(
                Comparison.deviation(sight), finding.text() + " " + Comparison.words(sight));
    }

    /** The tails of a wire are seen where one of its ends is. */
    private static Sight either(Sight a, Sight b) {
        return Stream.of(a, b)
                .filter(sight -> Boolean.TRUE.equals(sight.isSeen()))
                .findFirst()
                .orElse(a.isSeen() == null ? a : b);
    }

    private Verdict size(Wire wire) {
        if (recordedSizes.contains(wire.size())) {
            return Verdict.of(Judgement.AS_PERIOD, "The recorded loom has wires of this size.");
        }
        Verdict verdict =
                comparison.judge(Kind.SIZE, wire.size(), new Sight(false, "inside the cable"));
        boolean deviates = verdict.judgement() == Judgement.HIDDEN_DEVIATION;
        String imperial = wire.size().replaceFirst("/.*", "/.012");
        boolean isSold = comparison.catalogue().findSize(imperial).isPresent();
        return deviates && isSold && !imperial.equals(wire.size())
                ? verdict.instead(imperial + ", the imperial size with as many strands")
                : verdict;
    }

    private Verdict terminal(WireEnd end) {
        return recordedTerminals.contains(end.terminal())
                ? Verdict.of(Judgement.AS_PERIOD, "The recorded loom has terminals of this kind.")
                : comparison.judge(Kind.TERMINAL, end.terminal(), comparison.sightOf(end));
    }
}
