package org.loomwright.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.LinearResistance;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.testing.ReferenceTable;
import org.loomwright.testing.TestCatalogue;

import java.math.BigDecimal;
import java.util.List;

/** The resistance table against published figures, and the temperature correction against published ones. */
class WireResistanceReferenceTest {

    private static final Temperature TWENTY = Temperature.ofCelsius(20);

    private record Row(String size, double areaMm2, BigDecimal milliohms) {}

    private final ElectricalTables tables = TestCatalogue.electrical();
    private final WireResistance resistance = new WireResistance(tables);
    private final List<Row> published =
            ReferenceTable.rows(
                    "electrical/resistances.csv",
                    row ->
                            new Row(
                                    row.get("designation"),
                                    Double.parseDouble(row.get("metalMm2")),
                                    new BigDecimal(row.get("resistance"))));

    @Test
    void everyPublishedResistanceStandsInTheTable() {
        assertThat(published)
                .hasSize(19)
                .allSatisfy(
                        row ->
                                assertThat(resistance.perMetre(row.size(), TWENTY))
                                        .isEqualTo(
                                                LinearResistance.ofMilliohmsPerMetre(
                                                        row.milliohms())));
    }

    @Test
    void publishedFiguresStandFiveToElevenPerCentAboveIdealCopper() {
        assertThat(published)
                .allSatisfy(
                        row ->
                                assertThat(row.milliohms().doubleValue() * row.areaMm2() / 17.241)
                                        .isBetween(1.05, 1.11));
    }

    @Test
    void whatIsCalculatedIsResistivityOverAreaWithTheUpperStrandingFactor() {
        var calculated =
                tables.resistances().stream()
                        .filter(row -> row.provenance().source().startsWith("resistivity"))
                        .toList();
        assertThat(calculated)
                .hasSize(18)
                .allSatisfy(
                        row ->
                                assertThat(row.at20().toDoubleMilliohmsPerMetre())
                                        .isCloseTo(
                                                17.241
                                                        / TestCatalogue.get()
                                                                .getSize(row.designation())
                                                                .metal()
                                                                .toDoubleSquareMillimetres()
                                                        * 1.08,
                                                within(0.000501)));
    }

    @Test
    void atNinetyDegreesCopperResistsAboutAQuarterMore() {
        // P1, found: about +28 % at 90 °C; computed 1 + 0.00393 x 70 = 1.2751.
        double warm = mOhm(resistance.perMetre("14/0.30", Temperature.ofCelsius(90)));
        assertThat(warm / 18.9).isCloseTo(1.2751, within(1e-6)).isCloseTo(1.28, within(0.005));
    }

    @Test
    void theAircraftCircularsCoefficientAgreesWithinAHundredthOfAPerCentUpToAHundredDegrees() {
        for (int celsius = -40; celsius <= 100; celsius += 10) {
            double ours = mOhm(resistance.perMetre("28/0.30", Temperature.ofCelsius(celsius)));
            double theirs = 9.4 * (234.5 + celsius) / 254.5;
            assertThat(ours / theirs).isCloseTo(1, within(1e-4));
        }
    }

    @Test
    void aLengthResistsInProportion() {
        assertThat(resistance.of("14/0.30", Length.ofMillimetres(2_500), TWENTY))
                .isEqualTo(Resistance.ofOhms(new BigDecimal("0.04725")));
        assertThat(resistance.of("14/0.30", Length.ZERO, TWENTY)).isEqualTo(Resistance.ZERO);
    }

    @Test
    void noWireIsColderOrHotterThanAnyInsulationStands() {
        assertThatThrownBy(() -> resistance.perMetre("14/0.30", Temperature.ofCelsius(-61)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> resistance.perMetre("14/0.30", Temperature.ofCelsius(201)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> resistance.perMetre("13/0.30", TWENTY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("13/0.30");
    }

    private static double mOhm(LinearResistance resistance) {
        return resistance.toDoubleMilliohmsPerMetre();
    }
}
