package org.loomwright.core.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Polyline;
import org.loomwright.core.layout.LoomLayout.Manner;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;
import org.loomwright.testing.RandomLooms;
import org.loomwright.testing.RandomLooms.Size;
import org.loomwright.testing.TestCatalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

class LoomLayouterProperties {

    private static final LayoutRoom SHEET =
            new LayoutRoom(
                    Length.ofMillimetres(390), Length.ofMillimetres(220), Length.ofMillimetres(4));
    private static final double PROMISED_SHARE = 0.13;

    @ParameterizedTest
    @CsvSource({"1,40", "2,40", "3,40", "5,40", "8,40", "20,30", "50,15", "120,4"})
    void everyLoomFitsWithExactLengthsAndKeepsItsDistances(int segments, int looms) {
        for (int seed = 0; seed < looms; seed++) {
            Loom loom = loom(seed, segments);
            LoomLayout layout = LoomLayouter.fit(loom, Map.of(), SHEET);

            assertLengthsAreExact(loom, layout);
            assertLegsJoinAtTheirNodes(loom, layout);
            assertThat(layout.width()).isLessThanOrEqualTo(SHEET.width());
            assertThat(layout.height()).isLessThanOrEqualTo(SHEET.height());
            assertNothingTouches(layout);
            if (layout.manner() == Manner.TIDY) {
                assertNearnessAsPromised(loom, layout);
            }
        }
    }

    @Test
    void sixHundredSegmentsAreDrawnWithoutTouching() {
        Loom loom = loom(7, 600);
        LoomLayout layout = LoomLayouter.fit(loom, Map.of(), SHEET);

        assertLengthsAreExact(loom, layout);
        assertNothingTouches(layout);
    }

    @Test
    void theFanHoldsEveryTreeApart() {
        for (int seed = 0; seed < 30; seed++) {
            Loom loom = loom(seed, 1 + seed * seed / 3);
            LayoutTree tree = new LayoutTree(loom, Map.of());
            List<Polyline> legs = Drawn.scaled(FanLayout.of(tree), new DrawingScale(100));
            LoomLayout layout =
                    Drawn.of(tree, Spine.of(tree), new DrawingScale(100), 0, Manner.FANNED, legs);

            assertLengthsAreExact(loom, layout);
            assertNothingTouches(layout);
        }
    }

    @Test
    void theOrderOfTheDocumentDoesNotMatter() {
        LoomDocument document = RandomLooms.documentOf(11, new Size(40, 4, 4, 0));
        LoomDocument turned =
                new LoomDocument(
                        document.name(),
                        document.vehicle(),
                        document.datum(),
                        document.nodes().reversed(),
                        document.segments().reversed(),
                        document.devices().reversed(),
                        document.wires().reversed(),
                        document.checks());

        assertThat(LoomLayouter.fit(proven(turned), Map.of(), SHEET))
                .isEqualTo(LoomLayouter.fit(proven(document), Map.of(), SHEET));
    }

    private static Loom loom(long seed, int segments) {
        return RandomLooms.of(seed, new Size(segments, 2, 1, 0));
    }

    private static Loom proven(LoomDocument document) {
        return LoomChecker.check(document, TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    private static void assertLengthsAreExact(Loom loom, LoomLayout layout) {
        for (Segment segment : loom.walk()) {
            assertThat(layout.getLeg(segment.id()).lengthMm())
                    .as(segment.id())
                    .isCloseTo(
                            layout.scale().onSheet(segment.length()).toDoubleMillimetres(),
                            within(0.001));
        }
    }

    private static void assertLegsJoinAtTheirNodes(Loom loom, LoomLayout layout) {
        for (Segment segment : loom.walk()) {
            Polyline leg = layout.getLeg(segment.id());
            assertThat(leg.points().getFirst().distanceToMm(layout.getNode(segment.from())))
                    .isLessThan(1e-6);
            assertThat(leg.points().getLast().distanceToMm(layout.getNode(segment.to())))
                    .isLessThan(1e-6);
        }
        assertThat(layout.nodes().keySet())
                .containsExactlyInAnyOrderElementsOf(
                        loom.nodes().values().stream().map(Node::id).toList());
    }

    /** Legs without a common node have a gap; legs with one have no other point in common. */
    private static void assertNothingTouches(LoomLayout layout) {
        List<Polyline> legs = List.copyOf(layout.legs().values());
        for (int i = 0; i < legs.size(); i++) {
            for (int j = 0; j < i; j++) {
                Polyline one = legs.get(i);
                Polyline other = legs.get(j);
                double gap =
                        haveCommonEnd(one, other)
                                ? gap(withoutEnds(one), withoutEnds(other))
                                : gap(one, other);
                assertThat(gap).as("legs %s and %s", i, j).isPositive();
            }
        }
    }

    private static boolean haveCommonEnd(Polyline one, Polyline other) {
        return ends(one).stream()
                .anyMatch(end -> ends(other).stream().anyMatch(e -> e.distanceToMm(end) < 1e-6));
    }

    private static List<Point> ends(Polyline line) {
        return List.of(line.points().getFirst(), line.points().getLast());
    }

    private static Polyline withoutEnds(Polyline line) {
        double length = line.lengthMm();
        return line.between(length * 0.001, length * 0.999);
    }

    private static double gap(Polyline one, Polyline other) {
        double least = Double.MAX_VALUE;
        for (var a : one.pieces()) {
            for (var b : other.pieces()) {
                least = Math.min(least, a.distanceToMm(b));
            }
        }
        return least;
    }

    /** Looks at points all along the drawing, independently of the rule by which it was made. */
    private static void assertNearnessAsPromised(Loom loom, LoomLayout layout) {
        double clearance = layout.clearance().toDoubleMillimetres();
        LayoutTree tree = new LayoutTree(loom, Map.of());
        List<Sample> samples = samples(tree, layout, clearance / 3);
        for (int i = 0; i < samples.size(); i++) {
            for (int j = 0; j < i; j++) {
                double gap = samples.get(i).place().distanceToMm(samples.get(j).place());
                if (gap < clearance - 1e-5) {
                    double way = way(tree, layout, samples.get(i), samples.get(j));
                    assertThat(gap)
                            .as("%s and %s", samples.get(i), samples.get(j))
                            .isGreaterThanOrEqualTo(
                                    Math.min(clearance, PROMISED_SHARE * way) - 1e-5);
                }
            }
        }
    }

    private record Sample(int leg, double alongMm, Point place) {}

    private static List<Sample> samples(LayoutTree tree, LoomLayout layout, double stepMm) {
        List<Sample> samples = new ArrayList<>();
        for (int leg = 0; leg < tree.size(); leg++) {
            Polyline line = layout.getLeg(tree.segment(leg).id());
            for (double along = 0; along < line.lengthMm(); along += stepMm) {
                samples.add(new Sample(leg, along, line.atMm(along)));
            }
            samples.add(new Sample(leg, line.lengthMm(), line.points().getLast()));
        }
        return samples;
    }

    private static double way(LayoutTree tree, LoomLayout layout, Sample one, Sample other) {
        if (one.leg() == other.leg()) {
            return Math.abs(one.alongMm() - other.alongMm());
        }
        int meeting = tree.meeting(one.leg(), other.leg());
        if (meeting == one.leg() || meeting == other.leg()) {
            return Math.abs(depth(tree, layout, one) - depth(tree, layout, other));
        }
        return depth(tree, layout, one)
                + depth(tree, layout, other)
                - 2 * layout.scale().onSheetMm(tree.depthMm(meeting));
    }

    private static double depth(LayoutTree tree, LoomLayout layout, Sample sample) {
        return layout.scale().onSheetMm(tree.depthMm(tree.parent(sample.leg()))) + sample.alongMm();
    }
}
