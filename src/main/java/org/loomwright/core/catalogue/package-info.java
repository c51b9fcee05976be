/**
 * What do the trade's colours, conductor sizes, coverings, terminals and openings look like, and who says so? Pure data:
 * every row carries its {@link org.loomwright.core.catalogue.Provenance}.
 *
 * <p>The rows live as CSV files under {@code shared/catalogue} and are read outside the core. A row "from memory" may be a
 * default that a person edits; it is never the expected figure of a test. Start with {@link
 * org.loomwright.core.catalogue.Catalogue}.
 */
@NullMarked
package org.loomwright.core.catalogue;

import org.jspecify.annotations.NullMarked;
