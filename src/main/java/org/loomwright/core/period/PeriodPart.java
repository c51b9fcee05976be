package org.loomwright.core.period;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;

/**
 * When a kind of part was usual.
 *
 * @param kind what sort of code it is
 * @param code the code; one that begins with {@code *} stands for all that end like the rest
 * @param from first year, or null where it was always usual
 * @param to last year, or null where it still is
 * @param seen whether it can be seen
 * @param why what is known about it, as a clause
 * @param alternative what would be of the period instead; empty where nothing needs to be
 * @param provenance where that comes from
 */
public record PeriodPart(
        Kind kind,
        String code,
        @Nullable Integer from,
        @Nullable Integer to,
        Seen seen,
        String why,
        String alternative,
        Provenance provenance) {

    private static final String ANY = "*";

    /** Sorts of code. */
    public enum Kind {
        /** Code of a covering. */
        COVERING,
        /** Designation of a conductor size. */
        SIZE,
        /** Code of a terminal. */
        TERMINAL,
        /** Kind of a device. */
        DEVICE,
        /** A word in the name of a device. */
        WORD,
        /** Style of a fuse. */
        FUSE
    }

    /** Whether a part can be seen. */
    public enum Seen {
        /** As far as the place is seen. */
        PLACE,
        /** Never: it is inside something. */
        NEVER,
        /** The kind does not tell whether it is of the period. */
        ASK
    }

    public PeriodPart {
        if (from != null && to != null && from > to) {
            throw new IllegalArgumentException(
                    "%s was usual from %d to %d".formatted(code, from, to));
        }
    }

    boolean isFor(Kind wanted, String text) {
        boolean matches =
                code.startsWith(ANY)
                        ? text.endsWith(code.substring(ANY.length()))
                        : text.equals(code);
        return kind == wanted && matches;
    }

    boolean wasUsualIn(int year) {
        return (from == null || year >= from) && (to == null || year <= to);
    }

    /** What is known, with the years and how far that can be trusted. */
    String reason() {
        String since = from == null ? "" : " from about " + from;
        String until = to == null ? "" : " to about " + to;
        String years = since.isEmpty() && until.isEmpty() ? "" : ", usual" + since + until;
        return why + years + " (" + provenance.status().words() + ")";
    }
}
