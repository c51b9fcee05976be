package org.loomwright.core.electrical;

import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.LinearResistance;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.core.quantity.Voltage;

import java.math.RoundingMode;

/** Volts lost along a wire, the area that keeps them within a limit, and the longest run. Pure functions, thread-safe. */
public final class VoltageDrop {

    /** Conductivity of warm copper in m/(ohm mm²): the round figure of the marine formula, 3.5 % below standard copper at 20 °C. */
    private static final double MARINE_CONDUCTIVITY = 56;

    private static final double INFERRED_ZERO_CELSIUS = -234.5;
    private static final double SPAN_TO_20_KELVIN = 254.5;

    private VoltageDrop() {}

    /**
     * Source: V = I R, as in FAA AC 43.13-1B, p. 11-22 (key A1). To the nearest millivolt.
     *
     * @param current through it
     * @param resistance of everything that the current goes through, out and back
     * @return what is lost
     */
    public static Voltage across(Current current, Resistance resistance) {
        return Voltage.roundedFromVolts(current.toDoubleAmperes() * resistance.toDoubleOhms());
    }

    /**
     * Source: V = I r L, FAA AC 43.13-1B, p. 11-22 (key A1). A return through the body counts separately. To the nearest millivolt.
     *
     * <p>Table 11-8 of that circular prints .366 V for 20 A in 19.5 ft of AWG 10 (0.00126 ohm/ft). That is a misprint for 0.491 V: its
     * own formula gives 0.4914, half of what the same table has for 39 ft.
     *
     * @param current through the wire
     * @param resistance per metre at the conductor's temperature
     * @param length of the wire, out and back where the return is a wire
     * @return what is lost
     */
    public static Voltage along(Current current, LinearResistance resistance, Length length) {
        return across(current, resistance.times(length));
    }

    /**
     * @param drop what is lost
     * @param supply of what, more than zero
     * @return the share that is lost, to the nearest millionth
     * @throws IllegalArgumentException if the supply is not more than zero
     */
    public static Ratio share(Voltage drop, Voltage supply) {
        if (supply.millivolts() <= 0) {
            throw new IllegalArgumentException("a supply is more than zero, was " + supply);
        }
        return Ratio.rounded(
                (double) drop.millivolts() / supply.millivolts(), RoundingMode.HALF_UP);
    }

    /**
     * Source: A = 2 L I / (56 dV), a marine handbook formula on a public page (key V3). Another page (V5) has 0.0164 ohm mm²/m, which is
     * 5 % better than standard copper; it is not followed.
     *
     * @param current through the wire
     * @param oneWay length of one of the two wires
     * @param allowed what may be lost out and back, more than zero
     * @return the least area, to the nearest square micrometre
     * @throws IllegalArgumentException if nothing may be lost
     */
    public static CrossSection leastArea(Current current, Length oneWay, Voltage allowed) {
        if (allowed.millivolts() <= 0) {
            throw new IllegalArgumentException(
                    "the allowed drop must be more than zero, was " + allowed);
        }
        double metres = oneWay.toDoubleMillimetres() / 1e3;
        double areaMm2 =
                2
                        * metres
                        * current.toDoubleAmperes()
                        / (MARINE_CONDUCTIVITY * allowed.toDoubleVolts());
        return CrossSection.ofSquareMicrometres(Math.round(areaMm2 * 1e6));
    }

    /**
     * How long a wire may be when it is warm, if that length is right at 20 °C.
     *
     * <p>Source: L2 = 254.5 L1 / (234.5 + T2), FAA AC 43.13-1B, p. 11-22 (key A1).
     *
     * @param at20 the longest run at 20 °C
     * @param conductor temperature of the metal, -60 °C to 200 °C
     * @return the longest run at that temperature, to the nearest micrometre downwards
     * @throws IllegalArgumentException if the temperature is out of range
     */
    public static Length longestRun(Length at20, Temperature conductor) {
        double celsius = ConductorRange.checked(conductor).toDoubleCelsius();
        return Length.roundedFromMillimetres(
                SPAN_TO_20_KELVIN * at20.toDoubleMillimetres() / (celsius - INFERRED_ZERO_CELSIUS),
                RoundingMode.FLOOR);
    }
}
