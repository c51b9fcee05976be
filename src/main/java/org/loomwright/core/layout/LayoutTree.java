package org.loomwright.core.layout;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.loom.Departure;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The loom as the layout sees it: legs numbered so that each has a larger number than the one that leads to it. Lengths are real
 * millimetres. The number -1 stands for the datum itself.
 */
final class LayoutTree {

    static final int DATUM = -1;

    private final List<Segment> segments;
    private final List<List<Integer>> children = new ArrayList<>();
    private final int[] parent;
    private final double[] lengthMm;
    private final double[] depthMm;
    private final double[] beyondMm;
    private final double[] weight;

    /**
     * @param thickness by segment id; decides with the length which run of legs is the main one
     */
    LayoutTree(Loom loom, Map<String, Length> thickness) {
        segments = loom.walk();
        int count = segments.size();
        parent = new int[count];
        lengthMm = new double[count];
        depthMm = new double[count];
        beyondMm = new double[count];
        weight = new double[count];
        for (int i = 0; i <= count; i++) {
            children.add(new ArrayList<>());
        }
        join();
        weigh(thickness);
    }

    private void join() {
        Map<String, Integer> arriving = new HashMap<>();
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get(i);
            parent[i] = arriving.getOrDefault(segment.from(), DATUM);
            lengthMm[i] = segment.length().toDoubleMillimetres();
            depthMm[i] = lengthMm[i] + (parent[i] == DATUM ? 0 : depthMm[parent[i]]);
            children.get(parent[i] + 1).add(i);
            arriving.put(segment.to(), i);
        }
    }

    private void weigh(Map<String, Length> thickness) {
        for (int i = segments.size() - 1; i >= 0; i--) {
            Length across = thickness.getOrDefault(segments.get(i).id(), Length.ZERO);
            double best = 0;
            beyondMm[i] = lengthMm[i];
            for (int child : children(i)) {
                best = Math.max(best, onward(child));
                beyondMm[i] += beyondMm[child];
            }
            weight[i] = lengthMm[i] * Math.max(1, across.toDoubleMillimetres()) + best;
        }
    }

    int size() {
        return segments.size();
    }

    Segment segment(int leg) {
        return segments.get(leg);
    }

    int parent(int leg) {
        return parent[leg];
    }

    List<Integer> children(int leg) {
        return children.get(leg + 1);
    }

    int mostAtANode() {
        int most = children(DATUM).size();
        for (int leg = 0; leg < size(); leg++) {
            most = Math.max(most, 1 + children(leg).size());
        }
        return most;
    }

    double lengthMm(int leg) {
        return lengthMm[leg];
    }

    /** Real distance from the datum to the leg's far end. */
    double depthMm(int leg) {
        return leg == DATUM ? 0 : depthMm[leg];
    }

    /** Sum of the lengths of the leg and of everything beyond it. */
    double beyondMm(int leg) {
        return beyondMm[leg];
    }

    double totalMm() {
        double total = 0;
        for (double length : lengthMm) {
            total += length;
        }
        return total;
    }

    @Nullable Departure departure(int leg) {
        return segments.get(leg).leaves();
    }

    /** How much the leg deserves to carry the run before it onward: long, thick, and leaving straight. */
    double onward(int leg) {
        Departure leaves = departure(leg);
        double straight = leaves == null ? 1 : Math.max(0.2, 1 - leaves.angleDegrees() / 120.0);
        return weight[leg] * straight;
    }

    /** The leg from which the ways to both legs part, {@link #DATUM} if they part there. */
    int meeting(int one, int other) {
        int a = one;
        int b = other;
        while (a != b) {
            if (a > b) {
                a = parent[a];
            } else {
                b = parent[b];
            }
        }
        return a;
    }
}
