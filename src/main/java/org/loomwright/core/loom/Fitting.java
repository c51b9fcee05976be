package org.loomwright.core.loom;

import java.util.Locale;

/** When a terminal is fitted, seen from the covering of its leg. */
public enum Fitting {
    /** It passes the machine and is fitted first. */
    BEFORE_COVERING,
    /** It would not pass, or must not be in the way. */
    AFTER_COVERING,
    /** The workshop may choose. */
    EITHER;

    /** @return the constant as a reader sees it, for example {@code before covering} */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
