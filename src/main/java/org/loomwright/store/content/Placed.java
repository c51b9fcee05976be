package org.loomwright.store.content;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A row that hangs on another one.
 *
 * @param owner id of the row that it hangs on
 * @param position its place among its brothers, from 0
 * @param part what it says
 * @param <T> what it says
 */
record Placed<T>(String owner, int position, T part) {

    static <P, T> List<Placed<T>> under(
            List<P> owners, Function<P, String> id, Function<P, List<T>> parts) {
        List<Placed<T>> rows = new ArrayList<>();
        for (P owner : owners) {
            List<T> own = parts.apply(owner);
            for (int i = 0; i < own.size(); i++) {
                rows.add(new Placed<>(id.apply(owner), i, own.get(i)));
            }
        }
        return rows;
    }
}
