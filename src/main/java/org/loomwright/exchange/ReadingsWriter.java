package org.loomwright.exchange;

import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.simulation.Readings.WireReading;
import org.loomwright.core.electrical.simulation.Scenario;

import tools.jackson.databind.node.ObjectNode;

import java.util.List;
import java.util.TreeSet;

/** Writes what a meter would show as JSON. */
public final class ReadingsWriter {

    private ReadingsWriter() {}

    /**
     * @param readings readings of one scenario
     * @return them as JSON
     */
    public static ObjectNode write(Readings readings) {
        ObjectNode json = JsonParts.object();
        json.set("scenario", ScenarioJson.write(readings.scenario()));
        json.put("drawnA", readings.drawn().toAmperes());
        json.set("pulledIn", JsonParts.texts(new TreeSet<>(readings.pulledIn())));
        json.set("wires", JsonParts.array(readings.wires(), ReadingsWriter::wire));
        json.set("elements", JsonParts.array(readings.elements(), ReadingsWriter::element));
        ObjectNode points = JsonParts.object();
        readings.points().forEach((place, voltage) -> points.put(place, voltage.toVolts()));
        json.set("pointsV", points);
        json.set("findings", AnalysisWriter.findings(readings.findings()));
        return json;
    }

    /**
     * @param scenarios the states in which a loom is looked at
     * @return them as JSON
     */
    public static ObjectNode scenarios(List<Scenario> scenarios) {
        ObjectNode json = JsonParts.object();
        json.set("scenarios", JsonParts.array(scenarios, ScenarioJson::write));
        return json;
    }

    private static ObjectNode wire(WireReading wire) {
        return JsonParts.object()
                .put("wire", wire.wire())
                .put("currentA", wire.current().toAmperes())
                .put("dropV", wire.drop().toVolts());
    }

    private static ObjectNode element(ElementReading element) {
        return JsonParts.object()
                .put("device", element.device())
                .put("element", JsonThing.kebab(element.element()))
                .put("from", element.from())
                .put("to", element.to())
                .put("currentA", element.current().toAmperes())
                .put("acrossV", element.across().toVolts());
    }
}
