/**
 * How does a paged document become a PDF file that is the same to the byte every time? Text that wraps, tables whose rows are never
 * torn and whose headings come again on the next page, pictures to scale, and the tags that let a reader hear the order of it.
 *
 * <p>All measures are points (1/72 inch) from the top left corner of the page, y down, unless a name says millimetres. The embedded
 * fonts are Liberation Sans. Knows nothing about looms. May depend on {@code document.scene} and the PDF library. Start with {@link
 * org.loomwright.document.pdf.Flow} and {@link org.loomwright.document.pdf.PdfFile}.
 */
@NullMarked
package org.loomwright.document.pdf;

import org.jspecify.annotations.NullMarked;
