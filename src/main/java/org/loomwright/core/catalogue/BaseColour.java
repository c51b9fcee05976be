package org.loomwright.core.catalogue;

/**
 * One basic colour of the BS AU 7 letter code.
 *
 * @param letters one or two capital letters, for example {@code LG}
 * @param name the colour in words
 * @param supply what a body of this colour says about the feed
 * @param swatch how it is drawn, as {@code #rrggbb}; own choice, readable on paper
 * @param provenance where letters and meaning come from
 */
public record BaseColour(
        String letters, String name, String supply, String swatch, Provenance provenance) {}
