package org.loomwright.core.period;

import org.loomwright.core.finding.Subject;
import org.loomwright.core.period.Comparison.Verdict;
import org.loomwright.core.period.PeriodItem.Aspect;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The items so far; knows how each addition is undone. */
final class ItemList {

    private static final String NOTHING = "Nothing to take back.";

    private final List<BackStep> wayBack;
    private final List<PeriodItem> items = new ArrayList<>();

    ItemList(List<BackStep> wayBack) {
        this.wayBack = wayBack;
    }

    void add(Subject subject, Aspect aspect, String what, Verdict verdict) {
        items.add(
                new PeriodItem(
                        subject,
                        aspect,
                        what,
                        verdict.judgement(),
                        verdict.why(),
                        verdict.basis(),
                        verdict.alternative(),
                        wayBackOf(subject)));
    }

    private String wayBackOf(Subject subject) {
        String steps =
                wayBack.stream()
                        .filter(step -> step.subject().equals(subject))
                        .map(BackStep::text)
                        .collect(Collectors.joining(" "));
        return steps.isEmpty() ? NOTHING : steps;
    }

    List<PeriodItem> all() {
        return List.copyOf(items);
    }
}
