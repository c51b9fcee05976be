package org.loomwright.core.electrical.tracing;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.loom.Side;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What tracing found out about one wire.
 *
 * @param wire its id
 * @param role where in its circuit it stands
 * @param supply what it is fed from; behind a load, what the load is fed from; nothing for a return that no load leads to
 * @param source the end that is nearer the source, or null where it is not fed
 * @param path what the way from the source leads through before it enters the wire, the nearest to the source first: of all ways the one
 *     with the fewest loads, then the fewest contacts, then the fewest fuses, then the fewest steps
 * @param loads devices that take current through it, in order
 * @param serves codes of the services of those loads, in order; where it has none, of the devices at its ends
 */
public record WireTrace(
        String wire,
        Role role,
        Supply supply,
        @Nullable Side source,
        List<Passed> path,
        SortedSet<String> loads,
        SortedSet<String> serves) {

    public WireTrace {
        path = List.copyOf(path);
        loads = Collections.unmodifiableSortedSet(new TreeSet<>(loads));
        serves = Collections.unmodifiableSortedSet(new TreeSet<>(serves));
    }

    /** @return the last fuse before the wire, if its way leads through one */
    public Optional<Passed> fuse() {
        return last(Element.FUSE);
    }

    /** @return the last thing of that sort before the wire, if its way leads through one */
    public Optional<Passed> last(Element element) {
        return path.reversed().stream().filter(passed -> passed.element() == element).findFirst();
    }
}
