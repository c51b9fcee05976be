package org.loomwright.exchange;

import org.loomwright.core.loom.CustomColour;
import org.loomwright.core.loom.Departure;
import org.loomwright.core.loom.EndToEnd;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;

import tools.jackson.databind.node.ObjectNode;

/**
 * Writes a loom document as JSON, the inverse of {@link LoomReader}: lists are always written, what is absent is left out, and so
 * are own colours where there are none, so that documents from before there were any keep their hash. The
 * document is written in the order of its ids, so equal looms give equal JSON.
 */
public final class LoomWriter {

    private LoomWriter() {}

    /**
     * @param document a document
     * @return it as JSON
     */
    public static ObjectNode write(LoomDocument document) {
        LoomDocument ordered = document.ordered();
        ObjectNode json = JsonParts.object();
        json.put("formatVersion", LoomReader.FORMAT_VERSION);
        json.put("name", ordered.name());
        json.set("vehicle", vehicle(ordered.vehicle()));
        json.put("datum", ordered.datum());
        json.set("nodes", JsonParts.array(ordered.nodes(), LoomWriter::node));
        json.set("segments", JsonParts.array(ordered.segments(), LoomWriter::segment));
        json.set("devices", JsonParts.array(ordered.devices(), DeviceJson::write));
        json.set("wires", JsonParts.array(ordered.wires(), LoomWriter::wire));
        json.set("checks", JsonParts.array(ordered.checks(), LoomWriter::check));
        if (!ordered.customColours().isEmpty()) {
            json.set(
                    "customColours",
                    JsonParts.array(ordered.customColours(), LoomWriter::customColour));
        }
        return json;
    }

    private static ObjectNode vehicle(VehicleSheet vehicle) {
        ObjectNode json = JsonParts.object();
        json.put("name", vehicle.name());
        json.put("year", vehicle.year());
        json.put("hand", JsonThing.kebab(vehicle.hand()));
        json.put("earth", JsonThing.kebab(vehicle.earth()));
        json.put("systemVoltageV", vehicle.system().toVolts());
        json.set("notStandard", JsonParts.texts(vehicle.notStandard()));
        return json;
    }

    static ObjectNode node(Node node) {
        return JsonParts.object().put("id", node.id()).put("name", node.name());
    }

    static ObjectNode segment(Segment segment) {
        ObjectNode json = JsonParts.object();
        json.put("id", segment.id());
        json.put("from", segment.from());
        json.put("to", segment.to());
        json.set("lengthMm", JsonParts.millimetres(segment.length()));
        json.set("readingsMm", JsonParts.array(segment.readings(), JsonParts::millimetres));
        Departure leaves = segment.leaves();
        if (leaves != null) {
            json.set(
                    "leaves",
                    JsonParts.object()
                            .put("clock", leaves.clock())
                            .put("angleDegrees", leaves.angleDegrees()));
        }
        json.put("bendDegrees", segment.bendDegrees());
        json.set("finish", finish(segment.finish()));
        json.set("openings", JsonParts.array(segment.openings(), LoomWriter::opening));
        return json;
    }

    static ObjectNode finish(Finish finish) {
        ObjectNode json = JsonParts.object();
        json.put("covering", finish.covering());
        if (finish.baseYarn() != null) {
            json.put("baseYarn", finish.baseYarn());
        }
        json.set("tracers", JsonParts.texts(finish.tracers()));
        if (finish.picksPer25Mm() != null) {
            json.put("picksPer25Mm", finish.picksPer25Mm());
        }
        json.put("lacquerCoats", finish.lacquerCoats());
        json.set(
                "evidence",
                JsonParts.object()
                        .put("kind", JsonThing.kebab(finish.evidence().kind()))
                        .put("note", finish.evidence().note()));
        return json;
    }

    static ObjectNode opening(Opening opening) {
        ObjectNode json = JsonParts.object();
        json.put("id", opening.id());
        json.put("name", opening.name());
        json.put("kind", JsonThing.kebab(opening.kind()));
        json.set("positionMm", JsonParts.millimetres(opening.position()));
        json.set("clearDiameterMm", JsonParts.millimetres(opening.clearDiameter()));
        json.put("passes", JsonThing.kebab(opening.passes()));
        return json;
    }

    static ObjectNode wire(Wire wire) {
        ObjectNode json = JsonParts.object();
        json.put("id", wire.id());
        json.put("circuit", wire.circuit());
        json.put("colour", wire.colour().letters());
        json.put("size", wire.size());
        json.set("a", wireEnd(wire.a()));
        json.set("b", wireEnd(wire.b()));
        json.put("condition", JsonThing.kebab(wire.condition()));
        return json;
    }

    static ObjectNode wireEnd(WireEnd end) {
        ObjectNode json = JsonParts.object();
        json.put("device", end.device());
        json.put("point", end.point());
        json.put("terminal", end.terminal());
        if (end.fitted() != null) {
            json.put("fitted", JsonThing.kebab(end.fitted()));
        }
        return json;
    }

    private static ObjectNode customColour(CustomColour colour) {
        return JsonParts.object()
                .put("letters", colour.letters())
                .put("name", colour.name())
                .put("swatch", colour.swatch());
    }

    private static ObjectNode check(EndToEnd check) {
        ObjectNode json = JsonParts.object();
        json.put("id", check.id());
        json.put("from", check.from());
        json.put("to", check.to());
        json.set("measuredMm", JsonParts.millimetres(check.measured()));
        return json;
    }
}
