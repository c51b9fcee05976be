package org.loomwright.exchange;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.quantity.Length;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One JSON object while it is being read, with its place in the document. Whatever is wrong is noted and a harmless value stands in
 * for it, so that one pass finds every fault; the caller must not use the values when there are faults.
 */
public final class JsonThing {

    /** After so many faults the rest is not looked for: nobody reads them, and they need memory. */
    private static final int MOST_FAULTS = 10_000;

    private final JsonNode node;
    private final String pointer;
    private final ThingKind kind;
    private final List<Finding> faults;
    private final Set<String> asked = new HashSet<>();

    /** Fields whose absence, or null, is told by whoever reads them. */
    private final Set<String> required = new HashSet<>();

    /**
     * Reads one whole document.
     *
     * @param json the parsed document
     * @param pointer where it stands in a larger one, empty for the root
     * @param kind what it is about
     * @param read reads its fields; it need not refuse others
     * @return what was read, or every fault
     */
    public static <T> Outcome<T> read(
            JsonNode json, String pointer, ThingKind kind, Function<JsonThing, T> read) {
        List<Finding> faults = new ArrayList<>();
        JsonThing thing = new JsonThing(json, pointer, kind, faults);
        T value = read.apply(thing);
        thing.refuseOthers();
        return faults.isEmpty() ? Outcome.accepted(value) : Outcome.rejected(faults);
    }

    JsonThing(JsonNode node, String pointer, ThingKind kind, List<Finding> faults) {
        this.node = node;
        this.pointer = pointer;
        this.kind = kind;
        this.faults = faults;
        if (!node.isObject()) {
            fault("json.wrong-type", "", "must be an object");
        }
    }

    /** @return JSON pointer of this object */
    public String pointer() {
        return pointer;
    }

    int faultCount() {
        return faults.size();
    }

    /** Notes a fault of one field, or of the whole object for an empty name. */
    public void fault(String code, String field, String rule) {
        if (faults.size() >= MOST_FAULTS) {
            return;
        }
        String place = field.isEmpty() ? pointer : pointer + "/" + field;
        faults.add(
                Finding.fault(
                        code,
                        new Subject(kind, "", place),
                        "%s %s.".formatted(place.isEmpty() ? "The document" : place, rule)));
    }

    /** Takes over what another reader found wrong in a part of this object. */
    public void faults(List<Finding> others) {
        faults.addAll(others);
    }

    /** @return a part of this object as it stands, for another reader; missing where it is missing */
    public JsonNode part(String field) {
        required.add(field);
        return get(field);
    }

    /** @return text of 1 to {@code longest} characters that is not blank */
    public String line(String field, int longest) {
        int before = faults.size();
        String text = text(field);
        boolean isText = faults.size() == before;
        if (isText && (text.isBlank() || text.length() > longest)) {
            fault("json.text-length", field, "must have 1 to " + longest + " characters");
        }
        return text;
    }

    /** @return an id; a harmless one when it is wrong */
    public UUID id(String field) {
        String text = text(field);
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException e) {
            if (!text.isEmpty()) {
                fault("json.id-malformed", field, "must be an id as it was answered");
            }
            return new UUID(0, 0);
        }
    }

    /** @return a day after ISO 8601, or null where there is none */
    public @Nullable LocalDate findDay(String field) {
        int before = faults.size();
        String text = findText(field);
        if (text == null || faults.size() > before) {
            return null;
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            fault("json.day-malformed", field, "must be a day, for example 2031-05-17");
            return null;
        }
    }

    /** Refuses fields that nobody asked for. Call it last. */
    public void refuseOthers() {
        if (!node.isObject()) {
            return;
        }
        for (String field : node.propertyNames()) {
            if (node.get(field).isNull() && !required.contains(field)) {
                fault("json.wrong-type", escape(field), "must not be null; leave it out");
            } else if (!asked.contains(field)) {
                fault("json.unknown-field", escape(field), "is not a field of this object");
            }
        }
    }

    private static String escape(String field) {
        return field.replace("~", "~0").replace("/", "~1");
    }

    /** @return whether the field is there and not null */
    public boolean has(String field) {
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
        required.add(field);
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

    /** @return a string that must be there */
    public String text(String field) {
        return readText(require(field), field);
    }

    /** @return a string, or null where there is none */
    public @Nullable String findText(String field) {
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

    /** @return a whole number, or {@code otherwise} where there is none */
    public int whole(String field, int otherwise) {
        return has(field) ? whole(field) : otherwise;
    }

    /** @return a whole number that must be there */
    public int whole(String field) {
        JsonNode value = require(field);
        boolean right = value.isIntegralNumber() && value.canConvertToInt();
        return isWrong(value, right, field, "must be a whole number") ? 0 : value.intValue();
    }

    /** @return a whole number, or null where there is none */
    public @Nullable Integer findWhole(String field) {
        return has(field) ? Integer.valueOf(whole(field)) : null;
    }

    /** A decimal that some exact quantity can hold; the quantity's own refusal becomes the rule. */
    public <T> @Nullable T findDecimal(
            String field, Function<BigDecimal, T> quantity, String rule) {
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

    /** A decimal that must be there, read as {@link #findDecimal} does; {@code harmless} stands in for a wrong one. */
    public <T> T decimal(String field, Function<BigDecimal, T> quantity, String rule, T harmless) {
        T value = readDecimal(require(field), field, quantity, rule);
        return value == null ? harmless : value;
    }

    /** @return millimetres that must be there */
    public Length length(String field) {
        return readLength(require(field), field);
    }

    /** @return an array of millimetres, empty where there is none */
    public List<Length> lengths(String field) {
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

    /** @return an array of strings, empty where there is none */
    public List<String> texts(String field) {
        List<String> texts = new ArrayList<>();
        JsonNode array = array(field);
        for (int i = 0; i < array.size(); i++) {
            texts.add(readText(array.get(i), field + "/" + i));
        }
        return texts;
    }

    /** @return by name the arrays of strings of an object that must be there, in the order of the document */
    public Map<String, List<String>> textsByName(String field, ThingKind childKind) {
        JsonThing object = child(field, childKind);
        Map<String, List<String>> texts = new LinkedHashMap<>();
        for (String name : object.node.propertyNames()) {
            if (isCleanText(name)) {
                texts.put(name, object.textsOf(name));
            } else {
                object.fault("json.text-malformed", "", "must not have such a name");
            }
        }
        return texts;
    }

    private List<String> textsOf(String name) {
        JsonNode array = get(name);
        List<String> texts = new ArrayList<>();
        if (!array.isArray()) {
            fault("json.wrong-type", escape(name), "must be an array");
        }
        for (int i = 0; i < array.size(); i++) {
            String place = escape(name) + "/" + i;
            if (array.get(i).isNull()) {
                fault("json.wrong-type", place, "must not be null");
            }
            texts.add(readText(array.get(i), place));
        }
        return texts;
    }

    /** @return one of the words of an enum, which must be there */
    public <E extends Enum<E>> E choice(String field, Class<E> type) {
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

    /** @return one of the words of an enum, or null where there is none */
    public <E extends Enum<E>> @Nullable E findChoice(String field, Class<E> type) {
        return has(field) ? choice(field, type) : null;
    }

    /** How an enum constant is written in JSON: {@code UNDER_COVER} is {@code under-cover}. */
    public static String kebab(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** @return an object that must be there */
    public JsonThing child(String field, ThingKind childKind) {
        JsonNode value = require(field);
        return value.isMissingNode() || value.isNull()
                ? new JsonThing(value, pointer, childKind, new ArrayList<>())
                : new JsonThing(value, pointer + "/" + field, childKind, faults);
    }

    /** @return an object, or null where there is none */
    public <T> @Nullable T findChild(
            String field, ThingKind childKind, Function<JsonThing, T> read) {
        return has(field) ? read.apply(child(field, childKind)) : null;
    }

    /** @return an array of objects that must be there */
    public <T> List<T> list(String field, ThingKind childKind, Function<JsonThing, T> read) {
        require(field);
        return listIfAny(field, childKind, read);
    }

    /** @return an array of objects, empty where there is none */
    public <T> List<T> listIfAny(String field, ThingKind childKind, Function<JsonThing, T> read) {
        JsonNode array = arrayOfAnything(field);
        List<T> parts = new ArrayList<>(array.size());
        for (int i = 0; i < array.size(); i++) {
            String place = pointer + "/" + field + "/" + i;
            parts.add(read.apply(new JsonThing(array.get(i), place, childKind, faults)));
        }
        return parts;
    }

    private JsonNode arrayOfAnything(String field) {
        JsonNode value = get(field);
        return isWrong(value, value.isArray(), field, "must be an array")
                ? MissingNode.getInstance()
                : value;
    }

    private JsonNode array(String field) {
        JsonNode value = arrayOfAnything(field);
        for (int i = 0; i < value.size(); i++) {
            if (value.get(i).isNull()) {
                fault("json.wrong-type", field + "/" + i, "must not be null");
            }
        }
        return value;
    }
}
