/**
 * How do looms, amendments, revisions and the trade's tables look as files? JSON in and out, the one canonical form (RFC 8785)
 * with its content hash (SHA-256), and the CSV tables under {@code shared/catalogue}.
 *
 * <p>Field names carry their unit. Everything that is wrong in a file is reported together with its JSON pointer. May depend on
 * core, Jackson and Commons CSV. Start with {@code LoomJson} and {@code CanonicalJson}.
 */
@NullMarked
package org.loomwright.exchange;

import org.jspecify.annotations.NullMarked;
