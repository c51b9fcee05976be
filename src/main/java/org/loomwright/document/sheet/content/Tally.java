package org.loomwright.document.sheet.content;

import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How many findings of which weight there are. */
public final class Tally {

    private Tally() {}

    /** @return for example {@code 1 fault, 2 warnings, 0 notes} */
    public static String of(List<Finding> findings) {
        Map<Severity, Integer> counts = new EnumMap<>(Severity.class);
        findings.forEach(finding -> counts.merge(finding.severity(), 1, Integer::sum));
        return String.join(
                ", ",
                List.of(Severity.FAULT, Severity.WARNING, Severity.NOTE).stream()
                        .map(severity -> words(severity, counts.getOrDefault(severity, 0)))
                        .toList());
    }

    /** @return the same, with how many of them were accepted */
    public static String of(List<Finding> findings, Acceptance acceptance) {
        int accepted = acceptance.countIn(findings);
        return accepted == 0 ? of(findings) : of(findings) + "; accepted of these: " + accepted;
    }

    private static String words(Severity severity, int count) {
        String word = severity.name().toLowerCase(Locale.ROOT);
        return Figures.count(count, word, word + "s");
    }
}
