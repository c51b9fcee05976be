package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.colour.code.ColourFunction;
import org.loomwright.core.colour.code.LookAlike;
import org.loomwright.core.colour.code.SupplyColour;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.testing.TestCatalogue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The colour code: it loads, every row has a source, and a wrong row is refused with its place. */
class ColourFilesTest {

    private static final Catalogue CATALOGUE = TestCatalogue.get();

    private final ColourCode code = ColourFiles.load(CATALOGUE);

    @Test
    void theListHas98ColoursAndEveryRowASource() {
        assertThat(code.functions().stream().map(ColourFunction::colour).distinct()).hasSize(98);
        assertThat(code.functions())
                .allSatisfy(row -> assertThat(row.provenance().source()).isNotBlank());
        assertThat(code.supplies())
                .allSatisfy(row -> assertThat(row.provenance().source()).isNotBlank());
    }

    @Test
    void whatLooksAlikeIsNowhereCalledPublished() {
        assertThat(code.lookAlikes())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.provenance().status()).isEqualTo(Status.MEMORY));
    }

    @Test
    void everyBasicColourHasASupplyAndEveryFadesLikeAnother() {
        assertThat(CATALOGUE.colours())
                .allSatisfy(
                        colour -> {
                            assertThat(code.supplies())
                                    .anyMatch(it -> it.colour().letters().equals(colour.letters()));
                            assertThat(code.lookAlikes())
                                    .anyMatch(
                                            it ->
                                                    it.a().equals(colour.letters())
                                                            || it.b().equals(colour.letters()));
                        });
    }

    @Test
    void orangeIsForLaterCarsOnly() {
        assertThat(code.findBody(Supply.IGNITION_FUSED, 1954))
                .map(row -> row.colour().letters())
                .contains("G");
        assertThat(code.supplies())
                .filteredOn(row -> row.colour().letters().equals("O"))
                .extracting(SupplyColour::since)
                .containsExactly(1983);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "GN,green,purple,lamps,,feed,FOUND,C5 | N stands for 'brown', not for 'purple'",
                "GN,green,,lamps,,feed,FOUND,C5 | N stands for 'brown', not for ''",
                "GLX,green,,lamps,,feed,FOUND,C5 | a colour is one or two",
                "GN,green,brown,lamps,,sideways,FOUND,C5 | Leg.SIDEWAYS",
                "GN,green,brown,lamps,,feed,SURE,C5 | Status.SURE",
            })
    void aWrongUseIsNamed(String row, String reason) {
        assertRefused(
                "code,body,tracer,function,service,leg,status,source",
                row,
                it -> ColourFiles.function(it, CATALOGUE),
                reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "G,mains,,,FOUND,C5 | Supply.MAINS",
                "G,ignition,soon,,FOUND,C5 | soon",
                "L,ignition,,,FOUND,C5 | a colour is one or two",
            })
    void aWrongSupplyIsNamed(String row, String reason) {
        assertRefused("colour,supply,since,note,status,source", row, ColourFiles::supply, reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "G,G,faded,MEMORY,x | a colour looks like itself",
                "G,N,wet,MEMORY,x | When.WET",
            })
    void aWrongPairIsNamed(String row, String reason) {
        assertRefused("a,b,when,status,source", row, ColourFiles::lookAlike, reason);
    }

    @Test
    void tablesMustNotContradictEachOther() {
        List<LookAlike> twice = new ArrayList<>(code.lookAlikes());
        LookAlike first = twice.getFirst();
        twice.add(new LookAlike(first.b(), first.a(), first.when(), first.provenance()));
        assertThatThrownBy(
                        () -> new ColourCode(CATALOGUE, code.functions(), code.supplies(), twice))
                .hasMessageContaining("twice");

        List<SupplyColour> noGreen =
                code.supplies().stream().filter(row -> !row.colour().body().equals("G")).toList();
        assertThatThrownBy(
                        () ->
                                new ColourCode(
                                        CATALOGUE, code.functions(), noGreen, code.lookAlikes()))
                .hasMessageContaining("nothing says what G is fed from");

        List<SupplyColour> noEarth =
                code.supplies().stream().filter(row -> !row.isEarth()).toList();
        assertThatThrownBy(() -> new ColourCode(CATALOGUE, List.of(), noEarth, code.lookAlikes()))
                .hasMessageContaining("no colour goes to earth");
    }

    private static <T> void assertRefused(
            String header, String row, Function<CSVRecord, T> reading, String reason) {
        StringReader source = new StringReader(header + "\n" + row);
        assertThatThrownBy(() -> CatalogueFiles.rows("t.csv", source, reading))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("row 1 of")
                .hasMessageContaining(reason);
    }
}
