package org.loomwright.app;

import org.jspecify.annotations.Nullable;

/**
 * What marks a request that makes something, so that the same request sent twice is done once.
 *
 * @param key what the caller sent to mark it, or null when every request counts
 * @param hash SHA-256 of what was asked
 */
public record Request(@Nullable String key, String hash) {

    /** @return a request that is done however often it is sent */
    public static Request unmarked() {
        return new Request(null, "");
    }
}
