package org.loomwright.app;

import org.loomwright.core.finding.Outcome;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Does a piece of work in one transaction, and only once for requests that carry the same key. Of two such requests at the same
 * time, one does the work; the other waits and gets the same answer.
 */
@Component
class OnceOnly {

    private static final int TRIES = 3;

    private final IdempotencyKeys keys;
    private final TransactionTemplate transactions;
    private final Clock clock;

    OnceOnly(IdempotencyKeys keys, TransactionTemplate transactions, Clock clock) {
        this.keys = keys;
        this.transactions = transactions;
        this.clock = clock;
    }

    /**
     * @param operation what is done
     * @param request marks the request
     * @param work does it; a rejection is not remembered
     * @param idOf the id of what was made
     * @param load finds by that id what was made before
     */
    <T> Outcome<T> run(
            String operation,
            Request request,
            Supplier<Outcome<T>> work,
            Function<T, UUID> idOf,
            Function<UUID, T> load) {
        for (int i = 0; i < TRIES; i++) {
            Optional<Outcome<T>> outcome =
                    transactions.execute(
                            status -> {
                                var tried = attempt(operation, request, work, idOf, load);
                                if (tried.isEmpty()) {
                                    status.setRollbackOnly();
                                }
                                return tried;
                            });
            if (outcome.isPresent()) {
                return outcome.get();
            }
        }
        throw new IllegalStateException(
                "key %s of %s was taken and given up %d times"
                        .formatted(request.key(), operation, TRIES));
    }

    /** Empty when somebody else with the same key was faster. */
    private <T> Optional<Outcome<T>> attempt(
            String operation,
            Request request,
            Supplier<Outcome<T>> work,
            Function<T, UUID> idOf,
            Function<UUID, T> load) {
        String key = request.key();
        if (key == null) {
            return Optional.of(work.get());
        }
        Optional<IdempotencyKeys.Answer> before = keys.find(operation, key);
        if (before.isPresent()) {
            if (!before.get().requestHash().equals(request.hash())) {
                throw new KeyReusedException(key);
            }
            UUID made = UUID.fromString(before.get().resourceId());
            return Optional.of(Outcome.accepted(load.apply(made)));
        }
        Outcome<T> outcome = work.get();
        if (!(outcome instanceof Outcome.Accepted<T>(T made))) {
            return Optional.of(outcome);
        }
        var answer = new IdempotencyKeys.Answer(request.hash(), idOf.apply(made).toString());
        return keys.tryRecord(operation, key, answer, clock.instant())
                ? Optional.of(outcome)
                : Optional.empty();
    }
}
