package org.loomwright.document.sheet.content;

import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.bundle.WireClass;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.routing.CutLength;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Wires that are cut from one drum.
 *
 * @param wireClass their colour and size
 * @param cuts the wires with their lengths, in the order of their ids
 */
public record CutGroup(WireClass wireClass, List<Cut> cuts) {

    public CutGroup {
        cuts = List.copyOf(cuts);
    }

    /** One wire to cut. */
    public record Cut(Wire wire, CutLength length) {}

    /** @return length of all of them together */
    public Length total() {
        return Length.sum(cuts.stream().map(cut -> cut.length().cut()).toList());
    }

    /**
     * @param work what is to be done
     * @param change the looms with their cut lengths
     * @return the wires to make, by colour, then by size
     */
    public static List<CutGroup> of(WireWork work, ChangeAnalysis change) {
        Map<WireClass, List<Cut>> groups = new TreeMap<>();
        for (WireChange made : work.made()) {
            Wire wire = made.wire();
            groups.computeIfAbsent(
                            new WireClass(wire.colour(), wire.size()), c -> new ArrayList<>())
                    .add(new Cut(wire, change.after().getCutLength(wire.id())));
        }
        return groups.entrySet().stream()
                .map(entry -> new CutGroup(entry.getKey(), entry.getValue()))
                .toList();
    }
}
