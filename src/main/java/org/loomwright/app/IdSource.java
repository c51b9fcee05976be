package org.loomwright.app;

import java.util.UUID;

/** Makes the ids of new things; they cannot be guessed. */
public interface IdSource {

    /** @return an id that was never used */
    UUID next();
}
