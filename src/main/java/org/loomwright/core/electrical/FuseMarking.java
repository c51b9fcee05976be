package org.loomwright.core.electrical;

import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.quantity.Current;

/**
 * What the figure on a fuse means.
 *
 * <p>Source: modern blades are marked with their continuous current (keys U5, U6); old British glass fuses with the current at which
 * they blow, about twice the continuous one (U1, U3); 35 A and 50 A are printed with 17.5 A and 25 A (U2, U3, U4). Advice on a
 * modern substitute for a "35" differs (20 A in U3, 25 A in U2) and is not followed: the printed continuous value is.
 */
public final class FuseMarking {

    private FuseMarking() {}

    /**
     * @param tables the trade's tables
     * @param style build and marking
     * @param marked the figure on the fuse, more than zero
     * @return the row of the table, or for a glass fuse that it does not have one by the rule of half; a blade that no table has
     *     carries what it is marked with
     * @throws IllegalArgumentException if the figure is not more than zero
     */
    public static FuseRating read(ElectricalTables tables, FuseStyle style, Current marked) {
        return tables.findFuse(style, marked).orElseGet(() -> byRule(style, marked));
    }

    private static FuseRating byRule(FuseStyle style, Current marked) {
        return switch (style) {
            case BLADE ->
                    new FuseRating(
                            style,
                            marked,
                            marked,
                            null,
                            "",
                            new Provenance(Status.COMPUTED, "marked with what it carries, U5"));
            case GLASS_BLOW_MARKED ->
                    new FuseRating(
                            style,
                            marked,
                            Current.ofMilliamperes(marked.milliamperes() / 2),
                            marked,
                            "",
                            new Provenance(Status.COMPUTED, "half of the blow value, U1 and U3"));
        };
    }
}
