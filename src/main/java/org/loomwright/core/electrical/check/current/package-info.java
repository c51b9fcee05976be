/**
 * Does every wire, fuse and contact carry what flows, and does enough voltage arrive? One class for each family of rules behind {@link
 * org.loomwright.core.electrical.check.current.CurrentChecks}; what breaks a limit is handed to {@link
 * org.loomwright.core.electrical.check.current.CheapestChange}.
 */
@NullMarked
package org.loomwright.core.electrical.check.current;

import org.jspecify.annotations.NullMarked;
