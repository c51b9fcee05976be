package org.loomwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.catalogue.CatalogueOverride;
import org.loomwright.exchange.TradeTables;

import java.util.List;

class TablesTest {

    private final TradeTables printed = TradeTables.load(List.of());
    private final Tables tables = new Tables(printed);

    private static AnalysisSettings withDiameter(String millimetres) {
        AnalysisSettings usual = AnalysisSettings.USUAL;
        return new AnalysisSettings(
                usual.allowances(),
                usual.layFactor(),
                usual.effort(),
                List.of(
                        new CatalogueOverride(
                                "conductor-sizes",
                                "14/.012",
                                "outsideDiameterMm",
                                millimetres,
                                "callipers")));
    }

    @Test
    void withoutOwnFiguresTheyAreThePrintedOnes() {
        assertThat(tables.with(AnalysisSettings.USUAL)).isSameAs(printed);
    }

    @Test
    void theSameOwnFiguresAreReadOnce() {
        assertThat(tables.with(withDiameter("2.6"))).isSameAs(tables.with(withDiameter("2.6")));
        assertThat(tables.with(withDiameter("2.6"))).isNotSameAs(tables.with(withDiameter("2.7")));
    }

    @Test
    void whatWasDroppedIsReadAgainAndSaysTheSame() {
        TradeTables first = tables.with(withDiameter("2.6"));
        for (int i = 0; i < 60; i++) {
            tables.with(withDiameter("2." + (100 + i)));
        }
        TradeTables again = tables.with(withDiameter("2.6"));

        assertThat(again).isNotSameAs(first);
        assertThat(again.catalogue().getSize("14/.012"))
                .isEqualTo(first.catalogue().getSize("14/.012"));
    }
}
