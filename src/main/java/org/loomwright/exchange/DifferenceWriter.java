package org.loomwright.exchange;

import org.loomwright.core.difference.LoomDifference;

import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes the difference of two looms as JSON. */
public final class DifferenceWriter {

    private DifferenceWriter() {}

    /**
     * @param difference a difference
     * @return it as JSON
     */
    public static ObjectNode write(LoomDifference difference) {
        ObjectNode json = JsonParts.object();
        json.set("entries", JsonParts.array(difference.entries(), DifferenceWriter::entry));
        return json;
    }

    private static ObjectNode entry(LoomDifference.Entry entry) {
        ObjectNode json = JsonParts.object();
        json.put("kind", JsonThing.kebab(entry.thing().kind()));
        json.put("id", entry.thing().id());
        json.put("change", JsonThing.kebab(entry.change()));
        json.set("fields", fields(entry));
        json.put("text", entry.text());
        return json;
    }

    private static ArrayNode fields(LoomDifference.Entry entry) {
        return JsonParts.array(
                entry.fields(),
                field -> {
                    ObjectNode json = JsonParts.object();
                    json.put("field", field.field());
                    json.put("before", field.before());
                    json.put("after", field.after());
                    return json;
                });
    }
}
