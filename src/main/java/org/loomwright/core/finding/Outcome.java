package org.loomwright.core.finding;

import java.util.List;
import java.util.function.Function;

/**
 * Either a value or all the reasons why there is none.
 *
 * @param <T> the value's type
 */
public sealed interface Outcome<T> {

    /**
     * It holds.
     *
     * @param value the value
     * @param <T> its type
     */
    record Accepted<T>(T value) implements Outcome<T> {}

    /**
     * It does not hold.
     *
     * @param reasons every reason, at least one
     * @param <T> the type of the value that is missing
     */
    record Rejected<T>(List<Finding> reasons) implements Outcome<T> {

        public Rejected {
            reasons = List.copyOf(reasons);
            if (reasons.isEmpty()) {
                throw new IllegalArgumentException("a rejection needs at least one reason");
            }
        }
    }

    /** @return an accepted value */
    static <T> Outcome<T> accepted(T value) {
        return new Accepted<>(value);
    }

    /** @return a rejection for these reasons, of which there must be at least one */
    static <T> Outcome<T> rejected(List<Finding> reasons) {
        return new Rejected<>(reasons);
    }

    /** @return the outcome of the next step, or the same reasons */
    default <R> Outcome<R> then(Function<? super T, ? extends Outcome<R>> next) {
        return switch (this) {
            case Accepted<T>(T value) -> next.apply(value);
            case Rejected<T>(List<Finding> reasons) -> rejected(reasons);
        };
    }

    /** @return the changed value, or the same reasons */
    default <R> Outcome<R> map(Function<? super T, ? extends R> change) {
        return then(value -> accepted(change.apply(value)));
    }

    /**
     * @param refusal makes the exception from the reasons
     * @return the value
     */
    default T orElseThrow(Function<List<Finding>, ? extends RuntimeException> refusal) {
        return switch (this) {
            case Accepted<T>(T value) -> value;
            case Rejected<T>(List<Finding> reasons) -> throw refusal.apply(reasons);
        };
    }
}
