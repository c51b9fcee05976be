package org.loomwright.core.kit;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Length;

import java.math.BigDecimal;

/** What somebody answered to a question of a recipe. */
public sealed interface Answer {

    /**
     * A word: one of the choices, the id of a node, a device or a wire, {@code yes} or {@code no}.
     *
     * @param value the word
     */
    record Word(String value) implements Answer {}

    /**
     * A number in the unit of its question.
     *
     * @param value amperes, watts or millimetres
     */
    record Amount(BigDecimal value) implements Answer {}

    /**
     * A new end of the loom, where the question asks for a node.
     *
     * @param from the node to run on from, or the segment to break out of
     * @param at distance of the breakout along the segment as it was recorded, or null to run on from a node
     * @param length of the new branch
     */
    record NewEnd(String from, @Nullable Length at, Length length) implements Answer {}

    /** @return the answer as it is used in names and conditions */
    default String words() {
        return switch (this) {
            case Word(String value) -> value;
            case Amount(BigDecimal value) -> plain(value);
            case NewEnd(String from, Length at, Length length) -> "a new end at " + from;
        };
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
