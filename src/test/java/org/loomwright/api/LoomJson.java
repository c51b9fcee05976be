package org.loomwright.api;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Looks into loom documents as they are sent, without any of the program's own reading. */
final class LoomJson {

    private LoomJson() {}

    /** @return the object at that place, to be changed */
    static ObjectNode at(JsonNode document, String pointer) {
        return (ObjectNode) document.at(pointer);
    }

    /** @return how many wires have one end beyond a segment and one this side of it */
    static int countWiresThrough(JsonNode loom, String segmentId) {
        Set<String> beyond = nodesBeyond(loom, segmentId);
        Map<String, String> nodeOfPoint = new HashMap<>();
        for (JsonNode device : loom.get("devices")) {
            for (JsonNode point : device.get("points")) {
                nodeOfPoint.put(
                        device.get("id").stringValue() + "/" + point.get("name").stringValue(),
                        point.get("node").stringValue());
            }
        }
        return (int)
                loom.get("wires")
                        .valueStream()
                        .filter(
                                wire ->
                                        beyond.contains(nodeOfPoint.get(point(wire.get("a"))))
                                                != beyond.contains(
                                                        nodeOfPoint.get(point(wire.get("b")))))
                        .count();
    }

    private static String point(JsonNode end) {
        return end.get("device").stringValue() + "/" + end.get("point").stringValue();
    }

    private static Set<String> nodesBeyond(JsonNode loom, String segmentId) {
        Set<String> beyond = new HashSet<>();
        boolean found = true;
        while (found) {
            found = false;
            for (JsonNode segment : loom.get("segments")) {
                boolean leadsOn =
                        segment.get("id").stringValue().equals(segmentId)
                                || beyond.contains(segment.get("from").stringValue());
                found |= leadsOn && beyond.add(segment.get("to").stringValue());
            }
        }
        return beyond;
    }
}
