package org.loomwright.exchange;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.quantity.Temperature;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads and writes a state of the vehicle. Whether a loom can be in it, the simulation says. */
public final class ScenarioJson {

    private static final int LONGEST_NAME = 100;

    /** What stands in for a temperature that is missing or wrong; never used. */
    private static final Temperature HARMLESS = Temperature.ofCelsius(20);

    private ScenarioJson() {}

    /**
     * @param json a parsed scenario; without {@code ambientC} the air is as warm as the conductors
     * @param pointer where it stands in the whole document
     * @return the scenario, or every fault with its JSON pointer
     */
    public static Outcome<Scenario> read(JsonNode json, String pointer) {
        return JsonThing.read(json, pointer, ThingKind.SETTINGS, ScenarioJson::scenario);
    }

    private static Scenario scenario(JsonThing json) {
        String name = json.line("name", LONGEST_NAME);
        Map<String, Set<String>> closed = new LinkedHashMap<>();
        json.textsByName("closed", ThingKind.DEVICE)
                .forEach((device, points) -> closed.put(device, Set.copyOf(points)));
        Scenario.Engine engine = json.choice("engine", Scenario.Engine.class);
        if (!json.has("conductorsC")) {
            json.fault("json.missing-field", "conductorsC", "is missing");
        }
        Temperature conductors = temperature(json, "conductorsC");
        Temperature ambient = temperature(json, "ambientC");
        Temperature metal = conductors == null ? HARMLESS : conductors;
        return new Scenario(name, closed, engine, metal, ambient == null ? metal : ambient);
    }

    private static @Nullable Temperature temperature(JsonThing json, String field) {
        BigDecimal degrees = json.findDecimal(field, value -> value, "must be a number");
        if (degrees == null) {
            return null;
        }
        if (degrees.compareTo(Scenario.COLDEST.toCelsius()) < 0
                || degrees.compareTo(Scenario.HOTTEST.toCelsius()) > 0) {
            json.fault(
                    "settings.out-of-range",
                    field,
                    "must be %s to %s".formatted(Scenario.COLDEST, Scenario.HOTTEST));
            return null;
        }
        return json.findDecimal(field, Temperature::ofCelsius, "must have at most three decimals");
    }

    /**
     * @param scenario a state of the vehicle
     * @return it as JSON, with nothing left out and everything in order
     */
    public static ObjectNode write(Scenario scenario) {
        ObjectNode closed = JsonParts.object();
        new TreeMap<>(scenario.closed())
                .forEach(
                        (device, points) ->
                                closed.set(
                                        device,
                                        JsonParts.texts(List.copyOf(new TreeSet<>(points)))));
        ObjectNode json = JsonParts.object();
        json.put("name", scenario.name());
        json.set("closed", closed);
        json.put("engine", JsonThing.kebab(scenario.engine()));
        json.set("conductorsC", celsius(scenario.conductors()));
        json.set("ambientC", celsius(scenario.ambient()));
        return json;
    }

    private static JsonNode celsius(Temperature temperature) {
        return JsonNodeFactory.instance.numberNode(temperature.toCelsius());
    }
}
