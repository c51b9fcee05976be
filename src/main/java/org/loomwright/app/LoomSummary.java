package org.loomwright.app;

import java.time.Instant;
import java.util.UUID;

/**
 * A loom as a line in a list.
 *
 * @param id its id
 * @param name what it is called
 * @param vehicle the vehicle's name
 * @param year the vehicle's year
 * @param contentHash names its content
 * @param segments how many segments it has
 * @param devices how many devices
 * @param wires how many wires
 * @param version its version
 * @param createdAt when it was made
 * @param updatedAt when it was last changed
 */
public record LoomSummary(
        UUID id,
        String name,
        String vehicle,
        int year,
        String contentHash,
        int segments,
        int devices,
        int wires,
        long version,
        Instant createdAt,
        Instant updatedAt) {

    /** @return its place in the list */
    public PageKey key() {
        return new PageKey(createdAt, id);
    }
}
