package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.catalogue.OpeningSize;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;

class CatalogueFilesTest {

    private final Catalogue catalogue = CatalogueFiles.load();

    @Test
    void everyRowSaysWhereItComesFrom() {
        assertThat(catalogue.colours())
                .isNotEmpty()
                .allMatch(row -> hasSource(row.provenance().source()));
        assertThat(catalogue.coverings())
                .isNotEmpty()
                .allMatch(row -> hasSource(row.provenance().source()));
        assertThat(catalogue.terminals())
                .isNotEmpty()
                .allMatch(row -> hasSource(row.provenance().source()));
        assertThat(catalogue.sizes())
                .isNotEmpty()
                .allMatch(row -> hasSource(row.diameterProvenance().source()))
                .allMatch(row -> hasSource(row.ratingProvenance().source()));
    }

    private static boolean hasSource(String source) {
        return !source.isBlank();
    }

    @Test
    void everySizeIsThickerOutsideThanItsMetal() {
        assertThat(catalogue.sizes())
                .allSatisfy(
                        size -> {
                            double bareMm =
                                    2 * Math.sqrt(size.metal().squareMicrometres() / 1e6 / Math.PI);
                            assertThat(size.outsideDiameter().toDoubleMillimetres())
                                    .as(size.designation())
                                    .isGreaterThan(bareMm);
                        });
    }

    /** Published: 14/0.30 carries 8.75 A (T1), 14/.012 carries 7 A (T2). */
    @Test
    void ratingsAreThePublishedOnes() {
        assertThat(rating("14/0.30")).isEqualTo(Current.ofMilliamperes(8_750));
        assertThat(rating("14/.012")).isEqualTo(Current.ofMilliamperes(7_000));
    }

    private Current rating(String designation) {
        return catalogue.findSize(designation).map(ConductorSize::rating).orElseThrow();
    }

    @Test
    void lightGreenIsOneColourAndNotTwo() {
        WireColour colour = WireColour.parse("LGN");
        assertThat(colour.body()).isEqualTo("LG");
        assertThat(colour.tracer()).isEqualTo("N");
        assertThat(catalogue.hasColour(colour)).isTrue();
        assertThat(catalogue.hasColour(WireColour.parse("GXA"))).isFalse();
    }

    @Test
    void theSmallestOpeningThatFitsIsFound() {
        assertThat(catalogue.findOpeningFor(OpeningKind.GROMMET, Length.ofMicrometres(10_001)))
                .map(OpeningSize::clearDiameter)
                .contains(Length.ofMillimetres(12));
        assertThat(catalogue.findOpeningFor(OpeningKind.GROMMET, Length.ofMillimetres(400)))
                .isEmpty();
    }
}
