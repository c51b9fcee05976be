package org.loomwright.core.electrical;

import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Temperature;

import java.time.Duration;

/** At which current a bare copper wire melts. Insulation is ruined long before. Pure functions, thread-safe. */
public final class FusingCurrent {

    private static final double PREECE_COPPER = 10_244;
    private static final double MILLIMETRES_PER_INCH = 25.4;
    private static final double ONDERDONK = 33;
    private static final double MELTING_CELSIUS = 1_083;
    private static final double INFERRED_ZERO_KELVIN = 234;

    private FusingCurrent() {}

    /**
     * For ever, a solid wire in free air.
     *
     * <p>Source: Preece, I = 10244 d^1.5 with d in inches for copper (key P3, with its table).
     *
     * @param diameter of the metal, not negative
     * @return the current that just melts it, to the nearest milliampere
     * @throws IllegalArgumentException if the diameter is negative
     */
    public static Current preece(Length diameter) {
        if (diameter.isNegative()) {
            throw new IllegalArgumentException("a diameter is not negative, was " + diameter);
        }
        double inches = diameter.toDoubleMillimetres() / MILLIMETRES_PER_INCH;
        return Current.roundedFromAmperes(PREECE_COPPER * inches * Math.sqrt(inches));
    }

    /**
     * In so short a time that no heat gets away: up to about 10 s.
     *
     * <p>Source: Onderdonk, 33 t (I / A)^2 = log10((Tm - Ta) / (234 + Ta) + 1) with A in circular mils and Tm = 1083 °C (constants in key
     * P4). P4 itself computes with 234 - Ta and so gets 178 A where 168.9 A is right; the cable form of the same equation (P5) has the
     * sign as here.
     *
     * @param metal cross-section of the metal
     * @param time how long, more than zero
     * @param ambient temperature of the wire before, -60 °C to 200 °C
     * @return the current that melts it in that time, to the nearest milliampere
     * @throws IllegalArgumentException if the time is not more than zero or the temperature is out of range
     */
    public static Current onderdonk(CrossSection metal, Duration time, Temperature ambient) {
        if (!time.isPositive()) {
            throw new IllegalArgumentException("a time must be more than zero, was " + time);
        }
        double celsius = ConductorRange.checked(ambient).toDoubleCelsius();
        double heat =
                Math.log10((MELTING_CELSIUS - celsius) / (INFERRED_ZERO_KELVIN + celsius) + 1);
        double seconds = time.toMillis() / 1e3;
        return Current.roundedFromAmperes(
                circularMils(metal) * Math.sqrt(heat / (ONDERDONK * seconds)));
    }

    /** A circular mil is the area of a circle of one thousandth of an inch. */
    private static double circularMils(CrossSection metal) {
        double milMm = MILLIMETRES_PER_INCH / 1_000;
        return metal.toDoubleSquareMillimetres() / (Math.PI / 4 * milMm * milMm);
    }
}
