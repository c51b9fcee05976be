/** Do amendments do what they say, and nothing else? The ladder tells the story; the properties try to break it. */
@NullMarked
package org.loomwright.core.amendment;

import org.jspecify.annotations.NullMarked;
