package org.loomwright.core.electrical.check.current;

import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.electrical.check.Figure;
import org.loomwright.core.loom.Device;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How figures are written in findings: currents to 0.01 A, shares to 0.1 %. Figures keep one decimal more for comparison. */
final class Words {

    private Words() {}

    static Figure amperes(Current current) {
        return new Figure(current.toAmperes(), "A");
    }

    static Figure percent(Ratio share) {
        return new Figure(share.toFraction().movePointRight(2), "%");
    }

    static Figure millimetres(Length length) {
        return new Figure(length.toMillimetres().setScale(0, RoundingMode.CEILING), "mm");
    }

    static String of(Current current) {
        return plain(current.toAmperes().setScale(2, RoundingMode.HALF_UP)) + " A";
    }

    static String of(Ratio share) {
        return plain(share.toFraction().movePointRight(2).setScale(1, RoundingMode.HALF_UP)) + " %";
    }

    static String metres(Length length) {
        BigDecimal metres = length.toMillimetres().movePointLeft(3);
        return plain(metres.setScale(2, RoundingMode.HALF_UP)) + " m";
    }

    /** Id and name, for example {@code HEADLAMP-OS (offside headlamp)}. */
    static String of(Device device) {
        return "%s (%s)".formatted(device.id(), device.name());
    }

    /** A figure's status, which shows what is only from memory, and its source. */
    static String of(Provenance provenance) {
        return provenance.inWords();
    }

    private static String plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
