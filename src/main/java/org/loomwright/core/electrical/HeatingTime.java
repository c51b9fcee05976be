package org.loomwright.core.electrical;

import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Temperature;

import java.time.Duration;

/**
 * How long a copper wire takes from one temperature to another when no heat gets away.
 *
 * <p>Source: the cable short-circuit form (I / A)^2 t = 0.0297 log10((T2 + 234) / (T1 + 234)) with A in circular mils (key P5). In square
 * millimetres, from 70 °C to 160 °C, that is I = 114.1 A / sqrt(t). The round constant 115 of another form of the same rule is not
 * followed: no source at hand gives it. Onderdonk's equation ({@link FusingCurrent#onderdonk}) has 1/33 in place of 0.0297, 2 % more.
 *
 * <p>Heat does get away, so a wire takes longer than this; up to about 10 s not by much. Pure functions, thread-safe.
 */
public final class HeatingTime {

    private static final double CABLE_FORM = 0.0297;
    private static final double INFERRED_ZERO_KELVIN = 234;
    private static final double CIRCULAR_MILS_PER_MM2 = 1 / (Math.PI / 4 * 0.0254 * 0.0254);
    private static final double LONGEST_SECONDS = 1e6;

    private HeatingTime() {}

    /**
     * @param metal cross-section of the metal
     * @param current through it, in either direction
     * @param from temperature of the metal before, -60 °C to 200 °C
     * @param to temperature that it is not to pass
     * @return how long it takes at least, to the millisecond downwards; nothing where it is as warm already, never more than 1,000,000 s
     * @throws IllegalArgumentException if the temperature before is out of range
     */
    public static Duration of(
            CrossSection metal, Current current, Temperature from, Temperature to) {
        double before = ConductorRange.checked(from).toDoubleCelsius() + INFERRED_ZERO_KELVIN;
        double after = to.toDoubleCelsius() + INFERRED_ZERO_KELVIN;
        double density =
                current.toDoubleAmperes()
                        / (metal.toDoubleSquareMillimetres() * CIRCULAR_MILS_PER_MM2);
        double seconds = CABLE_FORM * Math.max(0, Math.log10(after / before)) / (density * density);
        return Duration.ofMillis((long) (Math.min(seconds, LONGEST_SECONDS) * 1e3));
    }
}
