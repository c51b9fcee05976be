package org.loomwright.store;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.PageKey;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.UUID;

/** Times and places in a list as PostgreSQL keeps them: in microseconds, and with an end that nothing lies beyond. */
final class PageStart {

    private static final PageKey BEFORE_ALL =
            new PageKey(Instant.parse("9999-12-31T23:59:59Z"), new UUID(-1, -1));

    private PageStart() {}

    /** @return the key itself, or one that is newer than everything */
    static PageKey of(@Nullable PageKey after) {
        return after == null ? BEFORE_ALL : after;
    }

    /** @return the moment without what the database would drop */
    static Instant kept(Instant at) {
        return at.truncatedTo(ChronoUnit.MICROS);
    }

    /** @return the moment as a JDBC parameter */
    static OffsetDateTime parameter(Instant at) {
        return at.atOffset(ZoneOffset.UTC);
    }
}
