/**
 * Which single changes could bring a figure within its limit? Proposes thicker wires, relays and other feeds as amendments, in the order
 * of their cost; whether one helps is for the simulation of the changed loom to say.
 */
@NullMarked
package org.loomwright.core.electrical.check.remedy;

import org.jspecify.annotations.NullMarked;
