package org.loomwright.app;

import java.time.Instant;
import java.util.Optional;

/**
 * Remembers which request made what, so that a request that is sent twice is done once.
 *
 * <p>Use it inside the transaction of the work itself: {@link #find}; if empty do the work and {@link #tryRecord}; if that says no,
 * somebody with the same key was faster: give up the transaction and look again.
 */
public interface IdempotencyKeys {

    /**
     * What a request was answered with.
     *
     * @param requestHash SHA-256 of the request's canonical form; another hash under the same key is another request
     * @param resourceId what it made
     */
    record Answer(String requestHash, String resourceId) {}

    /**
     * @param operation what is done, for example {@code open-work-order}
     * @param key what the caller sent
     * @return the answer given before, if there was one
     */
    Optional<Answer> find(String operation, String key);

    /**
     * Waits for a transaction that is recording the same key.
     *
     * @param operation what is done
     * @param key what the caller sent
     * @param answer what it is answered with
     * @param at now
     * @return false if the key was recorded by somebody else
     */
    boolean tryRecord(String operation, String key, Answer answer, Instant at);
}
