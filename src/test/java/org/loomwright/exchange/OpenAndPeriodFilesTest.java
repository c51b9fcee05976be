package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.open.Expectation;
import org.loomwright.core.open.Expectations;
import org.loomwright.core.period.PeriodPart;
import org.loomwright.core.period.PeriodPart.Kind;
import org.loomwright.core.period.PeriodTables;
import org.loomwright.core.quantity.Length;
import org.loomwright.testing.TestCatalogue;

import java.io.StringReader;
import java.util.List;
import java.util.Map;

/** The tables of open points and of the period are complete, and a wrong row is refused. */
class OpenAndPeriodFilesTest {

    private static final String EXPECTED = "service,need,kinds,from,unless,why,status,source\n";
    private static final String PART = "kind,code,from,to,seen,why,alternative,status,source\n";

    private final Catalogue catalogue = TestCatalogue.get();
    private final Expectations expectations = ExpectationFiles.load(catalogue);
    private final PeriodTables period = PeriodFiles.load(catalogue);

    @Test
    void everyRowSaysWhereItComesFrom() {
        assertThat(expectations.rows()).allMatch(row -> !row.provenance().source().isBlank());
        assertThat(period.parts()).allMatch(row -> !row.provenance().source().isBlank());
        assertThat(period.places()).allMatch(row -> !row.provenance().source().isBlank());
    }

    @Test
    void everyCoveringTerminalAndSizeHasItsPeriod() {
        assertThat(catalogue.coverings()).allMatch(it -> has(Kind.COVERING, it.code()));
        assertThat(catalogue.terminals()).allMatch(it -> has(Kind.TERMINAL, it.code()));
        assertThat(catalogue.sizes()).allMatch(it -> has(Kind.SIZE, it.designation()));
    }

    private boolean has(Kind kind, String code) {
        return period.parts().stream()
                .filter(part -> part.kind() == kind)
                .anyMatch(
                        part ->
                                part.code().equals(code)
                                        || part.code().startsWith("*")
                                                && code.endsWith(part.code().substring(1)));
    }

    @Test
    void aServiceThatThereIsNotIsRefused() {
        List<Expectation> rows = expectations("nothing,fuse,,1,,because,MEMORY,m");
        assertThatThrownBy(() -> new Expectations(catalogue, rows, Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("nothing");
    }

    @Test
    void aNeedThatStandsTwiceIsRefused() {
        List<Expectation> rows =
                expectations("fan,fuse,,1,,because,MEMORY,m\nfan,fuse,motor,1,,because,MEMORY,m");
        assertThatThrownBy(() -> new Expectations(catalogue, rows, Map.of()))
                .hasMessageContaining("twice");
    }

    @Test
    void aTerminalThatThereIsNotIsRefused() {
        Map<String, Length> widths = Map.of("nothing", Length.ofMillimetres(1));
        assertThatThrownBy(() -> new Expectations(catalogue, List.of(), widths))
                .hasMessageContaining("nothing");
    }

    @Test
    void aRowThatCannotBeReadIsNamed() {
        assertThatThrownBy(() -> expectations("fan,wings,,1,,because,MEMORY,m"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("row 1");
        assertThatThrownBy(() -> expectations("fan,fuse,,0,,because,MEMORY,m"))
                .hasMessageContaining("begins at 1");
        assertThatThrownBy(() -> parts("device,nothing,,,place,because,,MEMORY,m"))
                .hasMessageContaining("row 1");
        assertThatThrownBy(() -> parts("fuse,blade,1980,1970,place,because,,MEMORY,m"))
                .hasMessageContaining("1980");
    }

    @Test
    void aPartThatThereIsNotIsRefused() {
        List<PeriodPart> parts = parts("size,*/9.99,,,never,because,,MEMORY,m");
        assertThatThrownBy(() -> new PeriodTables(catalogue, parts, List.of()))
                .hasMessageContaining("*/9.99");
    }

    private static List<Expectation> expectations(String rows) {
        return CatalogueFiles.rows(
                "expectations.csv",
                new StringReader(EXPECTED + rows),
                ExpectationFiles::expectation);
    }

    private static List<PeriodPart> parts(String rows) {
        return CatalogueFiles.rows(
                "period-parts.csv", new StringReader(PART + rows), PeriodFiles::part);
    }
}
