package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.quantity.Temperature;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;

class ScenarioJsonTest {

    private static Outcome<Scenario> read(String json) {
        return StrictJson.parse(json.getBytes(StandardCharsets.UTF_8))
                .then(node -> ScenarioJson.read(node, "/scenarios/3"));
    }

    private static List<Finding> faults(String json) {
        return ((Outcome.Rejected<Scenario>) read(json)).reasons();
    }

    @Test
    void whatIsWrittenIsReadBack() {
        Scenario scenario =
                new Scenario(
                        "frosty evening",
                        Map.of(
                                "LIGHT-SWITCH", Set.of("SIDE", "HEAD"),
                                "HEATER-SWITCH", Set.of()),
                        Engine.AT_SPEED,
                        Temperature.ofCelsius(new BigDecimal("-2.5")),
                        Temperature.ofCelsius(-10));
        assertThat(read(ScenarioJson.write(scenario).toString()))
                .isEqualTo(Outcome.accepted(scenario));
        assertThat(ScenarioJson.write(scenario).toString())
                .isEqualTo(
                        "{\"name\":\"frosty evening\",\"closed\":{\"HEATER-SWITCH\":[],"
                                + "\"LIGHT-SWITCH\":[\"HEAD\",\"SIDE\"]},\"engine\":\"at-speed\","
                                + "\"conductorsC\":-2.5,\"ambientC\":-10}");
    }

    @Test
    void withoutAnAmbientTheAirIsAsWarmAsTheConductors() {
        Scenario expected = Scenario.of("parked", Engine.OFF, Temperature.ofCelsius(30));
        assertThat(
                        read(
                                "{\"name\":\"parked\",\"closed\":{},\"engine\":\"off\",\"conductorsC\":30}"))
                .isEqualTo(Outcome.accepted(expected));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "name|7||json.wrong-type",
                "name|\" \"||json.text-length",
                "closed|[]||json.wrong-type",
                "closed|{\"K1\":\"OUT\"}|/K1|json.wrong-type",
                "closed|{\"K1\":[null]}|/K1/0|json.wrong-type",
                "closed|{\"K/1\":[\"OUT\",5]}|/K~11/1|json.wrong-type",
                "closed|{\"K1\":null}|/K1|json.wrong-type",
                "engine|\"fast\"||json.unknown-word",
                "conductorsC|\"20\"||json.wrong-type",
                "conductorsC|-274||settings.out-of-range",
                "conductorsC|200.001||settings.out-of-range",
                "conductorsC|20.0001||json.number-too-fine",
                "ambientC|1e9||settings.out-of-range"
            })
    void aWrongFieldIsNamed(String field, String value, @Nullable String under, String code) {
        String place = under == null ? "" : under;
        String json =
                """
                {"name":"n","closed":{},"engine":"off","conductorsC":20,"ambientC":10}\
                """
                        .replaceFirst(
                                "\"" + field + "\":(\"[a-z]*\"|[0-9]+|\\{\\})",
                                "\"" + field + "\":" + value);
        assertThat(faults(json))
                .extracting(finding -> finding.subject().pointer(), Finding::code)
                .containsExactly(tuple("/scenarios/3/" + field + place, code));
    }

    @Test
    void everyFaultIsToldAtOnce() {
        assertThat(faults("{\"engine\":\"slow\",\"weather\":\"wet\"}"))
                .extracting(finding -> finding.subject().pointer())
                .containsExactlyInAnyOrder(
                        "/scenarios/3/name",
                        "/scenarios/3/closed",
                        "/scenarios/3/engine",
                        "/scenarios/3/conductorsC",
                        "/scenarios/3/weather");
    }
}
