/**
 * Does a loom keep within its limits? Every finding has its figure, its limit with the limit's source, and what would put it right.
 */
@NullMarked
package org.loomwright.core.electrical.check;

import org.jspecify.annotations.NullMarked;
