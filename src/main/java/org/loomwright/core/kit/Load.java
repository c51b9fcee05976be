package org.loomwright.core.kit;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Current;

/**
 * What a new device draws: a fixed current, or what was answered in amperes or watts.
 *
 * @param fixed a current, or null
 * @param answer a question for amperes or watts, or null
 */
public record Load(@Nullable Current fixed, @Nullable String answer) {

    public Load {
        if ((fixed == null) == (answer == null)) {
            throw new IllegalArgumentException("a load is either fixed or answered");
        }
    }
}
