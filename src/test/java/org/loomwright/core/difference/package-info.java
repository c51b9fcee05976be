/** Is every difference between two looms told, and none that is not there? */
@NullMarked
package org.loomwright.core.difference;

import org.jspecify.annotations.NullMarked;
