/** A scene as an SVG page. Start with {@link org.loomwright.document.svg.SvgWriter}. */
@NullMarked
package org.loomwright.document.svg;

import org.jspecify.annotations.NullMarked;
