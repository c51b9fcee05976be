package org.loomwright.core.period;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Loom;

import java.util.ArrayList;
import java.util.List;

/**
 * Judges every addition, aspect by aspect, by what was usual when the vehicle was new, and lists the way back to stock.
 *
 * <p>In this order: what the recorded loom shows (wires that were mended or renewed do not speak); the table of period parts, against the
 * vehicle's year; for coverings the nearest recorded segments of the same sort. What cannot be told is {@link Judgement#UNKNOWN}, with what
 * somebody has to say. Whether a deviation is seen is told by the names of nodes and devices, where they tell.
 *
 * <p>Deterministic and without state.
 */
public final class PeriodCheck {

    private static final String JUDGES =
            "Owners' clubs judge a vehicle as it was when new (published): equipment that was not"
                + " delivered with it loses points even where it is of the period, and what does"
                + " not fit or is not of the period loses more. Written evidence counts. No"
                + " published figure for looms was found.";
    private static final String LOOKS_ONLY =
            "These are judgements of looks and age, never of safety: a fuse, a relay or a thicker"
                    + " wire that is not of the period may be what keeps the vehicle from burning.";
    private static final String NOT_RECORDED =
            "How single cables are insulated, in cotton or in plastic, is not recorded, so whether"
                    + " the bare tails look right cannot be told.";
    private static final String BEFORE_WORK =
            "Before any of this: disconnect the battery, its earth lead first; afterwards test"
                + " insulation and continuity, and power up through a small fuse or a lamp. Local"
                + " rules and a qualified person come first.";

    private final Catalogue catalogue;
    private final Behaviours behaviours;
    private final PeriodTables tables;

    /**
     * @param catalogue the tables that the looms refer to
     * @param behaviours what devices do
     * @param tables when parts were usual, and what can be seen where
     */
    public PeriodCheck(Catalogue catalogue, Behaviours behaviours, PeriodTables tables) {
        this.catalogue = catalogue;
        this.behaviours = behaviours;
        this.tables = tables;
    }

    /**
     * @param stock the loom as it was recorded
     * @param amended what came out of it
     * @param colours what holding the amended loom's colours against the colour code found; only findings about wires are used, the first
     *     of each
     * @return how far the additions are of the period
     */
    public PeriodReport of(Loom stock, AmendedLoom amended, List<Finding> colours) {
        Comparison comparison = new Comparison(stock, amended, catalogue, tables);
        Tracing tracing = Tracing.of(amended.loom(), catalogue, behaviours);
        List<BackStep> wayBack = WayBack.of(comparison, tracing);
        ItemList items = new ItemList(wayBack);
        new WireItems(comparison, colours, items).addAll();
        new DeviceItems(comparison, items).addAll();
        new SegmentItems(comparison, items).addAll();
        return new PeriodReport(items.all(), wayBack, notes(comparison));
    }

    private static List<String> notes(Comparison comparison) {
        List<String> notes = new ArrayList<>();
        notes.add(
                "Judged for %d, the vehicle's year. Years in the table are rough; most are from memory, and each says so."
                        .formatted(comparison.year()));
        notes.addAll(List.of(JUDGES, LOOKS_ONLY, NOT_RECORDED, BEFORE_WORK));
        return notes;
    }
}
