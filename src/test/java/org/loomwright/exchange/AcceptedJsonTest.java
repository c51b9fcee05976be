package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.finding.AcceptedFinding;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;

import java.nio.charset.StandardCharsets;
import java.util.List;

class AcceptedJsonTest {

    private static final AcceptedFinding DYNAMO =
            new AcceptedFinding(
                    "electrical.charge-negative",
                    ThingKind.DEVICE,
                    "DYNAMO",
                    "Summer car; it never runs at night.");

    private static Outcome<List<AcceptedFinding>> read(String json) {
        return StrictJson.parse(json.getBytes(StandardCharsets.UTF_8))
                .then(node -> AcceptedJson.read(node, "/accepted"));
    }

    @Test
    void whatIsWrittenIsReadBack() {
        assertThat(read(AcceptedJson.write(List.of(DYNAMO)).toString()))
                .isEqualTo(Outcome.accepted(List.of(DYNAMO)));
        assertThat(read("[]")).isEqualTo(Outcome.accepted(List.of()));
    }

    @Test
    void aFindingIsAcceptedByRuleAndThing() {
        assertThat(DYNAMO.isAbout(finding("electrical.charge-negative", "DYNAMO"))).isTrue();
        assertThat(DYNAMO.isAbout(finding("electrical.charge-negative", "BATTERY"))).isFalse();
        assertThat(DYNAMO.isAbout(finding("electrical.no-feed", "DYNAMO"))).isFalse();
    }

    private static Finding finding(String code, String device) {
        return Finding.warning(code, Subject.of(ThingKind.DEVICE, device), "text");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{}|/accepted|json.wrong-type",
                "[{}]|/accepted/0/code|json.missing-field",
                "[{\"code\":\"a\",\"kind\":\"thing\",\"id\":\"\",\"reason\":\"r\"}]|/accepted/0/kind|json.unknown-word",
                "[{\"code\":\"a\",\"kind\":\"wire\",\"id\":\"\",\"reason\":\"\"}]|/accepted/0/reason|json.text-length",
                "[{\"code\":\"a\",\"kind\":\"wire\",\"id\":\"\",\"reason\":\"r\",\"x\":1}]|/accepted/0/x|json.unknown-field",
                "[{\"code\":\"a\",\"kind\":\"wire\",\"id\":\"\",\"reason\":\"r\"},{\"code\":\"a\",\"kind\":\"wire\",\"id\":\"\",\"reason\":\"s\"}]|/accepted/1/code|specification.accepted-twice",
            })
    void namesWhatIsWrongAndWhere(String json, String pointer, String code) {
        assertThat(read(json))
                .isInstanceOfSatisfying(
                        Outcome.Rejected.class,
                        rejected ->
                                assertThat(((Outcome.Rejected<?>) rejected).reasons())
                                        .anySatisfy(
                                                reason -> {
                                                    assertThat(reason.code()).isEqualTo(code);
                                                    assertThat(reason.subject().pointer())
                                                            .isEqualTo(pointer);
                                                }));
    }
}
