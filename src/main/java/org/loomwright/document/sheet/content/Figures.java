package org.loomwright.document.sheet.content;

import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Figures as the sheet prints them, the same on every machine. */
public final class Figures {

    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);
    private static final int METRES_DECIMALS = 2;
    private static final int PERCENT_SHIFT = 2;

    private Figures() {}

    /** @return millimetres to one decimal, rounded up, without the unit; for diameters, which must not be understated */
    public static String tenthsMm(Length length) {
        return length.toMillimetres().setScale(1, RoundingMode.CEILING).toPlainString();
    }

    /** @return millimetres exactly as recorded, without the unit */
    public static String exactMm(Length length) {
        return length.toMillimetres().toPlainString();
    }

    /** @return millimetres exactly, with at least so many decimals, so that the figures of a column stand under each other */
    public static String exactMm(Length length, int decimals) {
        BigDecimal exact = length.toMillimetres();
        return exact.setScale(Math.max(decimals, exact.scale())).toPlainString();
    }

    /** @return metres to two decimals, rounded up, with the unit */
    public static String metres(Length length) {
        return length.toMillimetres()
                        .movePointLeft(3)
                        .setScale(METRES_DECIMALS, RoundingMode.CEILING)
                        .toPlainString()
                + " m";
    }

    /** @return the ratio in per cent, exactly, with the unit */
    public static String percent(Ratio ratio) {
        return ratio.toFraction().movePointRight(PERCENT_SHIFT).stripTrailingZeros().toPlainString()
                + " %";
    }

    /** @return the date, for example {@code 3 March 2027} */
    public static String date(LocalDate date) {
        return DATE.format(date);
    }

    /** @return {@code 1 wire}, {@code 2 wires} */
    public static String count(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}
