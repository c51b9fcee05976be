package org.loomwright.core.loom;

import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Collects the faults of one document, with the checks that every kind of part needs. */
final class Faults {

    private static final Pattern ID =
            Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0," + (LoomLimits.LONGEST_ID - 1) + "}");

    private final List<Finding> found = new ArrayList<>();

    List<Finding> found() {
        return found;
    }

    void add(String code, Subject subject, String text) {
        found.add(Finding.fault("loom." + code, subject, text));
    }

    /** Words the fault only if there is one: most documents are right. */
    void addUnless(boolean holds, String code, Subject subject, String format, Object... about) {
        if (!holds) {
            add(code, subject, format.formatted(about));
        }
    }

    /** An id has to be short and plain, because it goes into addresses, labels and file names. */
    void checkId(Subject subject) {
        addUnless(
                ID.matcher(subject.id()).matches(),
                "id-malformed",
                subject,
                "The id '%s' of a %s must be 1 to %d letters, digits, dots, dashes or underlines"
                        + " and start with a letter or digit.",
                subject.id(),
                subject.kind().words(),
                LoomLimits.LONGEST_ID);
    }

    void checkUnique(Set<String> seen, Subject subject) {
        addUnless(
                seen.add(subject.id()),
                "id-twice",
                subject,
                "There is more than one %s; an id may stand only once.",
                subject.words());
    }

    Set<String> checkIds(List<Subject> subjects) {
        Set<String> seen = new HashSet<>();
        for (Subject subject : subjects) {
            checkId(subject);
            checkUnique(seen, subject);
        }
        return seen;
    }

    void checkText(Subject subject, String what, String text) {
        addUnless(
                !text.isBlank() && text.length() <= LoomLimits.LONGEST_TEXT,
                "text-length",
                subject,
                "The %s of %s must have 1 to %d characters, has %d.",
                what,
                subject.words(),
                LoomLimits.LONGEST_TEXT,
                text.strip().length());
    }

    void checkLength(Subject subject, String what, Length length, Length most) {
        if (!length.isPositive()) {
            add(
                    "length-not-positive",
                    subject,
                    "The %s of %s is %s; it must be more than 0 mm."
                            .formatted(what, subject.words(), length));
        } else {
            checkNotOver(subject, what, length, most);
        }
    }

    void checkNotNegative(Subject subject, String what, Length length, Length most) {
        if (length.isNegative()) {
            add(
                    "length-negative",
                    subject,
                    "The %s of %s is %s; it must not be negative."
                            .formatted(what, subject.words(), length));
        } else {
            checkNotOver(subject, what, length, most);
        }
    }

    private void checkNotOver(Subject subject, String what, Length length, Length most) {
        addUnless(
                !length.isLongerThan(most),
                "length-not-sane",
                subject,
                "The %s of %s is %s; more than %s is taken for a slip.",
                what,
                subject.words(),
                length,
                most);
    }

    void checkCount(Subject subject, String what, int count, int most) {
        addUnless(
                count <= most,
                "too-many",
                subject,
                "There are %d %s in %s; at most %d are taken.",
                count,
                what,
                subject.words(),
                most);
    }
}
