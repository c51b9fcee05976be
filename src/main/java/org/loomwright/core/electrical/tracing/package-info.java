/**
 * How is every wire of a loom fed, what does it serve and what protects it? Walks from the live side of battery and generator through
 * wires, switches, fuses, relays and loads to the body, with every contact taken as closed. Start with {@link
 * org.loomwright.core.electrical.tracing.Tracing}.
 */
@NullMarked
package org.loomwright.core.electrical.tracing;

import org.jspecify.annotations.NullMarked;
