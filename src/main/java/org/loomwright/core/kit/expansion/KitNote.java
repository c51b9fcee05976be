package org.loomwright.core.kit.expansion;

import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.finding.Subject;

/**
 * Why a kit did what it did, or what is left for a person to do.
 *
 * @param about the thing that it is about
 * @param rule short name of the rule: {@code feed}, {@code fuse}, {@code size}, {@code colour}, {@code terminal}, {@code earth}, {@code renewed},
 *     {@code room}, {@code branch} or {@code reminder}
 * @param text the reason in a sentence or two, with figures
 * @param provenance how far the figures can be trusted
 */
public record KitNote(Subject about, String rule, String text, Provenance provenance) {}
