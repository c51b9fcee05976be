package org.loomwright.core.routing;

import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.EndToEnd;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether what was measured agrees with itself: repeat readings of one segment with the length that is used, and end-to-end
 * measurements with the sum of the segments between. Where an end-to-end measurement does not close, the likeliest slip is named.
 *
 * <p>A measurement closes when it differs by no more than the larger of 10 mm and 1 % (common practice, no source). Readings agree
 * when none is farther than that from the length in use. The outlier is a segment whose correction by one amount closes the
 * measurement and opens none that closes; of several, those that leave the fewest open. All such segments are named when several
 * would do equally well, because then the measurements cannot tell them apart; where there is none, more than one length is wrong.
 */
public final class ClosingChecks {

    private static final Length LEAST_TOLERANCE = Length.ofMillimetres(10);
    private static final Ratio TOLERANCE = new Ratio(10_000);

    private final Loom loom;
    private final Routes routes;
    private final List<Closure> closures;

    /** One end-to-end measurement beside the sum of its segments. */
    private record Closure(EndToEnd check, Set<String> segments, Length sum) {

        /** Positive when more was measured than the segments add up to. */
        Length error() {
            return check.measured().minus(sum);
        }

        boolean closesAfter(Length correction) {
            Length left = error().minus(correction).absolute();
            return !left.isLongerThan(tolerance(check.measured()));
        }

        boolean closes() {
            return closesAfter(Length.ZERO);
        }
    }

    /**
     * @param loom a proven loom
     * @param routes its routes
     */
    public ClosingChecks(Loom loom, Routes routes) {
        this.loom = loom;
        this.routes = routes;
        this.closures = loom.document().checks().stream().map(this::closure).toList();
    }

    private Closure closure(EndToEnd check) {
        Set<String> segments =
                routes.between(check.from(), check.to()).stream()
                        .map(Segment::id)
                        .collect(Collectors.toSet());
        return new Closure(check, segments, routes.distance(check.from(), check.to()));
    }

    private static Length tolerance(Length measured) {
        Length share = measured.times(TOLERANCE, RoundingMode.CEILING);
        return share.isLongerThan(LEAST_TOLERANCE) ? share : LEAST_TOLERANCE;
    }

    /** @return a warning for every reading and every measurement that does not agree, none if all do */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        loom.segments().values().forEach(segment -> addReadings(segment, findings));
        closures.stream()
                .filter(closure -> !closure.closes())
                .forEach(closure -> findings.add(doesNotClose(closure)));
        return findings;
    }

    private static void addReadings(Segment segment, List<Finding> findings) {
        for (Length reading : segment.readings()) {
            Length off = reading.minus(segment.length()).absolute();
            if (off.isLongerThan(tolerance(segment.length()))) {
                findings.add(
                        Finding.warning(
                                "measure.reading-off",
                                Subject.of(ThingKind.SEGMENT, segment.id()),
                                "Segment %s is used as %s, but one reading is %s: %s apart, more than %s. Measure again."
                                        .formatted(
                                                segment.id(),
                                                segment.length(),
                                                reading,
                                                off,
                                                tolerance(segment.length()))));
            }
        }
    }

    private Finding doesNotClose(Closure closure) {
        EndToEnd check = closure.check();
        return Finding.warning(
                "measure.does-not-close",
                Subject.of(ThingKind.CHECK, check.id()),
                "Check %s from %s to %s measured %s, but its segments add up to %s: %s apart, more than %s. %s"
                        .formatted(
                                check.id(),
                                check.from(),
                                check.to(),
                                check.measured(),
                                closure.sum(),
                                closure.error().absolute(),
                                tolerance(check.measured()),
                                outlierWords(closure)));
    }

    private String outlierWords(Closure closure) {
        List<String> outliers = outliers(closure);
        return switch (outliers.size()) {
            case 0 ->
                    "No single segment explains it: more than one length is wrong. Measure each of"
                            + " them again.";
            case 1 ->
                    "Segment %s is the likeliest slip; measure it again."
                            .formatted(outliers.getFirst());
            default ->
                    "The measurements cannot tell which of segments %s is wrong; measure them again."
                            .formatted(String.join(", ", outliers));
        };
    }

    /**
     * The segments whose correction closes this measurement, opens none that closes, and leaves the fewest open; the middle error of
     * the open measurements through a segment is tried first, then this measurement's own.
     */
    private List<String> outliers(Closure open) {
        Map<Long, List<String>> byOpenLeft = new TreeMap<>();
        for (String segment : open.segments().stream().sorted().toList()) {
            Stream.of(middleError(segment), open.error())
                    .filter(correction -> explains(open, segment, correction))
                    .mapToLong(correction -> openAfter(segment, correction))
                    .min()
                    .ifPresent(
                            left ->
                                    byOpenLeft
                                            .computeIfAbsent(left, l -> new ArrayList<>())
                                            .add(segment));
        }
        return byOpenLeft.isEmpty() ? List.of() : byOpenLeft.values().iterator().next();
    }

    private boolean explains(Closure open, String segment, Length correction) {
        return open.closesAfter(correction)
                && closures.stream()
                        .filter(Closure::closes)
                        .filter(closure -> closure.segments().contains(segment))
                        .allMatch(closure -> closure.closesAfter(correction));
    }

    private Length middleError(String segment) {
        List<Length> errors =
                closures.stream()
                        .filter(closure -> closure.segments().contains(segment))
                        .filter(closure -> !closure.closes())
                        .map(Closure::error)
                        .sorted(Comparator.naturalOrder())
                        .toList();
        return errors.get(errors.size() / 2);
    }

    private long openAfter(String segment, Length correction) {
        return closures.stream()
                .filter(
                        closure ->
                                !closure.closesAfter(
                                        closure.segments().contains(segment)
                                                ? correction
                                                : Length.ZERO))
                .count();
    }
}
