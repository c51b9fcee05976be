package org.loomwright.core.loom;

import java.util.Locale;

/** Which battery terminal goes to the body. */
public enum EarthPolarity {
    /** Positive earth. */
    POSITIVE,
    /** Negative earth. */
    NEGATIVE;

    /** @return the constant as a reader sees it, for example {@code negative} */
    public String words() {
        return name().toLowerCase(Locale.ROOT);
    }
}
