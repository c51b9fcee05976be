package org.loomwright.core.period;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How far the additions are of the period, and the way back to stock.
 *
 * @param items aspects of additions, in the order of wires, devices, segments and openings, and of their ids
 * @param wayBack steps in the order in which they are done; empty where nothing was changed
 * @param notes what holds for the whole, and what cannot be judged
 */
public record PeriodReport(List<PeriodItem> items, List<BackStep> wayBack, List<String> notes) {

    public PeriodReport {
        items = List.copyOf(items);
        wayBack = List.copyOf(wayBack);
        notes = List.copyOf(notes);
    }

    /** @return how many items have each judgement; every judgement is there */
    public Map<Judgement, Integer> counts() {
        Map<Judgement, Integer> counts = new EnumMap<>(Judgement.class);
        for (Judgement judgement : Judgement.values()) {
            counts.put(judgement, 0);
        }
        items.forEach(item -> counts.merge(item.judgement(), 1, Integer::sum));
        return Collections.unmodifiableMap(counts);
    }
}
