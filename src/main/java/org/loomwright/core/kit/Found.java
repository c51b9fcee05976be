package org.loomwright.core.kit;

import org.jspecify.annotations.Nullable;

/**
 * Devices of the loom that a recipe speaks of.
 *
 * @param key what the recipe calls them
 * @param text what is looked for, in words
 * @param selector which devices are meant
 * @param wiredTo a place: only devices at the other end of a wire from there, or null
 * @param answer a question for a device, whose answer is taken, or for a wire, whose loads are taken; or null
 * @param all whether all that fit are meant, and not the first alone
 * @param needed whether the kit cannot do without
 * @param when under which answers it is looked for
 */
public record Found(
        String key,
        String text,
        Selector selector,
        @Nullable String wiredTo,
        @Nullable String answer,
        boolean all,
        boolean needed,
        When when) {}
