package org.loomwright.core.kit;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.loom.DeviceKind;

import java.util.List;

/** A change to what is in the loom already. */
public sealed interface ChangePart {

    /** @return why, as the amendment will say */
    String reason();

    /** @return under which answers it is wanted */
    When when();

    /**
     * Wires of the loom.
     *
     * @param on a place that one end is on, or a question for a wire: {@code answer:circuit}
     * @param other key of found devices that the other end is on, or null for any
     */
    record Wires(String on, @Nullable String other) {}

    /** Moves the ends that are on that place to another; of an answered wire the end nearer the source. */
    record MoveEnds(Wires wires, String to, String reason, When when) implements ChangePart {}

    /**
     * Puts new wires in the place of old ones where these are too thin.
     *
     * @param carries keys of the devices whose current they carry
     * @param bearing what they have to bear, or null
     * @param behind place of the fuse, {@code device/point}, that must not exceed them, or null
     */
    record Renew(
            Wires wires,
            List<String> carries,
            @Nullable Load bearing,
            @Nullable String behind,
            String reason,
            When when)
            implements ChangePart {

        public Renew {
            carries = List.copyOf(carries);
        }
    }

    /** Takes wires out. */
    record Remove(Wires wires, String reason, When when) implements ChangePart {}

    /** Takes a found device out, on which no wire may be left. */
    record RemoveDevice(String key, String reason, When when) implements ChangePart {}

    /** Makes another thing of found devices; their points stay. */
    record Become(
            String key,
            String name,
            DeviceKind kind,
            @Nullable Load load,
            @Nullable Load rating,
            String reason,
            When when)
            implements ChangePart {}

    /** Changes earth or voltage of the vehicle: null leaves as it is. */
    record Vehicle(@Nullable String earth, @Nullable Integer volts, String reason, When when)
            implements ChangePart {}
}
