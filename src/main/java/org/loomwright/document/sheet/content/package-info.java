/**
 * What does a job sheet say, before anybody thinks of paper? Which wires are to be made, changed and taken out and why; what is cut
 * together; the amendments in words; figures with their units.
 *
 * <p>Pure; knows nothing of PDF. May depend on core. Start with {@link org.loomwright.document.sheet.content.WireWork}.
 */
@NullMarked
package org.loomwright.document.sheet.content;

import org.jspecify.annotations.NullMarked;
