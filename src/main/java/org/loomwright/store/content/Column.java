package org.loomwright.store.content;

import org.jspecify.annotations.Nullable;

import java.util.List;
import java.util.function.Function;

/** One column of many rows as an array, to be unfolded by {@code unnest}: one statement writes a whole table. */
final class Column {

    private Column() {}

    static <T> @Nullable String[] texts(
            List<T> rows, Function<? super T, ? extends @Nullable String> value) {
        @Nullable String[] column = new @Nullable String[rows.size()];
        for (int i = 0; i < column.length; i++) {
            column[i] = value.apply(rows.get(i));
        }
        return column;
    }

    static <T> @Nullable Long[] numbers(
            List<T> rows, Function<? super T, ? extends @Nullable Number> value) {
        @Nullable Long[] column = new @Nullable Long[rows.size()];
        for (int i = 0; i < column.length; i++) {
            Number number = value.apply(rows.get(i));
            column[i] = number == null ? null : number.longValue();
        }
        return column;
    }
}
