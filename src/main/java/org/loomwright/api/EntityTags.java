package org.loomwright.api;

import org.jspecify.annotations.Nullable;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The entity tags of things that can be edited: their version in quotes. */
final class EntityTags {

    private static final Pattern TAG = Pattern.compile("\"(\\d{1,18})\"");

    private EntityTags() {}

    static String of(long version) {
        return "\"" + version + "\"";
    }

    /**
     * @param ifMatch the header, or null where it is missing
     * @return the version that it names
     * @throws PreconditionException if it is missing or not one of our tags
     */
    static long version(@Nullable String ifMatch) {
        if (ifMatch == null) {
            throw PreconditionException.ifMatchMissing();
        }
        Matcher matcher = TAG.matcher(ifMatch.strip());
        if (!matcher.matches()) {
            throw PreconditionException.ifMatchMalformed(ifMatch);
        }
        return Long.parseLong(matcher.group(1));
    }
}
