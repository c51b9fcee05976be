/**
 * Does the program do over HTTP what its description says, and refuse everything else in the same way? Every test here talks to
 * the running program through a socket. Start with {@code MainJobIntegrationTest}.
 */
@NullMarked
package org.loomwright.api;

import org.jspecify.annotations.NullMarked;
