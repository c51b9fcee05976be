package org.loomwright.core.loom;

import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Whether the segments form one tree that is rooted at the datum and whose segments all run away from it.
 *
 * <p>A set of directed segments over known nodes is such a tree exactly when nothing arrives at the datum, one segment arrives
 * at every other node, and every node can be reached. Each broken condition is worded on its own: a node reached twice, a second
 * root, a ring, a part that hangs on a second root or a ring.
 */
final class TreeCheck {

    private final LoomDocument document;
    private final Set<String> nodes;
    private final Faults faults;
    private final Map<String, List<Segment>> arriving = new HashMap<>();
    private final Map<String, List<Segment>> leaving = new HashMap<>();
    private final Map<String, Subject> nodeSubjects = new HashMap<>();

    TreeCheck(LoomDocument document, Set<String> nodes, Faults faults) {
        this.document = document;
        this.nodes = nodes;
        this.faults = faults;
        LoomChecker.subjects(ThingKind.NODE, document.nodes(), Node::id, "/nodes/")
                .forEach(subject -> nodeSubjects.putIfAbsent(subject.id(), subject));
    }

    void check() {
        for (int i = 0; i < document.segments().size(); i++) {
            Segment segment = document.segments().get(i);
            checkEnds(segment, new Subject(ThingKind.SEGMENT, segment.id(), "/segments/" + i));
        }
        Subject datum = new Subject(ThingKind.NODE, document.datum(), "/datum");
        if (!nodes.contains(document.datum())) {
            faults.add(
                    "datum-unknown",
                    datum,
                    "The datum is node %s, which does not exist.".formatted(document.datum()));
            return;
        }
        faults.addUnless(
                !arriving.containsKey(document.datum()),
                "datum-not-root",
                datum,
                "A segment leads to the datum, node %s; every segment must run away from it.",
                document.datum());
        checkArrivals();
        checkReach();
    }

    private void checkEnds(Segment segment, Subject subject) {
        for (String node : new HashSet<>(List.of(segment.from(), segment.to()))) {
            faults.addUnless(
                    nodes.contains(node),
                    "node-unknown",
                    subject,
                    "Segment %s refers to node %s, which does not exist.",
                    segment.id(),
                    node);
        }
        if (segment.from().equals(segment.to())) {
            faults.add(
                    "segment-loop",
                    subject,
                    "Segment %s runs from node %s to itself."
                            .formatted(segment.id(), segment.from()));
            return;
        }
        arriving.computeIfAbsent(segment.to(), id -> new ArrayList<>()).add(segment);
        leaving.computeIfAbsent(segment.from(), id -> new ArrayList<>()).add(segment);
    }

    private void checkArrivals() {
        for (String node : nodes.stream().sorted().toList()) {
            List<Segment> segments = arriving.getOrDefault(node, List.of());
            if (segments.size() > 1) {
                faults.add(
                        "node-reached-twice",
                        subject(node),
                        "Node %s is reached by %d segments (%s); in a tree only one may lead to it."
                                .formatted(
                                        node,
                                        segments.size(),
                                        String.join(
                                                ", ",
                                                segments.stream().map(Segment::id).toList())));
            }
            if (segments.isEmpty() && !node.equals(document.datum())) {
                faults.add(
                        "second-root",
                        subject(node),
                        "No segment leads to node %s, and it is not the datum: the loom has a second root."
                                .formatted(node));
            }
        }
    }

    private void checkReach() {
        Set<String> reached = reachedFrom(document.datum());
        Set<String> told = new HashSet<>();
        for (String node : nodes.stream().sorted().toList()) {
            if (!reached.contains(node) && !told.contains(node)) {
                tellWhyUnreached(node, told);
            }
        }
    }

    private Set<String> reachedFrom(String start) {
        Set<String> reached = new HashSet<>();
        Deque<String> waiting = new ArrayDeque<>(List.of(start));
        while (!waiting.isEmpty()) {
            String node = waiting.removeLast();
            if (reached.add(node)) {
                leaving.getOrDefault(node, List.of()).forEach(segment -> waiting.add(segment.to()));
            }
        }
        return reached;
    }

    /** Follows the segments back until a second root (told already) or a node seen before: a ring. */
    private void tellWhyUnreached(String node, Set<String> told) {
        List<String> path = new ArrayList<>();
        String at = node;
        while (!path.contains(at) && !told.contains(at) && arriving.containsKey(at)) {
            path.add(at);
            at = arriving.get(at).getFirst().from();
        }
        int ringStart = path.indexOf(at);
        if (ringStart >= 0) {
            List<String> ring = path.subList(ringStart, path.size()).reversed();
            faults.add(
                    "ring",
                    subject(at),
                    "The segments between nodes %s form a ring; a loom must be a tree."
                            .formatted(String.join(", ", ring)));
        }
        told.addAll(path);
        told.addAll(reachedFrom(at));
    }

    private Subject subject(String node) {
        return nodeSubjects.getOrDefault(node, new Subject(ThingKind.NODE, node, "/nodes"));
    }
}
