package org.loomwright.app;

/** An idempotency key came with another request than the one that it was first used for. */
public final class KeyReusedException extends RefusalException {

    private final String key;

    /** @param key the key */
    public KeyReusedException(String key) {
        super("idempotency key %s was used for another request".formatted(key));
        this.key = key;
    }

    /** @return the key */
    public String key() {
        return key;
    }
}
