package org.loomwright.core.kit.expansion;

import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.WireEnd;

import java.util.TreeSet;

/** Whether the points that a kit puts wire ends on have room for them. */
final class Rooms {

    private Rooms() {}

    static void check(Draft draft) {
        for (String place : new TreeSet<>(draft.addedEnds.keySet())) {
            int slash = place.lastIndexOf('/');
            String device = place.substring(0, slash);
            if (draft.loom.devices().containsKey(device)) {
                Point point =
                        draft.loom.getPoint(new WireEnd(device, place.substring(slash + 1), ""));
                Integer takes = point.takes();
                if (takes != null && draft.ends(place) > takes) {
                    draft.refuse(
                            "no-room",
                            "%s takes %d wire ends and would have %d."
                                    .formatted(place, takes, draft.ends(place)));
                }
            }
        }
    }
}
