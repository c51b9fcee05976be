package org.loomwright.core.kit;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Loom;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every recipe there is. Immutable and thread-safe. */
public final class Kits {

    private final Map<String, Recipe> recipes = new LinkedHashMap<>();

    /**
     * @param recipes the recipes, in the order that people see them
     * @throws IllegalArgumentException if two have the same id or the same prefix
     */
    public Kits(List<Recipe> recipes) {
        for (Recipe recipe : recipes) {
            boolean isTaken =
                    this.recipes.values().stream()
                            .anyMatch(other -> other.prefix().equals(recipe.prefix()));
            if (isTaken || this.recipes.put(recipe.id(), recipe) != null) {
                throw new IllegalArgumentException(
                        "recipe %s, prefix %s, is there twice"
                                .formatted(recipe.id(), recipe.prefix()));
            }
        }
    }

    /** @return every recipe, in the order that people see them */
    public List<Recipe> all() {
        return List.copyOf(recipes.values());
    }

    /** @return the recipe, or that there is none */
    public Outcome<Recipe> find(String id) {
        Recipe recipe = recipes.get(id);
        return recipe != null
                ? Outcome.accepted(recipe)
                : Outcome.rejected(
                        List.of(
                                Finding.fault(
                                        "kit.unknown",
                                        new Subject(ThingKind.REQUEST, id, "/kit"),
                                        "There is no kit '%s'. Kits are: %s."
                                                .formatted(
                                                        id, String.join(", ", recipes.keySet())))));
    }

    /**
     * The questions of a recipe with what this loom offers: for a node, a device or a wire all that may be answered, the likeliest first,
     * and the usual answer. Questions that other answers make needless are among them with their conditions.
     *
     * @param recipe the recipe
     * @param loom the loom that the kit is for
     * @return its questions, in order
     */
    public static List<Question> questionsFor(
            Recipe recipe, Loom loom, Catalogue catalogue, Behaviours behaviours) {
        return new LoomQuestions(loom, catalogue, behaviours).of(recipe);
    }

    /** @return the usual answers to such questions; those that have none are missing */
    public static Map<String, Answer> usualAnswers(List<Question> questions) {
        Map<String, Answer> answers = new LinkedHashMap<>();
        for (Question question : questions) {
            question.usualAnswer().ifPresent(answer -> answers.put(question.id(), answer));
        }
        return answers;
    }
}
