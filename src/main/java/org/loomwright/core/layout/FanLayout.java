package org.loomwright.core.layout;

import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Polyline;

import java.util.ArrayList;
import java.util.List;

/**
 * Draws any tree with straight legs of any length so that none touch: each branch has a sector of its own, divided among the
 * branches beyond it by how many ends they have.
 *
 * <p>Source: the equal-angle way of drawing trees, J. Felsenstein, "Inferring Phylogenies", 2004, chapter 34 (from memory). A
 * branch's sector lies wholly inside the sector it was cut from, moved outward along its middle, so two branches never meet. Cost:
 * linear.
 */
final class FanLayout {

    private static final double WHOLE_TURN = 2 * Math.PI;

    /** With one leg at the datum its sector leaves room behind, so that nothing comes back on the leg. */
    private static final double ONE_LEG = Math.PI;

    private FanLayout() {}

    /** Legs by number, at full size; the datum is the origin. */
    static List<Polyline> of(LayoutTree tree) {
        int[] ends = ends(tree);
        double[] low = new double[tree.size()];
        double[] width = new double[tree.size()];
        List<Polyline> legs = new ArrayList<>();
        double all = tree.children(LayoutTree.DATUM).size() == 1 ? ONE_LEG : WHOLE_TURN;
        divide(tree, LayoutTree.DATUM, -all / 2, all, ends, low, width);
        for (int leg = 0; leg < tree.size(); leg++) {
            int before = tree.parent(leg);
            Point start =
                    before == LayoutTree.DATUM ? Point.ORIGIN : legs.get(before).points().getLast();
            double heading = low[leg] + width[leg] / 2;
            double length = tree.lengthMm(leg);
            Point end =
                    new Point(
                            start.xMm() + length * Math.cos(heading),
                            start.yMm() + length * Math.sin(heading));
            legs.add(new Polyline(List.of(start, end)));
            divide(tree, leg, low[leg], width[leg], ends, low, width);
        }
        return legs;
    }

    private static int[] ends(LayoutTree tree) {
        int[] ends = new int[tree.size()];
        for (int leg = tree.size() - 1; leg >= 0; leg--) {
            ends[leg] =
                    Math.max(1, tree.children(leg).stream().mapToInt(child -> ends[child]).sum());
        }
        return ends;
    }

    private static void divide(
            LayoutTree tree,
            int leg,
            double from,
            double sector,
            int[] ends,
            double[] low,
            double[] width) {
        int total = tree.children(leg).stream().mapToInt(child -> ends[child]).sum();
        double at = from;
        for (int child : tree.children(leg)) {
            low[child] = at;
            width[child] = sector * ends[child] / total;
            at += width[child];
        }
    }
}
