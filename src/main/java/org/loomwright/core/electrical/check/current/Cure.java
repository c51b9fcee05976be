package org.loomwright.core.electrical.check.current;

import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.electrical.check.current.Flow.Edge;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Where a change could put a figure right.
 *
 * @param measure works the figure out again
 * @param broken scenarios in which it breaks its limit, the worst first
 * @param thicker wires that may become thicker, each with the sizes that should do by calculation
 * @param through where the current is too much, empty where it is all along the way
 * @param paths ways of loads that could be led another way, the one that helps most first
 */
record Cure(
        Measure measure,
        List<Observed> broken,
        Map<String, Predicate<ConductorSize>> thicker,
        Predicate<Edge> through,
        List<LoadPath> paths) {}
