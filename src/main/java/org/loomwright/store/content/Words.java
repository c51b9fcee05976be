package org.loomwright.store.content;

import java.util.Locale;

/** Enums as words in a column: {@code AWAY_FROM_DATUM} is {@code away-from-datum}. */
public final class Words {

    private Words() {}

    /**
     * @param constant any constant
     * @return its word
     */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * @param type of the constant
     * @param word what {@link #of} gave
     * @param <E> the enum
     * @return the constant
     */
    public static <E extends Enum<E>> E parse(Class<E> type, String word) {
        return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
