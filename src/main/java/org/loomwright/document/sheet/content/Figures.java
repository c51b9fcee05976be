package org.loomwright.document.sheet.content;

import org.loomwright.core.electrical.check.Figure;
import org.loomwright.core.quantity.Current;
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
    private static final String NBSP = "\u00a0";
    private static final char MINUS = '\u2212';

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

    /** @return amperes to one decimal, half up, without the unit; a true minus where it is negative */
    public static String tenthsA(Current current) {
        return signed(current.toAmperes().setScale(1, RoundingMode.HALF_UP));
    }

    /** @return amperes to two decimals, half up, without the unit */
    public static String hundredthsA(Current current) {
        return signed(current.toAmperes().setScale(2, RoundingMode.HALF_UP));
    }

    /** @return the figure with its unit, no finer than findings word it; one that would round to nothing stays as it is */
    public static String words(Figure figure) {
        int decimals =
                switch (figure.unit()) {
                    case "A", "V" -> 2;
                    case "%" -> 1;
                    default -> figure.value().scale();
                };
        BigDecimal value = figure.value();
        BigDecimal rounded =
                value.scale() <= decimals ? value : value.setScale(decimals, RoundingMode.HALF_UP);
        boolean vanishes = rounded.signum() == 0 && value.signum() != 0;
        return signed(vanishes ? value : rounded) + NBSP + figure.unit();
    }

    /** @return the number as it is, with a true minus where it is negative */
    public static String signed(BigDecimal number) {
        return number.toPlainString().replace('-', MINUS);
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
