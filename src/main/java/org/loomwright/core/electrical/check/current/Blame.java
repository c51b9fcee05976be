package org.loomwright.core.electrical.check.current;

import org.loomwright.core.finding.Severity;

/** Who made a figure break its limit: what was recorded is told, not accused. */
enum Blame {
    /** The thing itself is new. */
    NEW,
    /** It kept its limit in the recorded loom. */
    ADDITIONS,
    /** It broke its limit in the recorded loom already, and the additions make it worse. */
    WORSE,
    /** Its own current is as recorded, but the additions warm it. */
    WARMER,
    /** It is like that in the recorded loom. */
    ORIGINAL,
    /** Nobody simulated the recorded loom in that scenario. */
    UNKNOWN;

    /** From how much more on an addition makes a thing worse: less comes from the last digits of a simulation. Own choice. */
    private static final double WORSE_FROM = 1.02;

    /**
     * @param isNew whether the thing is new
     * @param now figure over limit in the worst scenario
     * @param before the same of the recorded loom, not a number where nobody knows
     */
    static Blame of(boolean isNew, double now, double before) {
        if (isNew) {
            return NEW;
        }
        if (Double.isNaN(before)) {
            return UNKNOWN;
        }
        if (before <= 1) {
            return ADDITIONS;
        }
        return now > before * WORSE_FROM ? WORSE : ORIGINAL;
    }

    /** What is left of the blame where the additions did not raise the figure itself, only lowered its limit. */
    Blame ofLimitAlone() {
        return switch (this) {
            case ADDITIONS, WORSE -> WARMER;
            case NEW, WARMER, ORIGINAL, UNKNOWN -> this;
        };
    }

    /** Whether the figure itself is more than the recorded one. */
    static boolean isMore(double now, double before) {
        return now > before * WORSE_FROM;
    }

    Severity severity() {
        return switch (this) {
            case NEW, ADDITIONS, WORSE -> Severity.FAULT;
            case WARMER, ORIGINAL, UNKNOWN -> Severity.WARNING;
        };
    }

    /**
     * @param before the figure of the recorded loom in words
     * @return a sentence that begins with a space, empty where there is nothing to say
     */
    String words(String before) {
        return switch (this) {
            case NEW -> "";
            case UNKNOWN -> " How it was as original is not known.";
            case ADDITIONS ->
                    " As recorded (%s at most) it kept within the limit that it had then; the additions make the difference."
                            .formatted(before);
            case WARMER ->
                    " As recorded it carries as much (%s); the additions fill its bundle and warm it."
                            .formatted(before);
            case WORSE ->
                    " It did not keep within its limit as original (%s) and the additions make it worse."
                            .formatted(before);
            case ORIGINAL -> " It is so as original.";
        };
    }
}
