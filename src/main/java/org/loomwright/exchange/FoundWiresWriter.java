package org.loomwright.exchange;

import org.loomwright.core.finder.Expected;
import org.loomwright.core.finder.FoundWire;
import org.loomwright.core.finder.FoundWires;
import org.loomwright.core.quantity.Voltage;

import tools.jackson.databind.node.ObjectNode;

/** Writes the wires that may be the one that was seen as JSON, the best first. */
public final class FoundWiresWriter {

    private FoundWiresWriter() {}

    /**
     * @param found the wires
     * @return them as JSON
     */
    public static ObjectNode write(FoundWires found) {
        ObjectNode json = JsonParts.object();
        json.set("wires", JsonParts.array(found.wires(), FoundWiresWriter::wire));
        json.put("passedOver", found.passedOver());
        json.put("meter", found.meter());
        json.put("caution", found.caution());
        return json;
    }

    private static ObjectNode wire(FoundWire found) {
        ObjectNode json = JsonParts.object();
        json.put("wire", found.wire().id());
        json.put("circuit", found.wire().circuit());
        json.put("score", found.score());
        json.set("reasons", JsonParts.texts(found.reasons()));
        json.put("colour", found.colour());
        json.put("size", found.wire().size());
        json.put("from", found.from());
        json.put("to", found.to());
        json.set("route", JsonParts.texts(found.route()));
        json.set("expected", JsonParts.array(found.expected(), FoundWiresWriter::expected));
        return json;
    }

    private static ObjectNode expected(Expected expected) {
        ObjectNode json = JsonParts.object();
        json.put("state", expected.state());
        Voltage volts = expected.volts();
        if (volts != null) {
            json.put("volts", volts.toVolts());
        }
        json.put("words", expected.words());
        return json;
    }
}
