/**
 * What does a program see? JSON over HTTP under {@code /api}: thin controllers, request reading with every fault and its JSON
 * pointer, problem documents after RFC 9457, entity tags for everything that can be edited.
 *
 * <p>May depend on {@code app}, {@code exchange}, {@code document} and core's values. Start with {@code LoomController} and {@code
 * Problems}.
 */
@NullMarked
package org.loomwright.api;

import org.jspecify.annotations.NullMarked;
