package org.loomwright.core.electrical.structure;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.loom.Loom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything about a loom that can be wrong before any current flows. For each thing and rule the worst finding only.
 *
 * <p>Rules: {@code electrical.no-feed}, {@code no-return}, {@code floating-end}, {@code wrong-side-of-switch}, {@code no-room}, {@code
 * earth-point-crowded}, {@code terminal-size}, {@code polarity}, {@code system-voltage}. Where a device stands for something that is in another loom, its
 * missing points are not missed; without a battery in the loom feeds are not judged. Cost: a walk for every load. Immutable and
 * thread-safe.
 */
public final class StructureChecks {

    private final Wiring wiring;
    private final StructureSettings settings;

    /**
     * @param loom a proven loom
     * @param newcomers what in it is new
     * @param catalogue the tables that it refers to
     * @param behaviours what devices do
     * @param tracing the tracing of this loom with the same tables
     * @param settings what is taken for good practice
     */
    public StructureChecks(
            Loom loom,
            Newcomers newcomers,
            Catalogue catalogue,
            Behaviours behaviours,
            Tracing tracing,
            StructureSettings settings) {
        this.wiring = new Wiring(loom, catalogue, behaviours, tracing, newcomers);
        this.settings = settings;
    }

    /** @return what was found, the worst first */
    public List<ElectricalFinding> findings() {
        List<ElectricalFinding> all = new ArrayList<>();
        all.addAll(new FeedAndReturn(wiring).findings());
        all.addAll(new FloatingEnds(wiring).findings());
        all.addAll(new SwitchSides(wiring, settings).findings());
        all.addAll(new Room(wiring, settings).findings());
        all.addAll(new TerminalSizes(wiring).findings());
        all.addAll(new EarthSuits(wiring).findings());
        all.addAll(new VoltageSuits(wiring).findings());
        all.sort(ElectricalFinding.WORST_FIRST);
        Map<String, ElectricalFinding> worst = new LinkedHashMap<>();
        for (ElectricalFinding finding : all) {
            worst.putIfAbsent(
                    finding.finding().code() + " " + finding.finding().subject().words(), finding);
        }
        return List.copyOf(worst.values());
    }
}
