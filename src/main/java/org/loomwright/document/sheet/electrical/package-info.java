/**
 * What does a job sheet say about currents and colours? Electrical summary, colours, what the customer accepts, what nobody has said,
 * and the limits with their sources; each a section of its own.
 *
 * <p>May depend on core, {@code document.pdf}, {@code document.sheet.content} and {@code document.sheet.style}. Start with {@link
 * org.loomwright.document.sheet.electrical.ElectricalSide}.
 */
@NullMarked
package org.loomwright.document.sheet.electrical;

import org.jspecify.annotations.NullMarked;
