package org.loomwright.core.amendment;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Origin.Act;
import org.loomwright.core.amendment.Origin.ByAmendment;

import java.util.ArrayList;
import java.util.List;

/**
 * One part of the loom that is being amended: as it was first written down, as it is now, and who made and changed it. A part
 * that was changed and changed back counts as unchanged.
 */
final class Tracked<T> {

    private final T recorded;
    private final @Nullable String madeBy;
    private final List<String> changedBy = new ArrayList<>();
    private T now;

    private Tracked(T recorded, @Nullable String madeBy) {
        this.recorded = recorded;
        this.now = recorded;
        this.madeBy = madeBy;
    }

    static <T> Tracked<T> stock(T recorded) {
        return new Tracked<>(recorded, null);
    }

    static <T> Tracked<T> made(T recorded, @Nullable String by) {
        return new Tracked<>(recorded, by);
    }

    T recorded() {
        return recorded;
    }

    T now() {
        return now;
    }

    @Nullable String madeBy() {
        return madeBy;
    }

    boolean isStock() {
        return madeBy == null;
    }

    void change(T to, String by) {
        now = to;
        changedBy.add(by);
    }

    /** The amendments that changed it for good, none if it is as it was first written down. */
    List<String> changes() {
        return now.equals(recorded) ? List.of() : changedBy;
    }

    Origin origin() {
        return originOf(madeBy, changes());
    }

    static Origin originOf(@Nullable String madeBy, List<String> changes) {
        if (madeBy == null) {
            return changes.isEmpty() ? Origin.STOCK : new ByAmendment(Act.CHANGED, changes);
        }
        List<String> all = new ArrayList<>(List.of(madeBy));
        all.addAll(changes);
        return new ByAmendment(Act.ADDED, all);
    }
}
