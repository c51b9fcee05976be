package org.loomwright.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.electrical.Derating.Step;
import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.testing.ReferenceTable;
import org.loomwright.testing.TestCatalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;

/** Derating, fusing currents and fuses against published tables and worked examples. */
class RatingsReferenceTest {

    private static final Temperature PVC = Temperature.ofCelsius(70);
    private static final double CIRCULAR_MIL_MM2 = Math.PI / 4 * 0.0254 * 0.0254;

    private final ElectricalTables tables = TestCatalogue.electrical();

    @Test
    void theDeratingChainOfTheAircraftCircularIsReproduced() {
        // A4, found: AWG 14 alone 47 A; 20,000 ft x 0.91 gives 42.77 A; 8 wires at 60 % x 0.6 gives
        // 25.66, printed 26 A.
        Provenance circular = new Provenance(Status.FOUND, "A4");
        Derating altitude =
                Derating.of(amperes("47"))
                        .then(new Step("20,000 ft", new Ratio(910_000), circular));
        Derating bundle = altitude.then(new Step("8 wires at 60 %", new Ratio(600_000), circular));

        assertThat(altitude.left()).isEqualTo(amperes("42.77"));
        assertThat(bundle.left()).isEqualTo(amperes("25.662"));
        assertThat(bundle.left().toDoubleAmperes()).isCloseTo(26, within(0.5));
    }

    @Test
    void aWarmAmbientLeavesWhatTheStandardHasAtFiftyDegrees() {
        // The published pairs are rounded to three figures or to whole amperes: within 0.9 % of the
        // square-root rule.
        List<CSVRecord> rows = ReferenceTable.rows("electrical/ambient-currents.csv", row -> row);
        assertThat(rows)
                .hasSize(13)
                .allSatisfy(
                        row -> {
                            Current left =
                                    Derating.of(amperes(row.get("at30A")))
                                            .atAmbient(PVC, Temperature.ofCelsius(50))
                                            .left();
                            double published = Double.parseDouble(row.get("at50A"));
                            assertThat(left.toDoubleAmperes() / published)
                                    .isCloseTo(1, within(0.009));
                        });
    }

    @Test
    void nothingIsLeftWhereTheAmbientIsAsHotAsTheInsulationStands() {
        assertThat(Derating.of(amperes("8.75")).atAmbient(PVC, PVC).left()).isEqualTo(Current.ZERO);
        assertThat(Derating.of(amperes("8.75")).atAmbient(PVC, Temperature.ofCelsius(90)).left())
                .isEqualTo(Current.ZERO);
        assertThatThrownBy(
                        () -> Derating.of(Current.ZERO).atAmbient(Temperature.ofCelsius(30), PVC))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void bundleFactorsAreThoseOfTheCode() {
        List<CSVRecord> rows = ReferenceTable.rows("electrical/bundle-factors.csv", row -> row);
        assertThat(rows)
                .hasSize(6)
                .allSatisfy(
                        row -> {
                            Ratio factor =
                                    Ratio.of(new BigDecimal(row.get("percent")).movePointLeft(2));
                            assertThat(factorFor(row.get("fromWires"))).isEqualTo(factor);
                            assertThat(factorFor(row.get("toWires"))).isEqualTo(factor);
                        });
        assertThat(factorFor("1")).isEqualTo(Ratio.ONE);
        assertThat(factorFor("3")).isEqualTo(Ratio.ONE);
    }

    @Test
    void oneMoreLoadedWireNeverLeavesMore() {
        for (int wires = 1; wires < 100; wires++) {
            assertThat(tables.bundleFactorFor(wires + 1).factor())
                    .isLessThanOrEqualTo(tables.bundleFactorFor(wires).factor());
        }
        assertThatThrownBy(() -> tables.bundleFactorFor(0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void preecesTableIsReached() {
        List<CSVRecord> rows = ReferenceTable.rows("electrical/preece.csv", row -> row);
        assertThat(rows)
                .hasSize(5)
                .allSatisfy(
                        row -> {
                            double inches = Double.parseDouble(row.get("diameterInch"));
                            Current current =
                                    FusingCurrent.preece(
                                            Length.roundedFromMillimetres(
                                                    inches * 25.4, RoundingMode.HALF_UP));
                            double printed = Double.parseDouble(row.get("printedA"));
                            assertThat(current.toDoubleAmperes() / printed)
                                    .isCloseTo(1, within(0.003));
                        });
        assertThat(FusingCurrent.preece(Length.ZERO)).isEqualTo(Current.ZERO);
    }

    @Test
    void onderdonkTakesTheRightSignAndNotThatOfItsWorkedExample() {
        Misprint misprint = Misprint.of("onderdonk-2581cmil-5s-25C");
        double amperes =
                FusingCurrent.onderdonk(
                                CrossSection.ofSquareMicrometres(
                                        Math.round(2_581 * CIRCULAR_MIL_MM2 * 1e6)),
                                Duration.ofSeconds(5),
                                Temperature.ofCelsius(25))
                        .toDoubleAmperes();

        assertThat(amperes).isCloseTo(misprint.right(), within(misprint.tolerance()));
        assertThat(amperes).isNotCloseTo(misprint.printed(), within(5.0));
    }

    @Test
    void onderdonkNeedsATime() {
        assertThatThrownBy(
                        () ->
                                FusingCurrent.onderdonk(
                                        CrossSection.ofSquareMicrometres(1), Duration.ZERO, PVC))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void everyPublishedFuseReadsAsPublished() {
        List<CSVRecord> rows = ReferenceTable.rows("electrical/fuses.csv", row -> row);
        assertThat(rows)
                .hasSize(14)
                .allSatisfy(
                        row -> {
                            FuseRating fuse =
                                    FuseMarking.read(
                                            tables,
                                            FuseStyle.valueOf(row.get("style")),
                                            amperes(row.get("markedA")));
                            String blow = row.get("blowA");
                            assertThat(fuse.continuous())
                                    .isEqualTo(amperes(row.get("continuousA")));
                            assertThat(fuse.blow())
                                    .isEqualTo(blow.isEmpty() ? null : amperes(blow));
                            assertThat(fuse.colour()).isEqualTo(row.get("colour"));
                            assertThat(fuse.provenance().status()).isEqualTo(Status.FOUND);
                        });
    }

    @Test
    void aGlassFuseThatNoTableHasCarriesHalfOfItsMark() {
        FuseRating fuse = FuseMarking.read(tables, FuseStyle.GLASS_BLOW_MARKED, amperes("60"));
        assertThat(fuse.continuous()).isEqualTo(amperes("30"));
        assertThat(fuse.blow()).isEqualTo(amperes("60"));
        assertThat(fuse.provenance().status()).isEqualTo(Status.COMPUTED);
    }

    private Ratio factorFor(String wires) {
        return tables.bundleFactorFor(Integer.parseInt(wires)).factor();
    }

    private static Current amperes(String amperes) {
        return Current.ofAmperes(new BigDecimal(amperes));
    }
}
