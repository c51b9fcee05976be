package org.loomwright.core.geometry.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Packings against best known or exact containers; every packing is also checked to hold. */
class PackingReferenceTest {

    private static final List<Mix> NORMAL_MIXES = mixes(Effort.NORMAL, 1);

    @Test
    void smallCasesAreExactToEightFigures() {
        for (String[] row : ReferenceFile.rows("exact-small.csv")) {
            double[] radii = numbers(row[0]);
            double exact = Double.parseDouble(row[1]);
            assertEquals(exact, pack(radii, Effort.NORMAL).radiusMm(), 1e-8 * exact, row[0]);
        }
    }

    @Test
    void upToNineteenEqualCirclesReachTheBestKnown() {
        assertWorstAtMost(1e-6, equalGaps(1, 19, 1));
    }

    @Test
    void upToSixtyOneEqualCirclesAreWithinATenthOfAPerCent() {
        assertWorstAtMost(0.001, equalGaps(20, 61, 1));
    }

    @Test
    void upToOneHundredAndTwentyEqualCirclesAreWithinHalfAPerCent() {
        assertWorstAtMost(0.005, equalGaps(62, 120, 3));
    }

    @Test
    void loomMixesAreNearTheLongRuns() {
        List<Double> gaps = NORMAL_MIXES.stream().map(Mix::gap).toList();
        assertTrue(median(gaps) <= 0.012, () -> "median " + median(gaps));
        assertTrue(worst(gaps) <= 0.03, () -> "worst " + worst(gaps));
    }

    @Test
    void loomMixesAreNearerWithThoroughEffort() {
        List<Double> gaps = mixes(Effort.THOROUGH, 3).stream().map(Mix::gap).toList();
        assertTrue(median(gaps) <= 0.006, () -> "median " + median(gaps));
        assertTrue(worst(gaps) <= 0.02, () -> "worst " + worst(gaps));
    }

    @Test
    void noLoomMixIsLooserThanASortedFrontChain() {
        for (Mix mix : NORMAL_MIXES) {
            assertTrue(mix.radius <= mix.frontChain * (1 + 1e-9), mix.id);
        }
    }

    @Test
    void noLoomMixOfTwelveWiresOrMoreIsLooserThanTheRuleOfThumb() {
        for (Mix mix : NORMAL_MIXES) {
            assertTrue(mix.wires < 12 || mix.radius <= mix.rule, mix.id);
        }
    }

    /** With more circles these series stay above 0.2 per cent in the median; see packing-results.md. */
    @Test
    void unequalSeriesOfFewCirclesReachTheBestKnownWithThoroughEffort() {
        assertSeriesReached(seriesGaps(6, 12, 2, Effort.THOROUGH));
    }

    @Test
    void unequalSeriesReachTheBestKnownWithExhaustiveEffort() {
        assertSeriesReached(seriesGaps(16, 16, 1, Effort.EXHAUSTIVE));
    }

    /** Not the wanted 0.2 per cent in the median: what was measured, so that it does not get worse unseen. */
    @Test
    void unequalSeriesStayWithinWhatWasMeasuredWithNormalEffort() {
        List<Double> gaps = new ArrayList<>(seriesGaps(10, 50, 5, Effort.NORMAL));
        for (String[] row : ReferenceFile.rows("radii-one-to-n.csv")) {
            int count = Integer.parseInt(row[0]);
            if (count % 5 == 0) {
                gaps.add(gap(oneTo(count), Double.parseDouble(row[1]), Effort.NORMAL));
            }
        }
        assertTrue(median(gaps) <= 0.0125, () -> "median " + median(gaps));
        assertWorstAtMost(0.025, gaps);
    }

    private static void assertSeriesReached(List<Double> gaps) {
        assertTrue(median(gaps) <= 0.002, () -> "median " + median(gaps));
        assertWorstAtMost(0.01, gaps);
    }

    private static List<Double> seriesGaps(int from, int to, int step, Effort effort) {
        List<Double> gaps = new ArrayList<>();
        for (String[] row : ReferenceFile.rows("power-series.csv")) {
            int count = Integer.parseInt(row[3]);
            if (count >= from && count <= to && (count - from) % step == 0) {
                gaps.add(gap(powers(row), Double.parseDouble(row[4]), effort));
            }
        }
        return gaps;
    }

    @Test
    void noLowerBoundIsAboveABestKnownContainer() {
        for (String[] row : ReferenceFile.rows("equal-circles.csv")) {
            double[] radii = equal(Integer.parseInt(row[0]));
            assertTrue(LowerBound.of(radii) <= Double.parseDouble(row[1]) * (1 + 1e-12), row[0]);
        }
        for (String[] row : ReferenceFile.rows("power-series.csv")) {
            double[] radii = descending(powers(row));
            assertTrue(
                    LowerBound.of(radii) <= Double.parseDouble(row[4]) * (1 + 1e-12),
                    row[0] + row[3]);
        }
        for (String[] row : ReferenceFile.rows("radii-one-to-n.csv")) {
            double[] radii = descending(oneTo(Integer.parseInt(row[0])));
            assertTrue(LowerBound.of(radii) <= Double.parseDouble(row[1]) + 1e-8, row[0]);
        }
    }

    static double[] numbers(String spaced) {
        return Arrays.stream(spaced.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    /** Radii of wires such as {@code 3x4.2 12x1.5}. */
    static double[] mix(String grouped) {
        return Arrays.stream(grouped.split(" "))
                .map(group -> group.split("x"))
                .flatMapToDouble(
                        group ->
                                IntStream.range(0, Integer.parseInt(group[0]))
                                        .mapToDouble(i -> Double.parseDouble(group[1]) / 2))
                .toArray();
    }

    static double[] equal(int count) {
        double[] radii = new double[count];
        Arrays.fill(radii, 1);
        return radii;
    }

    static double[] powers(String[] row) {
        double exponent = Double.parseDouble(row[1]) / Double.parseDouble(row[2]);
        return IntStream.rangeClosed(1, Integer.parseInt(row[3]))
                .mapToDouble(i -> Math.pow(i, exponent))
                .toArray();
    }

    static double[] oneTo(int count) {
        return IntStream.rangeClosed(1, count).asDoubleStream().toArray();
    }

    private static double[] descending(double[] radii) {
        return Arrays.stream(radii).map(r -> -r).sorted().map(r -> -r).toArray();
    }

    private static PackedCircles pack(double[] radii, Effort effort) {
        PackedCircles packed = CirclePacker.pack(radii, effort);
        PackingCheck.holds(radii, packed);
        return packed;
    }

    private static void assertWorstAtMost(double limit, List<Double> gaps) {
        assertTrue(worst(gaps) <= limit, () -> "worst " + worst(gaps));
    }

    private static List<Double> equalGaps(int from, int to, int step) {
        List<Double> gaps = new ArrayList<>();
        for (String[] row : ReferenceFile.rows("equal-circles.csv")) {
            int count = Integer.parseInt(row[0]);
            if (count >= from && count <= to && (count - from) % step == 0) {
                gaps.add(gap(equal(count), Double.parseDouble(row[1]), Effort.NORMAL));
            }
        }
        return gaps;
    }

    /** A packed row of the loom mixes, with the rule of thumb 1.2 sqrt(sum r^2) beside it. */
    private record Mix(
            String id, int wires, double radius, double best, double frontChain, double rule) {
        double gap() {
            return radius / best - 1;
        }
    }

    /** Every packing is checked to hold. */
    private static List<Mix> mixes(Effort effort, int step) {
        List<Mix> mixes = new ArrayList<>();
        List<String[]> rows = ReferenceFile.rows("loom-mixes.csv");
        for (int k = 0; k < rows.size(); k += step) {
            mixes.add(packedMix(rows.get(k), effort));
        }
        return mixes;
    }

    private static Mix packedMix(String[] row, Effort effort) {
        double[] radii = mix(row[2]);
        double radius = pack(radii, effort).radiusMm();
        double rule = 1.2 * Math.sqrt(Arrays.stream(radii).map(r -> r * r).sum());
        double best = Double.parseDouble(row[3]);
        return new Mix(row[0], radii.length, radius, best, Double.parseDouble(row[4]), rule);
    }

    static double gap(double[] radii, double best, Effort effort) {
        return pack(radii, effort).radiusMm() / best - 1;
    }

    static double worst(List<Double> gaps) {
        return gaps.stream().max(Double::compare).orElseThrow();
    }

    static double median(List<Double> gaps) {
        return gaps.stream().sorted().toList().get(gaps.size() / 2);
    }
}
