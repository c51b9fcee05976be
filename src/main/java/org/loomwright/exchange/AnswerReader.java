package org.loomwright.exchange;

import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.Answer;
import org.loomwright.core.loom.LoomLimits;
import org.loomwright.core.quantity.Length;

import tools.jackson.databind.JsonNode;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads the answers to a kit's questions: one object with a field for each question. A string is a word, a number an amount, and {@code
 * {"from":"S36","atMm":210,"lengthMm":640}} a new end of the loom, without {@code atMm} one that runs on from a node.
 */
public final class AnswerReader {

    private static final int MOST = 100;

    private AnswerReader() {}

    /**
     * @param json a parsed object
     * @param pointer where it stands in the whole document
     * @return the answers by question, or every fault of form with its JSON pointer
     */
    public static Outcome<Map<String, Answer>> read(JsonNode json, String pointer) {
        if (!json.isObject() || json.size() > MOST) {
            return Outcome.rejected(
                    List.of(wrong(pointer, "must be an object of at most " + MOST + " answers")));
        }
        List<Finding> faults = new ArrayList<>();
        Map<String, Answer> answers = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> entry : json.properties()) {
            String place = pointer + "/" + entry.getKey().replace("~", "~0").replace("/", "~1");
            answer(entry.getValue(), place, faults)
                    .ifPresent(answer -> answers.put(entry.getKey(), answer));
        }
        return faults.isEmpty() ? Outcome.accepted(answers) : Outcome.rejected(faults);
    }

    private static Optional<Answer> answer(JsonNode value, String place, List<Finding> faults) {
        if (value.isString() && value.stringValue().length() <= LoomLimits.LONGEST_TEXT) {
            return Optional.of(new Answer.Word(value.stringValue()));
        }
        if (value.isNumber()) {
            return Optional.of(new Answer.Amount(value.decimalValue()));
        }
        if (value.isObject()) {
            return switch (JsonThing.read(value, place, ThingKind.REQUEST, AnswerReader::newEnd)) {
                case Outcome.Accepted<Answer>(Answer end) -> Optional.of(end);
                case Outcome.Rejected<Answer>(List<Finding> reasons) -> {
                    faults.addAll(reasons);
                    yield Optional.empty();
                }
            };
        }
        faults.add(wrong(place, "must be a word, a number or a new end of the loom"));
        return Optional.empty();
    }

    private static Answer newEnd(JsonThing json) {
        Length at =
                json.findDecimal(
                        "atMm",
                        Length::ofMillimetres,
                        "must be millimetres with at most three decimals");
        return new Answer.NewEnd(json.text("from"), at, json.length("lengthMm"));
    }

    private static Finding wrong(String place, String rule) {
        return Finding.fault(
                "json.wrong-type",
                new Subject(ThingKind.REQUEST, "", place),
                "%s %s.".formatted(place.isEmpty() ? "The document" : place, rule));
    }
}
