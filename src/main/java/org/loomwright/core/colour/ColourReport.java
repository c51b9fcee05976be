package org.loomwright.core.colour;

import org.loomwright.core.finding.Finding;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The colours of a loom and its additions.
 *
 * @param proposals by new wire the code that its feed and function call for
 * @param differing new wires that have another code, or a colour that no list has
 * @param clashes wires of one code that leave at one place and are not one net
 * @param audit recorded wires whose code contradicts what the tracing found
 */
public record ColourReport(
        SortedMap<String, ColourProposal> proposals,
        List<Finding> differing,
        List<ColourClash> clashes,
        List<Finding> audit) {

    public ColourReport {
        proposals = Collections.unmodifiableSortedMap(new TreeMap<>(proposals));
        differing = List.copyOf(differing);
        clashes = List.copyOf(clashes);
        audit = List.copyOf(audit);
    }
}
