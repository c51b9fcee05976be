package org.loomwright.core.kit;

import org.loomwright.core.catalogue.Provenance;

import java.util.List;
import java.util.Optional;

/**
 * A kit as data. See the package for how its parts speak of each other.
 *
 * @param id unique among the recipes
 * @param prefix begins the ids of its amendments, wires, nodes and segments; unique among the recipes
 * @param name what a person calls it
 * @param description what it does, in a few sentences
 * @param circuit the circuit that its wires belong to
 * @param provenance who says that it is done like this
 * @param cautions what to heed, in general words
 * @param questions what to ask, in order
 * @param finds which devices of the loom it speaks of, in order
 * @param needs what the vehicle must be like
 * @param devices what to add
 * @param feeds the feeds to find
 * @param wires the wires to add
 * @param changes what to change in the loom
 * @param reminders of what to think besides
 */
public record Recipe(
        String id,
        String prefix,
        String name,
        String description,
        String circuit,
        Provenance provenance,
        List<String> cautions,
        List<Question> questions,
        List<Found> finds,
        List<Need> needs,
        List<DevicePart> devices,
        List<FeedPart> feeds,
        List<WirePart> wires,
        List<ChangePart> changes,
        List<Reminder> reminders) {

    public Recipe {
        cautions = List.copyOf(cautions);
        questions = List.copyOf(questions);
        finds = List.copyOf(finds);
        needs = List.copyOf(needs);
        devices = List.copyOf(devices);
        feeds = List.copyOf(feeds);
        wires = List.copyOf(wires);
        changes = List.copyOf(changes);
        reminders = List.copyOf(reminders);
    }

    /** @return the question, if there is one with this id */
    public Optional<Question> findQuestion(String question) {
        return questions.stream().filter(asked -> asked.id().equals(question)).findFirst();
    }
}
