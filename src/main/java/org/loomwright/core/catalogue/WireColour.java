package org.loomwright.core.catalogue;

import org.jspecify.annotations.Nullable;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A wire's colour: the body and, where there is one, the tracer, each in the letters of the code.
 *
 * <p>Written without a separator as the trade writes it: {@code GN} is green with a brown tracer, {@code LGN} light green
 * with a brown tracer. A basic colour is {@code LG}, an {@code X} with another capital, or a single capital other than L and
 * X. No basic colour begins with another one, so a pair can be read in one way only. The code itself has no X; letters with
 * it are for colours that a loom declares as its own. Whether the letters are known is the catalogue's question, not this
 * type's.
 *
 * @param body letters of the body colour
 * @param tracer letters of the tracer, or null for a plain wire
 */
public record WireColour(String body, @Nullable String tracer) implements Comparable<WireColour> {

    private static final String BASIC = "(LG|X[A-Z]|[A-KM-WYZ])";
    private static final Pattern LETTERS = Pattern.compile(BASIC + BASIC + "?");

    public WireColour {
        if (tracer != null && tracer.equals(body)) {
            throw new IllegalArgumentException(
                    "a tracer must differ from its body, both are " + body);
        }
    }

    /**
     * @param letters for example {@code LG}
     * @return whether they can stand for one basic colour, in the code or not
     */
    public static boolean isBasic(String letters) {
        return letters.matches(BASIC);
    }

    /**
     * @param letters body and tracer, for example {@code GN}
     * @return whether {@link #parse} takes them
     */
    public static boolean isWellFormed(String letters) {
        Matcher matcher = LETTERS.matcher(letters);
        return matcher.matches() && !matcher.group(1).equals(matcher.group(2));
    }

    /**
     * @param letters body and tracer, for example {@code GN}
     * @return the colour
     * @throws IllegalArgumentException if the letters do not have that shape, or tracer and body are the same
     */
    public static WireColour parse(String letters) {
        Matcher matcher = LETTERS.matcher(letters);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "a colour is one or two basic colours, body and tracer, was '" + letters + "'");
        }
        return new WireColour(matcher.group(1), matcher.group(2));
    }

    /** @return body and tracer letters without a separator; the inverse of {@link #parse} */
    public String letters() {
        return tracer == null ? body : body + tracer;
    }

    @Override
    public int compareTo(WireColour other) {
        return letters().compareTo(other.letters());
    }

    @Override
    public String toString() {
        return letters();
    }
}
