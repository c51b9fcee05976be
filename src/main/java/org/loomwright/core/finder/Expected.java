package org.loomwright.core.finder;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Voltage;

/**
 * What a voltmeter between a wire and the body should show.
 *
 * @param state which switches are on, and how the engine runs where it matters, in words
 * @param volts calculated, in the sense of the supply, or null where nothing joins the wire to anything
 * @param words the whole sentence
 */
public record Expected(String state, @Nullable Voltage volts, String words) {}
