package org.loomwright.core.open;

import java.util.List;
import java.util.Optional;

/**
 * Everything that is open in one loom.
 *
 * @param price how much is said of what a price needs
 * @param build how much is said of what the work needs
 * @param total how much is said of everything
 * @param points the open points, the heaviest first
 * @param cautions what the list cannot know, in general words; no part of the score
 */
public record OpenReport(
        Score price, Score build, Score total, List<OpenPoint> points, List<String> cautions) {

    /**
     * How much is said of what is asked, by weight.
     *
     * @param said weight of the questions that are answered, 0 to {@code asked}
     * @param asked weight of all questions
     */
    public record Score(long said, long asked) {

        private static final int ALL = 100;

        public Score {
            if (said < 0 || said > asked) {
                throw new IllegalArgumentException(
                        "said must be 0 to %d, was %d".formatted(asked, said));
            }
        }

        /** @return whole percent, rounded down, so that 100 means that nothing is open; 100 where nothing is asked */
        public int percent() {
            return asked == 0 ? ALL : Math.toIntExact(said * ALL / asked);
        }
    }

    public OpenReport {
        points = List.copyOf(points);
        cautions = List.copyOf(cautions);
    }

    /** @return the heaviest open point, of several the first in order */
    public Optional<OpenPoint> next() {
        return points.stream().findFirst();
    }
}
