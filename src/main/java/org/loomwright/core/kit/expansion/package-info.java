/**
 * What does a recipe come to in one loom? {@link org.loomwright.core.kit.expansion.KitExpansion} checks the answers, makes new ends,
 * finds the feeds, chooses fuses, sizes, colours and terminals, and hands back amendments that are proven to apply, with the reason
 * for each choice; or every reason why there are none. Nothing is half done and no loom is changed.
 */
@NullMarked
package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.NullMarked;
