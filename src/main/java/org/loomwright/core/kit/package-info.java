/**
 * What does it take to add an accessory, or to convert something? A {@link org.loomwright.core.kit.Recipe} says so as data: what to ask,
 * what the loom must have, which devices, feeds and wires to add, what to move or change, and of what to remind. {@link
 * org.loomwright.core.kit.expansion} turns a recipe and its answers into amendments.
 *
 * <p>Parts speak of each other by keys. A <i>place</i> is a key and a point, {@code lamp/FEED}; {@code feed:main} is the outlet of the feed
 * {@code main}, {@code earth} the earth point nearest to the other end. A <i>spot</i> says at which node a device stands: {@code answer:lamp},
 * {@code feed:main} or {@code device:lamp}. Words in braces inside names, {@code {watts}}, are replaced by answers.
 */
@NullMarked
package org.loomwright.core.kit;

import org.jspecify.annotations.NullMarked;
