package org.loomwright.core.difference;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.CustomColour;
import org.loomwright.core.loom.Departure;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.EndToEnd;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Fitting;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Length;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Everything that a loom says, part by part and field by field, in words with units. Two looms are equal exactly when they say
 * the same: every component of every record is a field of its own, or stands in a field from which it can be read back.
 */
final class PartWords {

    static final Comparator<Subject> ORDER =
            Comparator.comparing(Subject::kind).thenComparing(Subject::id);

    private final Map<Subject, Map<String, @Nullable String>> parts = new HashMap<>();

    private PartWords() {}

    static Map<Subject, Map<String, @Nullable String>> of(Loom loom) {
        PartWords words = new PartWords();
        words.addLoom(loom);
        words.addVehicle(loom.document().vehicle());
        loom.nodes().values().forEach(words::addNode);
        loom.segments().values().forEach(words::addSegment);
        loom.devices().values().forEach(words::addDevice);
        loom.wires().values().forEach(words::addWire);
        loom.document().checks().forEach(words::addCheck);
        return words.parts;
    }

    /** The fields of one part, always in the same order; null where there is nothing to say. */
    private final class Fields {

        private final Map<String, @Nullable String> fields = new LinkedHashMap<>();

        Fields(ThingKind kind, String id) {
            parts.put(Subject.of(kind, id), fields);
        }

        Fields say(String field, @Nullable Object value) {
            fields.put(field, value == null ? null : value.toString());
            return this;
        }

        Fields say(String field, Enum<?> value) {
            return say(field, words(value));
        }
    }

    private static String words(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private void addLoom(Loom loom) {
        Fields fields =
                new Fields(ThingKind.LOOM, "").say("name", loom.name()).say("datum", loom.datum());
        for (CustomColour own : loom.document().customColours()) {
            fields.say(
                    "own colour " + own.letters(), "%s (%s)".formatted(own.name(), own.swatch()));
        }
    }

    private void addVehicle(VehicleSheet vehicle) {
        Fields fields =
                new Fields(ThingKind.VEHICLE, "")
                        .say("name", vehicle.name())
                        .say("year", Integer.toString(vehicle.year()))
                        .say("driver's side", vehicle.hand())
                        .say("earth", vehicle.earth())
                        .say("system voltage", vehicle.system());
        for (int i = 0; i < vehicle.notStandard().size(); i++) {
            fields.say("remark " + (i + 1), vehicle.notStandard().get(i));
        }
    }

    private void addNode(Node node) {
        new Fields(ThingKind.NODE, node.id()).say("name", node.name());
    }

    private void addSegment(Segment segment) {
        Fields fields =
                new Fields(ThingKind.SEGMENT, segment.id())
                        .say("from node", segment.from())
                        .say("to node", segment.to())
                        .say("length", segment.length())
                        .say("repeat readings", list(segment.readings()))
                        .say("leaves at", departure(segment.leaves()))
                        .say("bends", segment.bendDegrees() + "°");
        addFinish(fields, segment.finish());
        segment.openings().forEach(opening -> addOpening(opening, segment));
    }

    private static @Nullable String list(List<Length> lengths) {
        return lengths.isEmpty()
                ? null
                : lengths.stream().map(Length::toString).collect(Collectors.joining(", "));
    }

    private static @Nullable String departure(@Nullable Departure leaves) {
        return leaves == null
                ? null
                : "%d o'clock, %d°".formatted(leaves.clock(), leaves.angleDegrees());
    }

    private static void addFinish(Fields fields, Finish finish) {
        String tracers = finish.tracers().isEmpty() ? null : String.join(", ", finish.tracers());
        String note = finish.evidence().note();
        Integer picks = finish.picksPer25Mm();
        fields.say("covering", finish.covering())
                .say("main yarn", finish.baseYarn())
                .say("tracer yarns", tracers)
                .say("picks", picks == null ? null : picks + " on 25 mm")
                .say("coats of lacquer", Integer.toString(finish.lacquerCoats()))
                .say("evidence", finish.evidence().kind())
                .say("evidence note", note.isEmpty() ? null : note);
    }

    private void addOpening(Opening opening, Segment segment) {
        new Fields(ThingKind.OPENING, opening.id())
                .say("name", opening.name())
                .say("kind", opening.kind().words())
                .say("on segment", segment.id())
                .say("position", opening.position())
                .say("clear diameter", opening.clearDiameter())
                .say("passes", opening.passes());
    }

    private void addDevice(Device device) {
        Fields fields =
                new Fields(ThingKind.DEVICE, device.id())
                        .say("name", device.name())
                        .say("kind", device.kind().words())
                        .say("load", device.load());
        addParticulars(fields, device.particulars());
        device.points().forEach(point -> addPoint(device, point));
    }

    private static void addParticulars(Fields fields, Particulars particulars) {
        EarthPolarity earth = particulars.needsEarth();
        fields.say("serves", particulars.serves())
                .say("rating", particulars.rating())
                .say("made for", particulars.voltage())
                .say("needs earth", earth == null ? null : words(earth))
                .say("fuses", fuses(particulars.fuses()));
    }

    private static @Nullable String fuses(List<FittedFuse> fuses) {
        return fuses.isEmpty()
                ? null
                : fuses.stream().map(PartWords::fuse).collect(Collectors.joining(", "));
    }

    private static String fuse(FittedFuse fuse) {
        return "%s to %s %s (%s)"
                .formatted(fuse.from(), fuse.to(), fuse.marked(), fuse.style().words());
    }

    private void addPoint(Device device, Point point) {
        new Fields(ThingKind.POINT, device.id() + "/" + point.name())
                .say("at node", point.node())
                .say("tail", point.tail())
                .say("room", room(point));
    }

    private static @Nullable String room(Point point) {
        Integer takes = point.takes();
        return takes == null ? null : takes + (takes == 1 ? " wire end" : " wire ends");
    }

    private void addWire(Wire wire) {
        new Fields(ThingKind.WIRE, wire.id())
                .say("circuit", wire.circuit())
                .say("colour", wire.colour())
                .say("size", wire.size())
                .say("end A", end(wire.a()))
                .say("end B", end(wire.b()))
                .say("condition", wire.condition());
    }

    private static String end(WireEnd end) {
        Fitting fitted = end.fitted();
        String terminal = end.place() + " with " + end.terminal();
        return fitted == null ? terminal : "%s, fitted %s".formatted(terminal, fitted.words());
    }

    private void addCheck(EndToEnd check) {
        new Fields(ThingKind.CHECK, check.id())
                .say("from node", check.from())
                .say("to node", check.to())
                .say("measured", check.measured());
    }
}
