package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.bundle.LayFactor;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.geometry.packing.Effort;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.routing.Allowances;
import org.loomwright.core.routing.TakeUp;

import java.nio.charset.StandardCharsets;
import java.util.List;

class SettingsJsonTest {

    private static Outcome<AnalysisSettings> read(String json) {
        return StrictJson.parse(json.getBytes(StandardCharsets.UTF_8))
                .then(node -> SettingsJson.read(node, "/settings"));
    }

    @Test
    void whatIsLeftOutKeepsItsUsualValue() {
        assertThat(read("{}")).isEqualTo(Outcome.accepted(AnalysisSettings.USUAL));
    }

    @Test
    void whatIsWrittenIsReadBack() {
        AnalysisSettings settings =
                new AnalysisSettings(
                        new Allowances(
                                new TakeUp.FromLay(new Ratio(12_500_000)),
                                0,
                                Length.ofMillimetres(5)),
                        new LayFactor(new Ratio(1_100_000)),
                        Effort.THOROUGH);
        assertThat(read(SettingsJson.write(settings).toString()))
                .isEqualTo(Outcome.accepted(settings));
        assertThat(read(SettingsJson.write(AnalysisSettings.USUAL).toString()))
                .isEqualTo(Outcome.accepted(AnalysisSettings.USUAL));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"reTerminations\": 11}|/settings/reTerminations|settings.out-of-range",
                "{\"reTerminations\": -1}|/settings/reTerminations|settings.out-of-range",
                "{\"cutStepMm\": 0}|/settings/cutStepMm|settings.out-of-range",
                "{\"cutStepMm\": 1001}|/settings/cutStepMm|settings.out-of-range",
                "{\"layFactor\": 0.99}|/settings/layFactor|settings.out-of-range",
                "{\"layFactor\": \"1\"}|/settings/layFactor|json.wrong-type",
                "{\"packing\": \"hasty\"}|/settings/packing|json.unknown-word",
                "{\"takeUp\": {\"kind\": \"given\"}}|/settings/takeUp/ratio|json.missing-field",
                "{\"takeUp\": {\"kind\": \"given\", \"ratio\":"
                        + " 0.6}}|/settings/takeUp/ratio|settings.out-of-range",
                "{\"takeUp\": {\"kind\": \"from-lay\", \"layMultiple\":"
                        + " 0.5}}|/settings/takeUp/layMultiple|settings.out-of-range",
                "{\"take\": 1}|/settings/take|json.unknown-field"
            })
    void whatMakesNoSenseIsNamedWithItsPlace(String json, String pointer, String code) {
        assertThat(read(json))
                .isInstanceOfSatisfying(
                        Outcome.Rejected.class,
                        rejected -> {
                            @SuppressWarnings("unchecked")
                            List<Finding> reasons = rejected.reasons();
                            assertThat(reasons)
                                    .singleElement()
                                    .satisfies(
                                            finding -> {
                                                assertThat(finding.code()).isEqualTo(code);
                                                assertThat(finding.subject().pointer())
                                                        .isEqualTo(pointer);
                                            });
                        });
    }
}
