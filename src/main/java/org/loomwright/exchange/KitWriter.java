package org.loomwright.exchange;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.kit.Answer;
import org.loomwright.core.kit.Question;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.kit.expansion.KitNote;
import org.loomwright.core.kit.expansion.KitPlan;

import tools.jackson.databind.node.ObjectNode;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;

/** Writes kits with their questions and plans as JSON. */
public final class KitWriter {

    private KitWriter() {}

    /**
     * @param recipes the kits that there are
     * @return what they are and do, without their questions
     */
    public static ObjectNode list(Collection<Recipe> recipes) {
        ObjectNode json = JsonParts.object();
        json.set("kits", JsonParts.array(recipes, KitWriter::head));
        return json;
    }

    private static ObjectNode head(Recipe recipe) {
        ObjectNode json = JsonParts.object();
        json.put("kit", recipe.id());
        json.put("name", recipe.name());
        json.put("description", recipe.description());
        OpenWriter.putProvenance(json, recipe.provenance());
        json.set("cautions", JsonParts.texts(recipe.cautions()));
        return json;
    }

    /**
     * @param recipe a kit
     * @param questions its questions with what a loom offers
     * @return both as JSON
     */
    public static ObjectNode questions(Recipe recipe, List<Question> questions) {
        ObjectNode json = head(recipe);
        json.set("questions", JsonParts.array(questions, KitWriter::question));
        return json;
    }

    private static ObjectNode question(Question question) {
        ObjectNode json = JsonParts.object();
        json.put("id", question.id());
        json.put("text", question.text());
        json.put("kind", JsonThing.kebab(question.kind()));
        ObjectNode when = JsonParts.object();
        new TreeMap<>(question.when().allowed())
                .forEach(
                        (fact, words) ->
                                when.set(fact, JsonParts.texts(words.stream().sorted().toList())));
        json.set("when", when);
        json.put("optional", question.optional());
        question.usualAnswer().ifPresent(usual -> put(json, usual));
        json.set(
                "choices",
                JsonParts.array(
                        question.choices(),
                        choice ->
                                JsonParts.object()
                                        .put("value", choice.value())
                                        .put("text", choice.text())));
        putIfAny(json, "least", question.least());
        putIfAny(json, "most", question.most());
        OpenWriter.putProvenance(json, question.provenance());
        return json;
    }

    private static void put(ObjectNode json, Answer usual) {
        switch (usual) {
            case Answer.Word(String value) -> json.put("usual", value);
            case Answer.Amount(BigDecimal value) -> json.put("usual", value);
            case Answer.NewEnd end -> json.put("usual", end.words());
        }
    }

    private static void putIfAny(ObjectNode json, String field, @Nullable BigDecimal value) {
        if (value != null) {
            json.put(field, value);
        }
    }

    /**
     * @param plan what a kit comes to
     * @return it as JSON
     */
    public static ObjectNode plan(KitPlan plan) {
        ObjectNode json = JsonParts.object();
        json.put("kit", plan.recipe());
        json.set("amendments", AmendmentWriter.write(plan.amendments()));
        json.set("notes", JsonParts.array(plan.notes(), KitWriter::note));
        return json;
    }

    private static ObjectNode note(KitNote note) {
        ObjectNode json = JsonParts.object();
        json.put("kind", JsonThing.kebab(note.about().kind()));
        json.put("id", note.about().id());
        json.put("rule", note.rule());
        json.put("text", note.text());
        OpenWriter.putProvenance(json, note.provenance());
        return json;
    }
}
