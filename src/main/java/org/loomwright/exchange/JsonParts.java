package org.loomwright.exchange;

import org.loomwright.core.quantity.Length;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

import java.util.Collection;
import java.util.function.Function;

/** The few steps that every writer of JSON here needs. */
final class JsonParts {

    private JsonParts() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static <T> ArrayNode array(Collection<T> parts, Function<? super T, ? extends JsonNode> write) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        parts.forEach(part -> array.add(write.apply(part)));
        return array;
    }

    static ArrayNode texts(Collection<String> texts) {
        return array(texts, JsonNodeFactory.instance::stringNode);
    }

    static JsonNode millimetres(Length length) {
        return JsonNodeFactory.instance.numberNode(length.toMillimetres());
    }
}
