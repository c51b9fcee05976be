package org.loomwright.api;

import org.jspecify.annotations.Nullable;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The entity tags of things that can be edited: their version in quotes. */
final class EntityTags {

    private static final Pattern TAG = Pattern.compile("(?:W/)?\"(\\d{1,18})\"");

    private EntityTags() {}

    static String of(long version) {
        return "\"" + version + "\"";
    }

    /**
     * The tag of something that is only read. It is weak, because the server packs nothing that has a strong one.
     *
     * @param state changes whenever the thing may change
     */
    static String weak(String state) {
        return "W/\"" + state + "\"";
    }

    /**
     * A proxy that packs answers makes tags weak on the way, so a weak one counts like its strong one.
     *
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
