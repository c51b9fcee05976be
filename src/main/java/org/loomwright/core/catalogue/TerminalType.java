package org.loomwright.core.catalogue;

import org.loomwright.core.quantity.Length;

/**
 * What a wire's end is finished with.
 *
 * @param code short name used in documents, for example {@code bullet-4.7}
 * @param name the terminal in words
 * @param strip insulation to strip
 * @param allowance wire that making the termination uses up beyond the measured tail
 * @param renewal wire that cutting it off and making it again uses up
 * @param provenance where the lengths come from
 */
public record TerminalType(
        String code,
        String name,
        Length strip,
        Length allowance,
        Length renewal,
        Provenance provenance) {}
