package org.loomwright.core.kit.expansion;

import org.loomwright.core.kit.FeedPart;
import org.loomwright.core.loom.Device;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a feed adds to what is before it: new loads, and loads of the loom that hang there from now on and count once where they did so
 * already.
 */
record Addition(Draft draft, Current made, List<Set<String>> known) {

    static Addition of(Draft draft, FeedPart part) {
        List<String> made = part.feeds().stream().filter(draft.loads::containsKey).toList();
        List<Set<String>> known =
                part.feeds().stream()
                        .map(key -> draft.finds.all(key).stream().map(Device::id))
                        .map(ids -> ids.collect(Collectors.toSet()))
                        .toList();
        return new Addition(draft, draft.load(made), known);
    }

    /** All of it. */
    Current all() {
        return beside(Set.of());
    }

    /** What comes to where these loads hang already. */
    Current beside(Collection<String> loads) {
        Current sum = made;
        for (Set<String> devices : known) {
            Set<String> more = new HashSet<>(devices);
            more.removeAll(loads);
            sum = sum.plus(draft.currents.together(more));
        }
        return sum;
    }

    /** Whether it takes more of a limit than is of no account, and goes beyond it. */
    boolean exceeds(Current already, Collection<String> loads, Current limit) {
        Ratio negligible = draft.bench.settings().negligible();
        Current more = beside(loads);
        return more.toDoubleAmperes() > limit.toDoubleAmperes() * negligible.toDouble()
                && already.plus(more).compareTo(limit) > 0;
    }

    /** What a wire of the loom will carry. */
    Current in(String wire) {
        return draft.currents.in(wire).plus(beside(draft.tracing.get(wire).loads()));
    }
}
