package org.loomwright.exchange;

import org.loomwright.core.amendment.Amendment;

import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

import java.util.List;

/** Writes amendments as JSON, the inverse of {@link AmendmentReader}. */
public final class AmendmentWriter {

    private AmendmentWriter() {}

    /**
     * @param amendments amendments in their order
     * @return them as a JSON array
     */
    public static ArrayNode write(List<Amendment> amendments) {
        return JsonParts.array(amendments, AmendmentWriter::write);
    }

    private static ObjectNode write(Amendment amendment) {
        ObjectNode json = JsonParts.object();
        json.put("id", amendment.id());
        json.put("kind", JsonThing.kebab(kind(amendment)));
        json.put("reason", amendment.reason());
        writeFields(amendment, json);
        return json;
    }

    private static AmendmentReader.Kind kind(Amendment amendment) {
        return switch (amendment) {
            case Amendment.AddWire a -> AmendmentReader.Kind.ADD_WIRE;
            case Amendment.RemoveWire a -> AmendmentReader.Kind.REMOVE_WIRE;
            case Amendment.ReplaceWire a -> AmendmentReader.Kind.REPLACE_WIRE;
            case Amendment.MoveWireEnd a -> AmendmentReader.Kind.MOVE_WIRE_END;
            case Amendment.ChangeTerminal a -> AmendmentReader.Kind.CHANGE_TERMINAL;
            case Amendment.BreakOutBranch a -> AmendmentReader.Kind.BREAK_OUT_BRANCH;
            case Amendment.ExtendBranch a -> AmendmentReader.Kind.EXTEND_BRANCH;
            case Amendment.ChangeLength a -> AmendmentReader.Kind.CHANGE_LENGTH;
            case Amendment.RemoveBranch a -> AmendmentReader.Kind.REMOVE_BRANCH;
            case Amendment.AddDevice a -> AmendmentReader.Kind.ADD_DEVICE;
            case Amendment.RemoveDevice a -> AmendmentReader.Kind.REMOVE_DEVICE;
            case Amendment.ChangeDevice a -> AmendmentReader.Kind.CHANGE_DEVICE;
            case Amendment.ChangeVehicle a -> AmendmentReader.Kind.CHANGE_VEHICLE;
            case Amendment.ChangeCovering a -> AmendmentReader.Kind.CHANGE_COVERING;
            case Amendment.AddOpening a -> AmendmentReader.Kind.ADD_OPENING;
            case Amendment.RemoveOpening a -> AmendmentReader.Kind.REMOVE_OPENING;
        };
    }

    private static void writeFields(Amendment amendment, ObjectNode json) {
        switch (amendment) {
            case Amendment.AddWire a -> json.set("wire", LoomWriter.wire(a.wire()));
            case Amendment.RemoveWire a -> json.put("wire", a.wire());
            case Amendment.ReplaceWire a ->
                    json.put("wire", a.wire())
                            .put("colour", a.colour().letters())
                            .put("size", a.size());
            case Amendment.MoveWireEnd a ->
                    json.put("wire", a.wire())
                            .put("side", JsonThing.kebab(a.side()))
                            .set("to", LoomWriter.wireEnd(a.to()));
            case Amendment.ChangeTerminal a ->
                    json.put("wire", a.wire())
                            .put("side", JsonThing.kebab(a.side()))
                            .put("terminal", a.terminal());
            case Amendment.BreakOutBranch a -> writeBreakOut(a, json);
            case Amendment.ExtendBranch a -> {
                json.set("branch", LoomWriter.segment(a.branch()));
                json.set("end", LoomWriter.node(a.end()));
            }
            case Amendment.ChangeLength a ->
                    json.put("segment", a.segment())
                            .set("lengthMm", JsonParts.millimetres(a.length()));
            case Amendment.RemoveBranch a -> json.put("segment", a.segment());
            case Amendment.AddDevice a -> json.set("device", DeviceJson.write(a.device()));
            case Amendment.RemoveDevice a -> json.put("device", a.device());
            case Amendment.ChangeDevice a -> writeChange(a, json);
            case Amendment.ChangeVehicle a ->
                    json.put("earth", JsonThing.kebab(a.earth()))
                            .put("systemVoltageV", a.system().toVolts());
            case Amendment.ChangeCovering a ->
                    json.put("segment", a.segment()).set("finish", LoomWriter.finish(a.finish()));
            case Amendment.AddOpening a ->
                    json.put("segment", a.segment())
                            .set("opening", LoomWriter.opening(a.opening()));
            case Amendment.RemoveOpening a -> json.put("opening", a.opening());
        }
    }

    private static void writeChange(Amendment.ChangeDevice a, ObjectNode json) {
        json.put("device", a.device());
        json.put("name", a.name());
        json.put("deviceKind", JsonThing.kebab(a.kind()));
        DeviceJson.writeLoad(a.load(), json);
        DeviceJson.writeParticulars(a.particulars(), json);
    }

    private static void writeBreakOut(Amendment.BreakOutBranch a, ObjectNode json) {
        json.put("segment", a.segment());
        json.set("atMm", JsonParts.millimetres(a.at()));
        json.set("breakout", LoomWriter.node(a.breakout()));
        json.put("farSegment", a.farSegment());
        json.set("branch", LoomWriter.segment(a.branch()));
        json.set("end", LoomWriter.node(a.end()));
    }
}
