package org.loomwright.exchange;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;

import tools.jackson.databind.node.ObjectNode;

import java.util.List;

/** Devices as JSON, there and back. What nobody said is left out, so a device says no more than was recorded. */
final class DeviceJson {

    private static final String AMPERES = "must be amperes, at most three decimals";
    private static final String VOLTS = "must be volts, at most three decimals";

    private DeviceJson() {}

    static Device read(JsonThing json) {
        Device device =
                new Device(
                        json.text("id"),
                        json.text("name"),
                        json.choice("kind", DeviceKind.class),
                        load(json),
                        particulars(json),
                        json.list("points", ThingKind.POINT, DeviceJson::point));
        json.refuseOthers();
        return device;
    }

    static @Nullable Current load(JsonThing json) {
        return json.findDecimal("loadA", Current::ofAmperes, AMPERES);
    }

    /** What is known of a device besides its load; its fields stand beside those of the device. */
    static Particulars particulars(JsonThing json) {
        return new Particulars(
                json.findText("serves"),
                json.findDecimal("ratingA", Current::ofAmperes, AMPERES),
                json.findDecimal("voltageV", Voltage::ofVolts, VOLTS),
                json.findChoice("needsEarth", EarthPolarity.class),
                json.listIfAny("fuses", ThingKind.DEVICE, DeviceJson::fuse));
    }

    private static FittedFuse fuse(JsonThing json) {
        FittedFuse fuse =
                new FittedFuse(
                        json.text("from"),
                        json.text("to"),
                        json.choice("style", FuseStyle.class),
                        json.decimal(
                                "markedA",
                                Current::ofAmperes,
                                AMPERES,
                                Current.ofMilliamperes(1_000)));
        json.refuseOthers();
        return fuse;
    }

    private static Point point(JsonThing json) {
        Point point =
                new Point(
                        json.text("name"),
                        json.text("node"),
                        json.length("tailMm"),
                        json.findWhole("takes"));
        json.refuseOthers();
        return point;
    }

    static ObjectNode write(Device device) {
        ObjectNode json = JsonParts.object();
        json.put("id", device.id());
        json.put("name", device.name());
        json.put("kind", JsonThing.kebab(device.kind()));
        writeLoad(device.load(), json);
        writeParticulars(device.particulars(), json);
        json.set("points", JsonParts.array(device.points(), DeviceJson::point));
        return json;
    }

    static void writeLoad(@Nullable Current load, ObjectNode json) {
        if (load != null) {
            json.put("loadA", load.toAmperes());
        }
    }

    static void writeParticulars(Particulars particulars, ObjectNode json) {
        if (particulars.serves() != null) {
            json.put("serves", particulars.serves());
        }
        if (particulars.rating() != null) {
            json.put("ratingA", particulars.rating().toAmperes());
        }
        if (particulars.voltage() != null) {
            json.put("voltageV", particulars.voltage().toVolts());
        }
        if (particulars.needsEarth() != null) {
            json.put("needsEarth", JsonThing.kebab(particulars.needsEarth()));
        }
        List<FittedFuse> fuses = particulars.fuses();
        if (!fuses.isEmpty()) {
            json.set("fuses", JsonParts.array(fuses, DeviceJson::fuse));
        }
    }

    private static ObjectNode fuse(FittedFuse fuse) {
        return JsonParts.object()
                .put("from", fuse.from())
                .put("to", fuse.to())
                .put("style", JsonThing.kebab(fuse.style()))
                .put("markedA", fuse.marked().toAmperes());
    }

    private static ObjectNode point(Point point) {
        ObjectNode json = JsonParts.object();
        json.put("name", point.name());
        json.put("node", point.node());
        json.set("tailMm", JsonParts.millimetres(point.tail()));
        if (point.takes() != null) {
            json.put("takes", point.takes());
        }
        return json;
    }
}
