package org.loomwright.store;

import org.loomwright.app.NotFoundException;
import org.loomwright.app.StaleVersionException;

import java.util.Optional;
import java.util.UUID;

/** What the number of changed rows says about a change that asked for a version. */
final class ChangedRows {

    private ChangedRows() {}

    /**
     * @param rows one is success, none a change that came too late; more cannot be, because ids are keys
     * @param thing what was to be changed
     * @param id which one
     * @param expected the version that was asked for
     * @param actual the version that it has now, if it is there at all
     */
    static void judge(int rows, String thing, UUID id, long expected, Optional<Long> actual) {
        if (rows == 1) {
            return;
        }
        if (rows > 1) {
            throw new IllegalStateException("%d rows of %s %s".formatted(rows, thing, id));
        }
        long now = actual.orElseThrow(() -> new NotFoundException(thing, id.toString()));
        throw new StaleVersionException(thing, id.toString(), expected, now);
    }
}
