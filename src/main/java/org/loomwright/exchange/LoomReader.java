package org.loomwright.exchange;

import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.CustomColour;
import org.loomwright.core.loom.Departure;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.EndToEnd;
import org.loomwright.core.loom.Evidence;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Fitting;
import org.loomwright.core.loom.Hand;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Voltage;

import tools.jackson.databind.JsonNode;

/** Reads a loom document from JSON, with every fault of its form. Whether it is a loom is the checker's question. */
public final class LoomReader {

    /** The version of the document format that is read and written. */
    public static final int FORMAT_VERSION = 1;

    private LoomReader() {}

    /**
     * @param json a parsed loom document
     * @return the document, or every fault of form with its JSON pointer
     */
    public static Outcome<LoomDocument> read(JsonNode json) {
        return read(json, "");
    }

    /**
     * @param json a parsed loom document that is part of a larger one
     * @param pointer where it stands there
     * @return the document, or every fault of form with its JSON pointer
     */
    static Outcome<LoomDocument> read(JsonNode json, String pointer) {
        return JsonThing.read(json, pointer, ThingKind.LOOM, LoomReader::document);
    }

    private static LoomDocument document(JsonThing json) {
        int version = json.whole("formatVersion");
        if (json.has("formatVersion") && version != FORMAT_VERSION) {
            json.fault("json.format-version", "formatVersion", "must be " + FORMAT_VERSION);
        }
        return new LoomDocument(
                json.text("name"),
                vehicle(json.child("vehicle", ThingKind.VEHICLE)),
                json.text("datum"),
                json.list("nodes", ThingKind.NODE, LoomReader::node),
                json.list("segments", ThingKind.SEGMENT, LoomReader::segment),
                json.list("devices", ThingKind.DEVICE, DeviceJson::read),
                json.list("wires", ThingKind.WIRE, LoomReader::wire),
                json.listIfAny("checks", ThingKind.CHECK, LoomReader::check),
                json.listIfAny("customColours", ThingKind.LOOM, LoomReader::customColour));
    }

    private static VehicleSheet vehicle(JsonThing json) {
        VehicleSheet vehicle =
                new VehicleSheet(
                        json.text("name"),
                        json.whole("year"),
                        json.choice("hand", Hand.class),
                        json.choice("earth", EarthPolarity.class),
                        systemVoltage(json),
                        json.texts("notStandard"));
        json.refuseOthers();
        return vehicle;
    }

    static Voltage systemVoltage(JsonThing json) {
        return json.decimal(
                "systemVoltageV",
                Voltage::ofVolts,
                "must be volts, at most three decimals",
                Voltage.ofMillivolts(0));
    }

    static Node node(JsonThing json) {
        Node node = new Node(json.text("id"), json.text("name"));
        json.refuseOthers();
        return node;
    }

    static Segment segment(JsonThing json) {
        Segment segment =
                new Segment(
                        json.text("id"),
                        json.text("from"),
                        json.text("to"),
                        json.length("lengthMm"),
                        json.lengths("readingsMm"),
                        json.findChild("leaves", ThingKind.SEGMENT, LoomReader::departure),
                        json.whole("bendDegrees", 0),
                        finish(json.child("finish", ThingKind.SEGMENT)),
                        json.listIfAny("openings", ThingKind.OPENING, LoomReader::opening));
        json.refuseOthers();
        return segment;
    }

    private static Departure departure(JsonThing json) {
        Departure departure = new Departure(json.whole("clock"), json.whole("angleDegrees"));
        json.refuseOthers();
        return departure;
    }

    static Finish finish(JsonThing json) {
        Finish finish =
                new Finish(
                        json.text("covering"),
                        json.findText("baseYarn"),
                        json.texts("tracers"),
                        json.findWhole("picksPer25Mm"),
                        json.whole("lacquerCoats", 0),
                        evidence(json.child("evidence", ThingKind.SEGMENT)));
        json.refuseOthers();
        return finish;
    }

    private static Evidence evidence(JsonThing json) {
        Evidence evidence =
                new Evidence(json.choice("kind", Evidence.EvidenceKind.class), json.text("note"));
        json.refuseOthers();
        return evidence;
    }

    static Opening opening(JsonThing json) {
        Opening opening =
                new Opening(
                        json.text("id"),
                        json.text("name"),
                        json.choice("kind", OpeningKind.class),
                        json.length("positionMm"),
                        json.length("clearDiameterMm"),
                        json.choice("passes", Opening.PassDirection.class));
        json.refuseOthers();
        return opening;
    }

    static Wire wire(JsonThing json) {
        Wire wire =
                new Wire(
                        json.text("id"),
                        json.text("circuit"),
                        colour(json),
                        json.text("size"),
                        wireEnd(json.child("a", ThingKind.WIRE)),
                        wireEnd(json.child("b", ThingKind.WIRE)),
                        json.choice("condition", Condition.class));
        json.refuseOthers();
        return wire;
    }

    static WireColour colour(JsonThing json) {
        String letters = json.text("colour");
        if (WireColour.isWellFormed(letters)) {
            return WireColour.parse(letters);
        }
        if (!letters.isEmpty() || json.has("colour")) {
            json.fault(
                    "loom.colour-unknown",
                    "colour",
                    "must be the letters of a body colour and, if there is one, of a different"
                            + " tracer, for example GN");
        }
        return new WireColour("B", null);
    }

    static WireEnd wireEnd(JsonThing json) {
        WireEnd end =
                new WireEnd(
                        json.text("device"),
                        json.text("point"),
                        json.text("terminal"),
                        json.findChoice("fitted", Fitting.class));
        json.refuseOthers();
        return end;
    }

    private static CustomColour customColour(JsonThing json) {
        CustomColour colour =
                new CustomColour(json.text("letters"), json.text("name"), json.text("swatch"));
        json.refuseOthers();
        return colour;
    }

    private static EndToEnd check(JsonThing json) {
        EndToEnd check =
                new EndToEnd(
                        json.text("id"),
                        json.text("from"),
                        json.text("to"),
                        json.length("measuredMm"));
        json.refuseOthers();
        return check;
    }
}
