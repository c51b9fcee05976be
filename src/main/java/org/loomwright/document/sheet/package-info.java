/**
 * The job sheet: what a workshop pins to the board. Summary, drawing, wires, cut list, branches, cross-sections, cautions and boxes
 * to sign.
 *
 * <p>Each section is a class of its own that sets itself into a {@link org.loomwright.document.pdf.Flow}. Dates and pictures are
 * handed in; the same sheet gives the same bytes. May depend on core, {@code document.pdf}, {@code document.drawing} and {@code
 * document.scene}. Start with
 * {@link org.loomwright.document.sheet.JobSheetPdf}.
 */
@NullMarked
package org.loomwright.document.sheet;

import org.jspecify.annotations.NullMarked;
