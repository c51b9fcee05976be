package org.loomwright.core.routing;

import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The paths through one loom's tree.
 *
 * <p>Built in time and memory linear in the number of segments. A distance costs O(log n) whatever the length of the path, a
 * listed route costs its own number of segments. Immutable after construction and thread-safe.
 *
 * <p>Source: lowest common ancestor by heavy paths after D. D. Sleator and R. E. Tarjan, "A data structure for dynamic trees",
 * Journal of Computer and System Sciences 26 (1983): every path to the root crosses at most log2 n light edges.
 */
public final class Routes {

    private static final int NONE = -1;

    private final Map<String, Integer> indexes = new HashMap<>();
    private final int[] parents;
    private final int[] depths;
    private final int[] heads;
    private final Length[] fromDatum;
    private final Segment[] arriving;
    private final Loom loom;

    /**
     * @param loom a proven loom
     */
    public Routes(Loom loom) {
        this.loom = loom;
        int count = loom.nodes().size();
        parents = new int[count];
        depths = new int[count];
        heads = new int[count];
        fromDatum = new Length[count];
        arriving = new Segment[count];
        number();
        splitIntoHeavyPaths();
    }

    /** Numbers the nodes so that each comes after its parent. */
    private void number() {
        indexes.put(loom.datum(), 0);
        parents[0] = NONE;
        fromDatum[0] = Length.ZERO;
        for (Segment segment : loom.walk()) {
            int parent = index(segment.from());
            int node = indexes.size();
            indexes.put(segment.to(), node);
            parents[node] = parent;
            depths[node] = depths[parent] + 1;
            fromDatum[node] = fromDatum[parent].plus(segment.length());
            arriving[node] = segment;
        }
    }

    private void splitIntoHeavyPaths() {
        int count = parents.length;
        int[] sizes = new int[count];
        int[] heaviest = new int[count];
        Arrays.fill(sizes, 1);
        Arrays.fill(heaviest, NONE);
        for (int node = count - 1; node > 0; node--) {
            int parent = parents[node];
            sizes[parent] += sizes[node];
            if (heaviest[parent] == NONE || sizes[node] > sizes[heaviest[parent]]) {
                heaviest[parent] = node;
            }
        }
        for (int node = 1; node < count; node++) {
            heads[node] = heaviest[parents[node]] == node ? heads[parents[node]] : node;
        }
    }

    private int index(String node) {
        Integer index = indexes.get(node);
        if (index == null) {
            throw new IllegalArgumentException("loom " + loom.name() + " has no node " + node);
        }
        return index;
    }

    private int meeting(int a, int b) {
        int one = a;
        int other = b;
        while (heads[one] != heads[other]) {
            if (depths[heads[one]] > depths[heads[other]]) {
                one = parents[heads[one]];
            } else {
                other = parents[heads[other]];
            }
        }
        return depths[one] < depths[other] ? one : other;
    }

    /**
     * @param node a node of the loom
     * @return how far it is from the datum along the loom
     * @throws IllegalArgumentException if the loom has no such node
     */
    public Length fromDatum(String node) {
        return fromDatum[index(node)];
    }

    /**
     * @param from a node of the loom
     * @param to a node of the loom, which may be the same
     * @return the distance along the loom, zero for one node
     * @throws IllegalArgumentException if the loom has no such node
     */
    public Length distance(String from, String to) {
        int a = index(from);
        int b = index(to);
        Length shared = fromDatum[meeting(a, b)];
        return fromDatum[a].plus(fromDatum[b]).minus(shared).minus(shared);
    }

    /**
     * @param from a node of the loom
     * @param to a node of the loom, which may be the same
     * @return the node nearest the datum on the way from one to the other
     * @throws IllegalArgumentException if the loom has no such node
     */
    public String turningPoint(String from, String to) {
        int meeting = meeting(index(from), index(to));
        return meeting == 0 ? loom.datum() : arriving[meeting].to();
    }

    /**
     * @param from a node of the loom
     * @param to a node of the loom, which may be the same
     * @return the segments from one to the other in walking order, none for one node
     * @throws IllegalArgumentException if the loom has no such node
     */
    public List<Segment> between(String from, String to) {
        int a = index(from);
        int b = index(to);
        int meeting = meeting(a, b);
        List<Segment> up = climb(a, meeting);
        List<Segment> route = new ArrayList<>(up);
        route.addAll(climb(b, meeting).reversed());
        return List.copyOf(route);
    }

    private List<Segment> climb(int from, int to) {
        List<Segment> segments = new ArrayList<>();
        for (int node = from; node != to; node = parents[node]) {
            segments.add(arriving[node]);
        }
        return segments;
    }

    /**
     * @param wire a wire of the loom
     * @return the segments that it runs through, from its end A to its end B
     */
    public List<Segment> of(Wire wire) {
        return between(loom.getPoint(wire.a()).node(), loom.getPoint(wire.b()).node());
    }

    /**
     * @param wire a wire of the loom
     * @return its length along the covered loom, without tails
     */
    public Length lengthOf(Wire wire) {
        return distance(loom.getPoint(wire.a()).node(), loom.getPoint(wire.b()).node());
    }
}
