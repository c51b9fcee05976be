package org.loomwright.exchange;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Side;

import tools.jackson.databind.JsonNode;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;

/** Reads a list of amendments from JSON, with every fault of its form. */
public final class AmendmentReader {

    private static final int MOST = 5_000;

    private AmendmentReader() {}

    /** The kinds of amendment as they are written. */
    enum Kind {
        ADD_WIRE(AmendmentReader::addWire),
        REMOVE_WIRE(
                (json, head) -> new Amendment.RemoveWire(head.id, head.reason, json.text("wire"))),
        REPLACE_WIRE(AmendmentReader::replaceWire),
        MOVE_WIRE_END(AmendmentReader::moveWireEnd),
        CHANGE_TERMINAL(AmendmentReader::changeTerminal),
        BREAK_OUT_BRANCH(AmendmentReader::breakOutBranch),
        EXTEND_BRANCH(AmendmentReader::extendBranch),
        CHANGE_LENGTH(AmendmentReader::changeLength),
        REMOVE_BRANCH(
                (json, head) ->
                        new Amendment.RemoveBranch(head.id, head.reason, json.text("segment"))),
        ADD_DEVICE(AmendmentReader::addDevice),
        REMOVE_DEVICE(
                (json, head) ->
                        new Amendment.RemoveDevice(head.id, head.reason, json.text("device"))),
        CHANGE_DEVICE(AmendmentReader::changeDevice),
        CHANGE_VEHICLE(AmendmentReader::changeVehicle),
        CHANGE_COVERING(AmendmentReader::changeCovering),
        ADD_OPENING(AmendmentReader::addOpening),
        REMOVE_OPENING(
                (json, head) ->
                        new Amendment.RemoveOpening(head.id, head.reason, json.text("opening")));

        private final BiFunction<JsonThing, Head, Amendment> read;

        Kind(BiFunction<JsonThing, Head, Amendment> read) {
            this.read = read;
        }
    }

    private record Head(String id, String reason) {}

    /**
     * @param json a parsed array of amendments
     * @param pointer where it stands in the whole document
     * @return the amendments in their order, or every fault of form with its JSON pointer
     */
    public static Outcome<List<Amendment>> read(JsonNode json, String pointer) {
        List<Finding> faults = new ArrayList<>();
        List<Amendment> amendments = new ArrayList<>();
        if (!json.isArray() || json.size() > MOST) {
            return Outcome.rejected(List.of(notAList(pointer)));
        }
        for (int i = 0; i < json.size(); i++) {
            JsonThing thing =
                    new JsonThing(json.get(i), pointer + "/" + i, ThingKind.AMENDMENT, faults);
            Amendment amendment = amendment(thing);
            if (amendment != null) {
                amendments.add(amendment);
            }
        }
        return faults.isEmpty() ? Outcome.accepted(amendments) : Outcome.rejected(faults);
    }

    private static Finding notAList(String pointer) {
        return Finding.fault(
                "json.wrong-type",
                new Subject(ThingKind.AMENDMENT, "", pointer),
                "%s must be an array of at most %d amendments.".formatted(pointer, MOST));
    }

    private static @Nullable Amendment amendment(JsonThing json) {
        int before = json.faultCount();
        Kind kind = json.choice("kind", Kind.class);
        if (json.faultCount() > before) {
            return null;
        }
        String reason = Objects.requireNonNullElse(json.findText("reason"), "");
        Amendment amendment = kind.read.apply(json, new Head(json.text("id"), reason));
        json.refuseOthers();
        return amendment;
    }

    private static Amendment addWire(JsonThing json, Head head) {
        return new Amendment.AddWire(
                head.id, head.reason, LoomReader.wire(json.child("wire", ThingKind.WIRE)));
    }

    private static Amendment replaceWire(JsonThing json, Head head) {
        return new Amendment.ReplaceWire(
                head.id,
                head.reason,
                json.text("wire"),
                LoomReader.colour(json),
                json.text("size"));
    }

    private static Amendment moveWireEnd(JsonThing json, Head head) {
        return new Amendment.MoveWireEnd(
                head.id,
                head.reason,
                json.text("wire"),
                json.choice("side", Side.class),
                LoomReader.wireEnd(json.child("to", ThingKind.WIRE)));
    }

    private static Amendment changeTerminal(JsonThing json, Head head) {
        return new Amendment.ChangeTerminal(
                head.id,
                head.reason,
                json.text("wire"),
                json.choice("side", Side.class),
                json.text("terminal"));
    }

    private static Amendment breakOutBranch(JsonThing json, Head head) {
        return new Amendment.BreakOutBranch(
                head.id,
                head.reason,
                json.text("segment"),
                json.length("atMm"),
                LoomReader.node(json.child("breakout", ThingKind.NODE)),
                json.text("farSegment"),
                LoomReader.segment(json.child("branch", ThingKind.SEGMENT)),
                LoomReader.node(json.child("end", ThingKind.NODE)));
    }

    private static Amendment extendBranch(JsonThing json, Head head) {
        return new Amendment.ExtendBranch(
                head.id,
                head.reason,
                LoomReader.segment(json.child("branch", ThingKind.SEGMENT)),
                LoomReader.node(json.child("end", ThingKind.NODE)));
    }

    private static Amendment changeLength(JsonThing json, Head head) {
        return new Amendment.ChangeLength(
                head.id, head.reason, json.text("segment"), json.length("lengthMm"));
    }

    private static Amendment addDevice(JsonThing json, Head head) {
        return new Amendment.AddDevice(
                head.id, head.reason, DeviceJson.read(json.child("device", ThingKind.DEVICE)));
    }

    private static Amendment changeDevice(JsonThing json, Head head) {
        return new Amendment.ChangeDevice(
                head.id,
                head.reason,
                json.text("device"),
                json.text("name"),
                json.choice("deviceKind", DeviceKind.class),
                DeviceJson.load(json),
                DeviceJson.particulars(json));
    }

    private static Amendment changeVehicle(JsonThing json, Head head) {
        return new Amendment.ChangeVehicle(
                head.id,
                head.reason,
                json.choice("earth", EarthPolarity.class),
                LoomReader.systemVoltage(json));
    }

    private static Amendment changeCovering(JsonThing json, Head head) {
        return new Amendment.ChangeCovering(
                head.id,
                head.reason,
                json.text("segment"),
                LoomReader.finish(json.child("finish", ThingKind.SEGMENT)));
    }

    private static Amendment addOpening(JsonThing json, Head head) {
        return new Amendment.AddOpening(
                head.id,
                head.reason,
                json.text("segment"),
                LoomReader.opening(json.child("opening", ThingKind.OPENING)));
    }
}
