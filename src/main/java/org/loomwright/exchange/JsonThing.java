package org.loomwright.exchange;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.quantity.Length;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One JSON object while it is being read, with its place in the document. Whatever is wrong is noted and a harmless value stands in
 * for it, so that one pass finds every fault; the caller must not use the values when there are faults.
 */
final class JsonThing {

    private final JsonNode node;
    private final String pointer;
    private final ThingKind kind;
    private final List<Finding> faults;
    private final Set<String> asked = new HashSet<>();

    JsonThing(JsonNode node, String pointer, ThingKind kind, List<Finding> faults) {
        this.node = node;
        this.pointer = pointer;
        this.kind = kind;
        this.faults = faults;
        if (!node.isObject()) {
            fault("json.wrong-type", "", "must be an object");
        }
    }

    String pointer() {
        return pointer;
    }

    int faultCount() {
        return faults.size();
    }

    /** Notes a fault of one field, or of the whole object for an empty name. */
    void fault(String code, String field, String rule) {
        String place = field.isEmpty() ? pointer : pointer + "/" + field;
        faults.add(
                Finding.fault(
                        code,
                        new Subject(kind, "", place),
                        "%s %s.".formatted(place.isEmpty() ? "The document" : place, rule)));
    }

    /** Refuses fields that nobody asked for. Call it last. */
    void refuseOthers() {
        if (!node.isObject()) {
            return;
        }
        for (String field : node.propertyNames()) {
            if (!asked.contains(field)) {
                fault("json.unknown-field", escape(field), "is not a field of this object");
            }
        }
    }

    private static String escape(String field) {
        return field.replace("~", "~0").replace("/", "~1");
    }

    boolean has(String field) {
        asked.add(field);
        return node.has(field) && !node.get(field).isNull();
    }

    private JsonNode get(String field) {
        asked.add(field);
        JsonNode value = node.get(field);
        return value == null ? MissingNode.getInstance() : value;
    }

    private JsonNode require(String field) {
        JsonNode value = get(field);
        if ((value.isMissingNode() || value.isNull()) && node.isObject()) {
            fault("json.missing-field", field, "is missing");
        }
        return value;
    }

    private boolean isWrong(JsonNode value, boolean right, String field, String rule) {
        if (value.isMissingNode() || value.isNull()) {
            return true;
        }
        if (!right) {
            fault("json.wrong-type", field, rule);
        }
        return !right;
    }

    String text(String field) {
        return readText(require(field), field);
    }

    @Nullable String findText(String field) {
        return has(field) ? readText(get(field), field) : null;
    }

    private String readText(JsonNode value, String field) {
        if (isWrong(value, value.isString(), field, "must be a string")) {
            return "";
        }
        String text = value.stringValue();
        if (!isCleanText(text)) {
            fault(
                    "json.text-malformed",
                    field,
                    "must not contain control characters or unpaired surrogates");
            return "";
        }
        return text;
    }

    private static boolean isCleanText(String text) {
        return text.codePoints()
                .noneMatch(
                        point ->
                                Character.isISOControl(point)
                                        || Character.getType(point) == Character.SURROGATE);
    }

    int whole(String field, int otherwise) {
        return has(field) ? whole(field) : otherwise;
    }

    int whole(String field) {
        JsonNode value = require(field);
        boolean right = value.isIntegralNumber() && value.canConvertToInt();
        return isWrong(value, right, field, "must be a whole number") ? 0 : value.intValue();
    }

    @Nullable Integer findWhole(String field) {
        return has(field) ? Integer.valueOf(whole(field)) : null;
    }

    /** A decimal that some exact quantity can hold; the quantity's own refusal becomes the rule. */
    <T> @Nullable T findDecimal(String field, Function<BigDecimal, T> quantity, String rule) {
        return readDecimal(get(field), field, quantity, rule);
    }

    private <T> @Nullable T readDecimal(
            JsonNode value, String field, Function<BigDecimal, T> quantity, String rule) {
        if (isWrong(value, value.isNumber(), field, "must be a number")) {
            return null;
        }
        try {
            return quantity.apply(value.decimalValue());
        } catch (ArithmeticException e) {
            fault("json.number-too-fine", field, rule);
            return null;
        }
    }

    Length length(String field) {
        return readLength(require(field), field);
    }

    List<Length> lengths(String field) {
        List<Length> lengths = new ArrayList<>();
        JsonNode array = array(field);
        for (int i = 0; i < array.size(); i++) {
            lengths.add(readLength(array.get(i), field + "/" + i));
        }
        return lengths;
    }

    private Length readLength(JsonNode value, String field) {
        Length length =
                readDecimal(
                        value,
                        field,
                        Length::ofMillimetres,
                        "must be millimetres with at most three decimals");
        return length == null ? Length.ZERO : length;
    }

    List<String> texts(String field) {
        List<String> texts = new ArrayList<>();
        JsonNode array = array(field);
        for (int i = 0; i < array.size(); i++) {
            texts.add(readText(array.get(i), field + "/" + i));
        }
        return texts;
    }

    <E extends Enum<E>> E choice(String field, Class<E> type) {
        JsonNode value = require(field);
        E[] all = type.getEnumConstants();
        if (isWrong(value, value.isString(), field, "must be a string")) {
            return all[0];
        }
        for (E constant : all) {
            if (kebab(constant).equals(value.stringValue())) {
                return constant;
            }
        }
        String choices = Stream.of(all).map(JsonThing::kebab).collect(Collectors.joining(", "));
        fault("json.unknown-word", field, "must be one of: " + choices);
        return all[0];
    }

    /** How an enum constant is written in JSON: {@code UNDER_COVER} is {@code under-cover}. */
    static String kebab(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    JsonThing child(String field, ThingKind childKind) {
        JsonNode value = require(field);
        return value.isMissingNode() || value.isNull()
                ? new JsonThing(value, pointer, childKind, new ArrayList<>())
                : new JsonThing(value, pointer + "/" + field, childKind, faults);
    }

    <T> @Nullable T findChild(String field, ThingKind childKind, Function<JsonThing, T> read) {
        return has(field) ? read.apply(child(field, childKind)) : null;
    }

    <T> List<T> list(String field, ThingKind childKind, Function<JsonThing, T> read) {
        require(field);
        return listIfAny(field, childKind, read);
    }

    <T> List<T> listIfAny(String field, ThingKind childKind, Function<JsonThing, T> read) {
        JsonNode array = array(field);
        List<T> parts = new ArrayList<>(array.size());
        for (int i = 0; i < array.size(); i++) {
            String place = pointer + "/" + field + "/" + i;
            parts.add(read.apply(new JsonThing(array.get(i), place, childKind, faults)));
        }
        return parts;
    }

    private JsonNode array(String field) {
        JsonNode value = get(field);
        if (isWrong(value, value.isArray(), field, "must be an array")) {
            return MissingNode.getInstance();
        }
        for (int i = 0; i < value.size(); i++) {
            if (value.get(i).isNull()) {
                fault("json.wrong-type", field + "/" + i, "must not be null");
            }
        }
        return value;
    }
}
