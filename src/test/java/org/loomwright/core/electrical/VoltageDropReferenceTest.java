package org.loomwright.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.LinearResistance;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.ReferenceTable;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Published worked examples of voltage drop; tolerances stand in the case files. */
class VoltageDropReferenceTest {

    private static final double FOOT_MM = 304.8;

    private record Example(
            Current current,
            double ohmPerUnit,
            double length,
            String unit,
            double volts,
            double tol) {

        Voltage calculated() {
            double unitMm = unit.equals("ft") ? FOOT_MM : 1_000;
            return VoltageDrop.along(
                    current,
                    LinearResistance.roundedFromMilliohmsPerMetre(ohmPerUnit * 1e6 / unitMm),
                    Length.roundedFromMillimetres(length * unitMm, RoundingMode.HALF_UP));
        }
    }

    private final List<Example> examples =
            ReferenceTable.rows(
                    "electrical/voltage-drops.csv",
                    row ->
                            new Example(
                                    Current.ofAmperes(new BigDecimal(row.get("amperes"))),
                                    Double.parseDouble(row.get("ohmPerUnit")),
                                    Double.parseDouble(row.get("length")),
                                    row.get("unit"),
                                    Double.parseDouble(row.get("printedVolts")),
                                    Double.parseDouble(row.get("tolerance"))));

    @Test
    void everyPrintedDropIsReached() {
        // Results come in whole millivolts, so half a millivolt is added to the tolerance.
        assertThat(examples)
                .hasSize(15)
                .allSatisfy(
                        example ->
                                assertThat(example.calculated().toDoubleVolts())
                                        .isCloseTo(
                                                example.volts(), within(example.tol() + 0.0005)));
    }

    @Test
    void theMisprintOfTheAircraftCircularIsNotReproduced() {
        Example example = new Example(Current.ofMilliamperes(20_000), 0.00126, 19.5, "ft", 0, 0);
        Misprint misprint = Misprint.of("drop-awg10-19.5ft");

        assertThat(example.calculated().toDoubleVolts())
                .isCloseTo(misprint.right(), within(misprint.tolerance()));
        assertThat(example.calculated().toDoubleVolts())
                .isNotCloseTo(misprint.printed(), within(0.1));
    }

    @Test
    void theMarineFormulaGivesTheAreaOfItsExample() {
        // V3, found: 25 W lamp, 2.1 A, 18 m one way, 0.6 V: 2.25 mm2, so 2.5 mm2 is taken.
        CrossSection area =
                VoltageDrop.leastArea(
                        Current.ofMilliamperes(2_100),
                        Length.ofMillimetres(18_000),
                        Voltage.ofMillivolts(600));
        assertThat(area).isEqualTo(CrossSection.ofSquareMicrometres(2_250_000));
    }

    @Test
    void aShareIsToldOfTheSupply() {
        // V6, found: 0.265 V of 12 V is 2.21 %.
        assertThat(VoltageDrop.share(Voltage.ofMillivolts(265), Voltage.ofMillivolts(12_000)))
                .isEqualTo(new Ratio(22_083));
        assertThatThrownBy(() -> VoltageDrop.share(Voltage.ZERO, Voltage.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aWarmWireMayBeShorter() {
        // Computed from the formula of A1: 254.5 x 15.5 ft / (234.5 + 50) = 13.866 ft, and 9.48 ft
        // at 181.6 °C.
        assertThat(feet(longestRun("15.5", "50"))).isCloseTo(13.866, within(0.0005));
        assertThat(feet(longestRun("15.5", "181.6"))).isCloseTo(9.48, within(0.005));
        assertThat(longestRun("15.5", "20")).isEqualTo(Length.ofMicrometres(4_724_400));
    }

    private static Length longestRun(String feet, String celsius) {
        return VoltageDrop.longestRun(
                Length.ofMillimetres(
                        new BigDecimal(feet)
                                .multiply(new BigDecimal("304.8"))
                                .stripTrailingZeros()),
                Temperature.ofCelsius(new BigDecimal(celsius)));
    }

    private static double feet(Length length) {
        return length.toDoubleMillimetres() / FOOT_MM;
    }
}
