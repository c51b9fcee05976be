/**
 * How is it all put together? Typed settings, the database that the program brings along when none is given, and the wiring
 * between the parts.
 *
 * <p>Order at start: embedded server (or the given URL), migrations as the owner of the tables, then everything else as the
 * application's own role. May depend on anything. Start with {@link org.loomwright.config.LoomwrightSettings} and {@link
 * org.loomwright.config.DatabaseConfiguration}.
 */
@NullMarked
package org.loomwright.config;

import org.jspecify.annotations.NullMarked;
