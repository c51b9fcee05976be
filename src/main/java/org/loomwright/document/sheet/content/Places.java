package org.loomwright.document.sheet.content;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.WireEnd;

/** Names of places for a person: devices and nodes by name, never by a number to look up. */
public final class Places {

    private Places() {}

    /** @return device and point in words */
    public static String words(Loom loom, WireEnd end) {
        return loom.getDevice(end.device()).name() + ", " + end.point();
    }

    /** @return name of a node, or its id if the loom does not have it */
    public static String node(Loom loom, String id) {
        Node node = loom.nodes().get(id);
        return node == null ? id : node.name();
    }

    /** @return from where to where a segment runs */
    public static String run(Loom loom, Segment segment) {
        return node(loom, segment.from()) + " – " + node(loom, segment.to());
    }

    /** @return id of a segment with its run, or only the id if the loom does not have it */
    public static String segment(Loom loom, String id) {
        Segment segment = loom.segments().get(id);
        return segment == null ? id : id + " (" + run(loom, segment) + ")";
    }

    /** @return name of a wire end's terminal */
    public static String terminal(Catalogue catalogue, WireEnd end) {
        return catalogue
                .findTerminal(end.terminal())
                .map(type -> type.name())
                .orElse(end.terminal());
    }
}
