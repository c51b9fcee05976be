package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.Answer;
import org.loomwright.core.kit.Kits;
import org.loomwright.core.kit.Question;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.loom.LoomLimits;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Whether every question that matters has an answer that this loom allows. */
final class AnswerCheck {

    private final AmendedLoom base;
    private final Map<String, Answer> given;
    private final Map<String, String> facts;
    private final Map<String, Answer> answers = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    /**
     * @param facts what is known already; answers are added
     */
    AnswerCheck(AmendedLoom base, Map<String, Answer> given, Map<String, String> facts) {
        this.base = base;
        this.given = given;
        this.facts = facts;
    }

    List<Finding> check(Recipe recipe, KitBench bench) {
        List<Question> questions =
                Kits.questionsFor(recipe, base.loom(), bench.catalogue(), bench.behaviours());
        for (String id : given.keySet()) {
            if (recipe.findQuestion(id).isEmpty()) {
                add("kit.answer-unknown", id, "The kit has no question '%s'.".formatted(id));
            }
        }
        questions.stream().filter(it -> it.when().holds(facts)).forEach(this::checkOne);
        return findings;
    }

    /** The answers that count, the usual ones among them. */
    Map<String, Answer> answers() {
        return answers;
    }

    private void checkOne(Question question) {
        Answer answer = given.get(question.id());
        if (answer == null && question.optional()) {
            answer = question.usualAnswer().orElse(null);
        }
        if (answer == null) {
            if (!question.optional()) {
                add(
                        "kit.answer-missing",
                        question.id(),
                        "Question '%s' needs an answer: %s"
                                .formatted(question.id(), question.text()));
            }
            return;
        }
        String wrong = whatIsWrong(question, answer);
        if (wrong == null) {
            answers.put(question.id(), answer);
            facts.put(question.id(), answer.words());
        } else {
            add(
                    "kit.answer-impossible",
                    question.id(),
                    "The answer to '%s' %s.".formatted(question.id(), wrong));
        }
    }

    private void add(String code, String question, String text) {
        findings.add(
                Finding.fault(
                        code,
                        new Subject(ThingKind.REQUEST, question, "/answers/" + question),
                        text));
    }

    private @Nullable String whatIsWrong(Question question, Answer answer) {
        return switch (answer) {
            case Answer.Word(String value) -> whatIsWrongWithWord(question, value);
            case Answer.Amount(BigDecimal value) -> whatIsWrongWithAmount(question, value);
            case Answer.NewEnd end ->
                    question.kind() == Question.Kind.NODE
                            ? whatIsWrongWithEnd(end)
                            : "is a new end of the loom, which is not what is asked";
        };
    }

    private @Nullable String whatIsWrongWithWord(Question question, String value) {
        if (question.kind().isAmount()) {
            return "must be a number";
        }
        return question.choices().stream().anyMatch(choice -> choice.value().equals(value))
                ? null
                : "is '%s', which is not among what this loom and this kit offer".formatted(value);
    }

    private static @Nullable String whatIsWrongWithAmount(Question question, BigDecimal value) {
        if (!question.kind().isAmount()) {
            return "must be a word, not a number";
        }
        BigDecimal least = question.least();
        BigDecimal most = question.most();
        boolean isSane =
                value.signum() > 0
                        && value.scale() <= 3
                        && (least == null || value.compareTo(least) >= 0)
                        && (most == null || value.compareTo(most) <= 0);
        return isSane
                ? null
                : "is %s; it must be %s to %s with at most three decimals"
                        .formatted(
                                value.toPlainString(),
                                least == null ? "more than 0" : least.toPlainString(),
                                most == null ? "any figure" : most.toPlainString());
    }

    private @Nullable String whatIsWrongWithEnd(Answer.NewEnd end) {
        if (!end.length().isPositive() || end.length().isLongerThan(LoomLimits.LONGEST_SEGMENT)) {
            return "is a new end %s away; a branch is more than 0 mm and at most %s long"
                    .formatted(end.length(), LoomLimits.LONGEST_SEGMENT);
        }
        if (end.at() == null) {
            return base.loom().nodes().containsKey(end.from())
                    ? null
                    : "runs on from node '%s', which the loom does not have".formatted(end.from());
        }
        boolean isWhole =
                base.loom().segments().keySet().stream()
                        .anyMatch(id -> base.piece(id).recorded().id().equals(end.from()));
        return isWhole
                ? null
                : "breaks out of segment '%s', which the loom does not have as a whole"
                        .formatted(end.from());
    }
}
