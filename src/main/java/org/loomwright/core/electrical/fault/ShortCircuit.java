package org.loomwright.core.electrical.fault;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Current;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A wire whose end away from the source touches the body: the place on it where least flows, so that a fuse opens latest.
 *
 * @param wire its id
 * @param scenario name of the state of the vehicle
 * @param place {@code device/point} that touches the body
 * @param current what flows there into the body
 * @param heated the wires that carry more than their rating, the first to be harmed first
 * @param fuse the fuse on its way that opens first, or null where there is none
 * @param opensFirst whether that fuse has opened before any wire is harmed
 * @param dark devices that get nothing any more once the fuse has opened
 */
public record ShortCircuit(
        String wire,
        String scenario,
        String place,
        Current current,
        List<Heated> heated,
        @Nullable FuseOnWay fuse,
        boolean opensFirst,
        SortedSet<String> dark) {

    /** Of several scenarios the one to look at: where no fuse comes first, where a wire is harmed soonest. */
    static final Comparator<ShortCircuit> WORST_FIRST =
            Comparator.comparing(ShortCircuit::opensFirst)
                    .thenComparing(ShortCircuit::harmedMillis)
                    .thenComparing(ShortCircuit::current, Comparator.reverseOrder())
                    .thenComparing(ShortCircuit::scenario);

    public ShortCircuit {
        heated = List.copyOf(heated);
        dark = Collections.unmodifiableSortedSet(new TreeSet<>(dark));
    }

    /** @return the wire that is harmed first, empty where none carries more than its rating */
    public Optional<Heated> weakest() {
        return heated.stream().findFirst();
    }

    private long harmedMillis() {
        return weakest().map(first -> first.harmed().toMillis()).orElse(Long.MAX_VALUE);
    }
}
