package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.catalogue.CatalogueOverride;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.catalogue.TerminalType;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.LinearResistance;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.exchange.CatalogueTables.CatalogueTable;
import org.loomwright.testing.TestCatalogue;

import tools.jackson.databind.JsonNode;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** A workshop's own figures: where they are allowed, what becomes of the tables, and every reason why not. */
class OverridesTest {

    private static final CatalogueOverride REEL =
            new CatalogueOverride(
                    "conductor-sizes",
                    "14/.012",
                    "outsideDiameterMm",
                    "2.6",
                    "measured on our reel");

    private static Outcome<AnalysisSettings> read(String overrides) {
        return StrictJson.parse(
                        "{\"overrides\":[%s]}"
                                .formatted(overrides)
                                .getBytes(StandardCharsets.UTF_8))
                .then(node -> SettingsJson.read(node, "/settings"));
    }

    private static String json(CatalogueOverride override) {
        return OverrideJson.write(List.of(override)).get(0).toString();
    }

    private static List<String> faults(String overrides) {
        return switch (read(overrides)) {
            case Outcome.Accepted<AnalysisSettings> accepted -> List.of();
            case Outcome.Rejected<AnalysisSettings>(List<Finding> reasons) ->
                    reasons.stream()
                            .map(reason -> reason.code() + " " + reason.subject().pointer())
                            .toList();
        };
    }

    @Test
    void settingsWithOwnFiguresAreReadBackInOneOrder() {
        CatalogueOverride wall =
                new CatalogueOverride("coverings", "pvc-tube", "wallMm", "0.75", "callipers");
        AnalysisSettings settings =
                read(json(REEL) + "," + json(wall)).orElseThrow(OverridesTest::bad);

        assertThat(settings.overrides()).containsExactly(REEL, wall);
        assertThat(read(json(wall) + "," + json(REEL))).isEqualTo(Outcome.accepted(settings));
        assertThat(
                        SettingsJson.read(SettingsJson.write(settings), "")
                                .orElseThrow(OverridesTest::bad))
                .isEqualTo(settings);
    }

    private static IllegalStateException bad(List<Finding> reasons) {
        return new IllegalStateException(reasons.toString());
    }

    @Test
    void settingsWithoutOwnFiguresAreWrittenAsTheyAlwaysWere() {
        assertThat(SettingsJson.write(AnalysisSettings.USUAL).has("overrides")).isFalse();
    }

    @Test
    void onlyTheOverriddenFigureChangesAndSaysWhoSetIt() {
        ConductorSize printed = TestCatalogue.get().getSize("14/.012");
        ConductorSize own = TradeTables.load(List.of(REEL)).catalogue().getSize("14/.012");

        assertThat(own)
                .isEqualTo(
                        new ConductorSize(
                                "14/.012",
                                printed.metal(),
                                Length.ofMillimetres(new BigDecimal("2.6")),
                                printed.rating(),
                                new Provenance(Status.WORKSHOP, "measured on our reel"),
                                printed.ratingProvenance()));
        assertThat(printed.outsideDiameter()).isNotEqualTo(own.outsideDiameter());
    }

    @Test
    void everyOtherRowStaysAsItIsPrinted() {
        TradeTables own = TradeTables.load(List.of(REEL));
        List<ConductorSize> others =
                own.catalogue().sizes().stream()
                        .filter(size -> !size.designation().equals("14/.012"))
                        .toList();

        assertThat(TestCatalogue.get().sizes()).containsAll(others).hasSize(others.size() + 1);
        assertThat(own.catalogue().terminals()).isEqualTo(TestCatalogue.get().terminals());
        assertThat(own.catalogue().services()).isEqualTo(TestCatalogue.get().services());
        assertThat(own.electrical().resistances())
                .isEqualTo(TestCatalogue.electrical().resistances());
    }

    @Test
    void whereOneSourceSpeaksForSeveralFiguresTheRestIsTold() {
        CatalogueOverride strip =
                new CatalogueOverride("terminals", "bullet-4.7", "stripMm", "6", "our crimper");
        TerminalType printed = TestCatalogue.get().getTerminal("bullet-4.7");
        TerminalType own = TradeTables.load(List.of(strip)).catalogue().getTerminal("bullet-4.7");

        assertThat(own.strip()).isEqualTo(Length.ofMillimetres(6));
        assertThat(own.renewal()).isEqualTo(printed.renewal());
        assertThat(own.provenance().status()).isEqualTo(Status.WORKSHOP);
        assertThat(own.provenance().source())
                .isEqualTo("stripMm our crimper; the rest from memory: common practice, no source");
    }

    @Test
    void theTablesAboutCurrentTakeTheSameFigures() {
        CatalogueOverride resistance =
                new CatalogueOverride(
                        "conductor-resistances",
                        "14/0.25",
                        "resistanceMilliohmPerM",
                        "27",
                        "bridge");
        CatalogueOverride load =
                new CatalogueOverride("current-rules", "fuse-load", "value", "0.75", "house rule");
        CatalogueOverride battery =
                new CatalogueOverride(
                        "electrical-settings", "battery-resistance", "value", "8", "load tester");
        TradeTables own = TradeTables.load(List.of(resistance, load, battery));
        Resistance eight = Resistance.ofNanoohms(8_000_000);

        assertThat(own.electrical().getResistance("14/0.25").at20())
                .isEqualTo(LinearResistance.ofMilliohmsPerMetre(BigDecimal.valueOf(27)));
        assertThat(own.settings().batteryResistance()).isEqualTo(eight);
        assertThat(own.rules().fuseLoad().value()).isEqualTo(Ratio.of(new BigDecimal("0.75")));
        assertThat(own.rules().fuseLoad().provenance())
                .isEqualTo(new Provenance(Status.WORKSHOP, "house rule"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "colours|N|swatch|1|override-table-unknown|/table",
                "nothing|N|swatch|1|override-table-unknown|/table",
                "conductor-sizes|14/.013|outsideDiameterMm|2.6|override-row-unknown|/row",
                "conductor-sizes|14/.012|metalMm2|1|override-column-unknown|/column",
                "conductor-sizes|14/.012|diameterStatus|1|override-column-unknown|/column",
                "conductor-sizes|14/0.30|ratingA|9|override-published|/column",
                "conductor-resistances|14/0.30|resistanceMilliohmPerM|18|override-published|/column",
                "fuses|blade 15|continuousA|14|override-published|/column",
                "fuses|blade 15|blowA|30|override-column-unknown|/column",
                "relays|make-30|coilMostA|0.3|override-published|/column",
                "typical-loads|Side lamp|low|5|override-published|/column",
                "terminals|screw-end|mostMm2|5|override-column-unknown|/column",
                "terminals|ring-4|mostMm2|0.3|override-value|/value",
                "electrical-settings|battery-voltage|value|12.600001|override-value|/value",
                "current-rules|fuse-within-battery|value|1830.0001|override-published|/column",
                "electrical-settings|relay-coil|value|0.2|override-published|/column",
                "conductor-sizes|14/.012|outsideDiameterMm|-2.6|override-value|/value",
                "conductor-sizes|14/.012|outsideDiameterMm|2,6|override-value|/value",
                "conductor-sizes|14/.012|outsideDiameterMm|thick|override-value|/value",
                "conductor-sizes|14/.012|outsideDiameterMm|1e9|override-value|/value",
                "conductor-sizes|14/.012|outsideDiameterMm|0|override-value|/value",
                "conductor-sizes|14/.012|outsideDiameterMm|270|override-value|/value",
                "conductor-sizes|14/.012|outsideDiameterMm|2.6001|override-value|/value",
                "conductor-resistances|14/0.25|resistanceMilliohmPerM|40|override-value|/value",
                "coverings|none|wallMm|1|override-value|/value"
            })
    void whatCannotStandIsNamedWithItsPlace(
            String table, String row, String column, String value, String code, String place) {
        CatalogueOverride override = new CatalogueOverride(table, row, column, value, "because");

        assertThat(faults(json(override)))
                .containsExactly("settings.%s /settings/overrides/0%s".formatted(code, place));
    }

    /** A dynamo gives nothing at idle, from memory; no covering is no thickness, by definition. */
    @Test
    void whatIsRecalledAsNothingMayBeSomething() {
        CatalogueOverride idle =
                new CatalogueOverride("electrical-settings", "dynamo-idle", "value", "2", "bench");

        assertThat(faults(json(idle))).isEmpty();
    }

    @Test
    void aFigureIsSetOnce() {
        assertThat(faults(json(REEL) + "," + json(REEL)))
                .containsExactly("settings.override-twice /settings/overrides/1");
    }

    @Test
    void allFaultsAreToldTogether() {
        String unknown =
                json(new CatalogueOverride("terminals", "spoon", "weight", "1", "because"));
        String mute = json(new CatalogueOverride("terminals", "ring-5", "stripMm", "1", " "));

        assertThat(faults(unknown + "," + mute + ",{\"table\":\"fuses\",\"when\":1}"))
                .containsExactlyInAnyOrder(
                        "settings.override-row-unknown /settings/overrides/0/row",
                        "settings.override-column-unknown /settings/overrides/0/column",
                        "json.text-length /settings/overrides/1/note",
                        "json.missing-field /settings/overrides/2/row",
                        "json.missing-field /settings/overrides/2/column",
                        "json.missing-field /settings/overrides/2/value",
                        "json.missing-field /settings/overrides/2/note",
                        "json.unknown-field /settings/overrides/2/when");
    }

    @Test
    void twoFiguresThatOnlyStandTogetherAreTakenTogetherInAnyOrder() {
        String limit =
                json(new CatalogueOverride("drop-limits", "starting", "limitPercent", "6", "a"));
        String aim = json(new CatalogueOverride("drop-limits", "starting", "aimPercent", "5", "b"));

        assertThat(faults(limit + "," + aim)).isEmpty();
        assertThat(faults(aim + "," + limit)).isEmpty();
        assertThat(faults(aim))
                .containsExactly("settings.override-value /settings/overrides/0/value");
    }

    @Test
    void theSchemaNamesTheSameTables() {
        JsonNode schema = DemoFiles.json("/shared/api-bodies.schema.json");

        assertThat(schema.at("/$defs/Override/properties/table/enum"))
                .extracting(JsonNode::stringValue)
                .containsExactlyElementsOf(
                        Stream.of(FigureTable.values()).map(FigureTable::table).toList());
    }

    @ParameterizedTest
    @EnumSource(FigureTable.class)
    void everyTableWithFiguresHasThoseColumnsAndRowsOfDifferentNames(FigureTable table) {
        CatalogueTable printed = CatalogueTables.find(table.table()).orElseThrow();

        assertThat(table.figures())
                .allSatisfy(
                        figure ->
                                assertThat(printed.columns())
                                        .contains(
                                                figure.column(), figure.status(), figure.source()));
        assertThat(printed.rows().stream().map(table::nameOf).toList())
                .doesNotHaveDuplicates()
                .allSatisfy(name -> assertThat(name).isNotBlank());
    }
}
