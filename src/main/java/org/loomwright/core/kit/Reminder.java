package org.loomwright.core.kit;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;

/**
 * Something that a kit cannot do and somebody has to think of.
 *
 * @param about which devices it is about, told of each; null to tell it once
 * @param below a question for amperes: told only of devices whose rating is less or not recorded; or null
 * @param text one or two sentences
 * @param provenance who says so
 * @param when under which answers
 */
public record Reminder(
        @Nullable Selector about,
        @Nullable String below,
        String text,
        Provenance provenance,
        When when) {}
