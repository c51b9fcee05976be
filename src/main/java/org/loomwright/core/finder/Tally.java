package org.loomwright.core.finder;

import java.util.ArrayList;
import java.util.List;

/** Adds up how well several things fit, each with its weight. */
final class Tally {

    private long reached;
    private long asked;
    private final List<String> reasons = new ArrayList<>();

    void add(int weight, Fit fit) {
        if (!fit.isSilent()) {
            reached += (long) weight * fit.share();
            asked += weight * 1_000L;
        }
        if (!fit.reason().isEmpty()) {
            reasons.add(fit.reason());
        }
    }

    /** The share reached of what was asked, 0 to 100. */
    int score() {
        return asked == 0 ? 0 : (int) Math.round(100.0 * reached / asked);
    }

    List<String> reasons() {
        return List.copyOf(reasons);
    }
}
