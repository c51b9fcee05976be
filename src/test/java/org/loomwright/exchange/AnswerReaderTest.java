package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.kit.Answer;
import org.loomwright.core.quantity.Length;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

class AnswerReaderTest {

    private static Outcome<Map<String, Answer>> read(String json) {
        return StrictJson.parse(json.getBytes(StandardCharsets.UTF_8))
                .then(node -> AnswerReader.read(node, "/answers"));
    }

    @Test
    void wordsAmountsAndNewEndsAreRead() {
        Outcome<Map<String, Answer>> read =
                read(
                        """
                        {"lamps":"pair","watts":21.5,
                         "lamp-at":{"from":"S36","atMm":210.5,"lengthMm":640},
                         "switch-at":{"from":"N10","lengthMm":180}}
                        """);
        assertThat(read)
                .isEqualTo(
                        Outcome.accepted(
                                Map.of(
                                        "lamps",
                                        new Answer.Word("pair"),
                                        "watts",
                                        new Answer.Amount(new BigDecimal("21.5")),
                                        "lamp-at",
                                        new Answer.NewEnd(
                                                "S36",
                                                Length.ofMicrometres(210_500),
                                                Length.ofMillimetres(640)),
                                        "switch-at",
                                        new Answer.NewEnd(
                                                "N10", null, Length.ofMillimetres(180)))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[]|/answers",
                "{\"lamps\":true}|/answers/lamps",
                "{\"lamps\":null}|/answers/lamps",
                "{\"a/b\":[]}|/answers/a~1b",
                "{\"lamp-at\":{\"from\":\"N1\"}}|/answers/lamp-at/lengthMm",
                "{\"lamp-at\":{\"from\":\"N1\",\"lengthMm\":1,\"name\":\"x\"}}|/answers/lamp-at/name",
                "{\"lamp-at\":{\"from\":\"N1\",\"lengthMm\":1.00001}}|/answers/lamp-at/lengthMm",
            })
    void whatIsNoAnswerIsToldWithItsPlace(String json, String pointer) {
        List<Finding> reasons =
                switch (read(json)) {
                    case Outcome.Accepted<Map<String, Answer>>(Map<String, Answer> answers) ->
                            List.of();
                    case Outcome.Rejected<Map<String, Answer>>(List<Finding> rejected) -> rejected;
                };
        assertThat(reasons).extracting(it -> it.subject().pointer()).containsExactly(pointer);
    }
}
