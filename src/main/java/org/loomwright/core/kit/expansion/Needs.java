package org.loomwright.core.kit.expansion;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.Need;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.loom.Loom;

import java.util.List;
import java.util.Map;

/** Whether the vehicle is what a recipe needs. */
final class Needs {

    private final Loom loom;
    private final Catalogue catalogue;

    Needs(Loom loom, Catalogue catalogue) {
        this.loom = loom;
        this.catalogue = catalogue;
    }

    List<Finding> check(Recipe recipe, Map<String, String> facts) {
        return recipe.needs().stream()
                .filter(need -> need.when().holds(facts) && !isMet(need, facts))
                .map(
                        need ->
                                Finding.fault(
                                        "kit.not-suited",
                                        Subject.of(ThingKind.VEHICLE, ""),
                                        "The kit '%s' does not suit this vehicle. %s"
                                                .formatted(recipe.name(), need.text())))
                .toList();
    }

    private boolean isMet(Need need, Map<String, String> facts) {
        return switch (need.kind()) {
            case EARTH -> need.value().equals(facts.get("vehicle.earth"));
            case VOLTS -> need.value().equals(facts.get("vehicle.volts"));
            case SERVICE ->
                    loom.devices().values().stream()
                            .anyMatch(
                                    device ->
                                            Tracing.serviceOf(device, catalogue)
                                                    .map(Service::code)
                                                    .filter(need.value()::equals)
                                                    .isPresent());
        };
    }
}
