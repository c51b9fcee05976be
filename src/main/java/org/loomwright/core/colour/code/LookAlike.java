package org.loomwright.core.colour.code;

import org.loomwright.core.catalogue.Provenance;

import java.util.Locale;

/**
 * Two colours that are taken for one another. Which is called a and which b means nothing.
 *
 * @param a letters of one basic colour
 * @param b letters of another
 * @param when in what state or light
 * @param provenance where the row comes from
 */
public record LookAlike(String a, String b, When when, Provenance provenance) {

    /** In what state or light two colours look alike. */
    public enum When {
        /** When one of them is dirty. */
        DIRTY,
        /** When one of them has faded. */
        FADED,
        /** In poor light. */
        POOR_LIGHT;

        /** @return the constant as a reader sees it, for example {@code in poor light} */
        public String words() {
            return switch (this) {
                case DIRTY, FADED -> "when " + name().toLowerCase(Locale.ROOT);
                case POOR_LIGHT -> "in poor light";
            };
        }
    }

    public LookAlike {
        if (a.equals(b)) {
            throw new IllegalArgumentException("a colour looks like itself: " + a);
        }
    }

    /** @return whether these are the two colours, in either order */
    public boolean isOf(String one, String other) {
        return a.equals(one) && b.equals(other) || a.equals(other) && b.equals(one);
    }
}
