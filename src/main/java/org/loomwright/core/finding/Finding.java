package org.loomwright.core.finding;

import java.util.Comparator;

/**
 * One fact found, worded for a person.
 *
 * @param code the stable name of the rule, for example {@code loom.length-not-positive}
 * @param severity how much it matters
 * @param subject what it is about
 * @param text one or two sentences that name the thing and the rule
 */
public record Finding(String code, Severity severity, Subject subject, String text) {

    /** The worst first, then by subject and code: the order in which people read them. */
    public static final Comparator<Finding> WORST_FIRST =
            Comparator.comparing(Finding::severity)
                    .reversed()
                    .thenComparing(finding -> finding.subject().kind())
                    .thenComparing(finding -> finding.subject().id())
                    .thenComparing(Finding::code)
                    .thenComparing(Finding::text);

    /** @return a fault */
    public static Finding fault(String code, Subject subject, String text) {
        return new Finding(code, Severity.FAULT, subject, text);
    }

    /** @return a warning */
    public static Finding warning(String code, Subject subject, String text) {
        return new Finding(code, Severity.WARNING, subject, text);
    }

    /** @return a note */
    public static Finding note(String code, Subject subject, String text) {
        return new Finding(code, Severity.NOTE, subject, text);
    }
}
