package org.loomwright.core.electrical.check.current;

import org.loomwright.core.electrical.simulation.Readings;

/** Works a figure out again on a changed loom. */
@FunctionalInterface
interface Measure {

    /**
     * @param trial the loom with the change
     * @param readings what the simulation of it shows
     * @return whether the figure is within its limit now
     */
    boolean holds(Trial trial, Readings readings);
}
