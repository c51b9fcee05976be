package org.loomwright.core.catalogue;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;

/**
 * What a wire's end is finished with.
 *
 * @param code short name used in documents, for example {@code bullet-4.7}
 * @param name the terminal in words
 * @param strip insulation to strip
 * @param allowance wire that making the termination uses up beyond the measured tail
 * @param renewal wire that cutting it off and making it again uses up
 * @param leastConductor thinnest conductor that it holds, or null where there is no usual bound
 * @param mostConductor thickest conductor that it takes, or null where there is no usual bound
 * @param current what it usually carries, or null where nobody said
 * @param ofPeriod whether a car of the cotton-braid years had it
 * @param provenance where the figures come from
 */
public record TerminalType(
        String code,
        String name,
        Length strip,
        Length allowance,
        Length renewal,
        @Nullable CrossSection leastConductor,
        @Nullable CrossSection mostConductor,
        @Nullable Current current,
        boolean ofPeriod,
        Provenance provenance) {

    public TerminalType {
        if (leastConductor != null
                && mostConductor != null
                && leastConductor.compareTo(mostConductor) > 0) {
            throw new IllegalArgumentException(
                    "%s cannot take conductors of %s to %s"
                            .formatted(code, leastConductor, mostConductor));
        }
        if (current != null && current.milliamperes() <= 0) {
            throw new IllegalArgumentException("%s cannot carry %s".formatted(code, current));
        }
    }

    /** @return whether it usually goes on a conductor of that area; true where nobody said a bound */
    public boolean takes(CrossSection conductor) {
        return (leastConductor == null || leastConductor.compareTo(conductor) <= 0)
                && (mostConductor == null || mostConductor.compareTo(conductor) >= 0);
    }
}
