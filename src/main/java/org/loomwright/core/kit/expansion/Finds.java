package org.loomwright.core.kit.expansion;

import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.Answer;
import org.loomwright.core.kit.Found;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.kit.When;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Finds the devices that a recipe speaks of. */
final class Finds {

    private final Recipe recipe;
    private final Loom loom;
    private final KitBench bench;
    private final Map<String, List<Device>> found = new HashMap<>();

    Finds(Recipe recipe, Loom loom, KitBench bench) {
        this.recipe = recipe;
        this.loom = loom;
        this.bench = bench;
    }

    /** Looks for what does not hang on an answer and notes as a fact whether it is there. */
    void lookFirst(Map<String, String> facts) {
        for (Found wanted : recipe.finds()) {
            if (wanted.when().equals(When.ALWAYS) && wanted.answer() == null) {
                look(wanted, Map.of(), facts);
            }
        }
    }

    /** Looks for the rest. */
    List<Finding> look(Map<String, Answer> answers, Map<String, String> facts) {
        List<Finding> findings = new ArrayList<>();
        for (Found wanted : recipe.finds()) {
            if (!wanted.when().holds(facts)) {
                continue;
            }
            if (!found.containsKey(wanted.key())) {
                look(wanted, answers, facts);
            }
            if (wanted.needed() && all(wanted.key()).isEmpty()) {
                findings.add(
                        Finding.fault(
                                "kit.not-found",
                                Subject.of(ThingKind.LOOM, ""),
                                "The kit '%s' needs %s, and this loom has none."
                                        .formatted(recipe.name(), wanted.text())));
            }
        }
        return findings;
    }

    private void look(Found wanted, Map<String, Answer> answers, Map<String, String> facts) {
        List<Device> devices =
                candidates(wanted, answers)
                        .filter(device -> wanted.selector().fits(device, bench.catalogue()))
                        .distinct()
                        .toList();
        boolean one = !wanted.all() && !devices.isEmpty();
        found.put(wanted.key(), one ? List.of(devices.getFirst()) : devices);
        facts.put("found." + wanted.key(), devices.isEmpty() ? "no" : "yes");
    }

    private Stream<Device> candidates(Found wanted, Map<String, Answer> answers) {
        if (wanted.answer() != null) {
            Answer answer = answers.get(wanted.answer());
            return answer == null ? Stream.empty() : answered(answer.words());
        }
        return wanted.wiredTo() == null
                ? loom.devices().values().stream()
                : wiredTo(wanted.wiredTo());
    }

    /** The answered device, or the loads of the answered wire. */
    private Stream<Device> answered(String id) {
        if (loom.devices().containsKey(id)) {
            return Stream.of(loom.getDevice(id));
        }
        return Tracing.of(loom, bench.catalogue(), bench.behaviours()).get(id).loads().stream()
                .map(loom::getDevice);
    }

    private Stream<Device> wiredTo(String place) {
        int slash = place.indexOf('/');
        String point = place.substring(slash + 1);
        return all(place.substring(0, slash)).stream()
                .map(device -> device.id() + "/" + point)
                .flatMap(this::neighbours);
    }

    private Stream<Device> neighbours(String place) {
        List<Device> neighbours = new ArrayList<>();
        for (Wire wire : loom.wires().values()) {
            if (wire.a().place().equals(place)) {
                neighbours.add(loom.getDevice(wire.b().device()));
            } else if (wire.b().place().equals(place)) {
                neighbours.add(loom.getDevice(wire.a().device()));
            }
        }
        return neighbours.stream();
    }

    /** The devices of that key, none where it was not found or not looked for. */
    List<Device> all(String key) {
        return found.getOrDefault(key, List.of());
    }
}
