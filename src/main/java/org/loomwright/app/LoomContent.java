package org.loomwright.app;

import org.loomwright.core.loom.LoomDocument;

/**
 * What a loom consists of, with the hash that names it. Whoever makes one has computed the hash from the canonical form of this
 * very document; stores believe it.
 *
 * @param hash SHA-256 of the canonical form, 64 lower-case hexadecimal digits
 * @param document a document in which the checker found no fault
 */
public record LoomContent(String hash, LoomDocument document) {}
