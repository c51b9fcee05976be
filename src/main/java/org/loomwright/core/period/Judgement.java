package org.loomwright.core.period;

/** How an addition stands beside what was usual when the vehicle was new. */
public enum Judgement {
    /** As it would have been done then, as far as this aspect goes. */
    AS_PERIOD("as period"),
    /** Not of the period, and not to be seen. */
    HIDDEN_DEVIATION("not of the period, hidden"),
    /** Not of the period, and to be seen. */
    VISIBLE_DEVIATION("not of the period, visible"),
    /** Nobody said enough to judge. */
    UNKNOWN("not known");

    private final String words;

    Judgement(String words) {
        this.words = words;
    }

    /** @return the judgement as a reader sees it */
    public String words() {
        return words;
    }
}
