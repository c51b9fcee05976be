package org.loomwright.core.open;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.finding.Subject;

import java.util.Comparator;

/**
 * One thing that nobody has said.
 *
 * @param rule the rule that asks
 * @param subject what it is about, always a part of the amended loom, or its vehicle
 * @param weight how much it weighs, more than 0
 * @param text what is missing, in one or two sentences that name the thing
 * @param question what to ask
 * @param basis where the expectation comes from, or null where the rule follows from the work itself
 */
public record OpenPoint(
        OpenRule rule,
        Subject subject,
        int weight,
        String text,
        String question,
        @Nullable Provenance basis) {

    /** The heaviest first, then by subject and code: the order in which to ask. */
    static final Comparator<OpenPoint> HEAVIEST_FIRST =
            Comparator.comparingInt(OpenPoint::weight)
                    .reversed()
                    .thenComparing(point -> point.subject().kind())
                    .thenComparing(point -> point.subject().id())
                    .thenComparing(OpenPoint::code)
                    .thenComparing(OpenPoint::text);

    /** @return the stable name of the rule */
    public String code() {
        return rule.code();
    }

    /** @return what the answer is needed for */
    public NeededFor neededFor() {
        return rule.neededFor();
    }
}
