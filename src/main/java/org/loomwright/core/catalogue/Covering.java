package org.loomwright.core.catalogue;

import org.loomwright.core.quantity.Length;

/**
 * A kind of covering over a bundle.
 *
 * @param code short name used in documents, for example {@code cotton-braid}
 * @param name the covering in words
 * @param wall what it adds to the radius; zero for a bare run
 * @param woven whether it is made of yarn, so that colours, picks and lacquer mean something
 * @param provenance where the wall comes from
 */
public record Covering(
        String code, String name, Length wall, boolean woven, Provenance provenance) {}
