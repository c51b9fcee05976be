package org.loomwright.exchange;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.DevicePart;
import org.loomwright.core.kit.DevicePart.FusePart;
import org.loomwright.core.kit.DevicePart.PointPart;
import org.loomwright.core.kit.FeedPart;
import org.loomwright.core.kit.Found;
import org.loomwright.core.kit.Load;
import org.loomwright.core.kit.Need;
import org.loomwright.core.kit.Question;
import org.loomwright.core.kit.Question.Choice;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.kit.Reminder;
import org.loomwright.core.kit.Selector;
import org.loomwright.core.kit.When;
import org.loomwright.core.kit.WirePart;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.Current;

import tools.jackson.databind.JsonNode;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** Reads a recipe of a kit from JSON, as {@code shared/kit.schema.json} describes it. */
public final class RecipeReader {

    private static final ThingKind KIND = ThingKind.REQUEST;

    private static final int FORMAT_VERSION = 1;

    private RecipeReader() {}

    /**
     * @param json a parsed recipe
     * @return the recipe, or every fault of form with its JSON pointer
     */
    public static Outcome<Recipe> read(JsonNode json) {
        return JsonThing.read(json, "", KIND, RecipeReader::recipe);
    }

    private static Recipe recipe(JsonThing json) {
        if (json.whole("formatVersion") != FORMAT_VERSION) {
            json.fault("json.unknown-word", "formatVersion", "must be " + FORMAT_VERSION);
        }
        Provenance provenance = provenance(json, "status", "source");
        return new Recipe(
                json.text("id"),
                json.text("prefix"),
                json.text("name"),
                json.text("description"),
                json.text("circuit"),
                provenance,
                json.texts("cautions"),
                json.list("questions", KIND, own(it -> question(it, provenance))),
                json.listIfAny("finds", KIND, own(RecipeReader::found)),
                json.listIfAny("needs", KIND, own(RecipeReader::need)),
                json.listIfAny("devices", KIND, own(RecipeReader::device)),
                json.listIfAny("feeds", KIND, own(RecipeReader::feed)),
                json.listIfAny("wires", KIND, own(RecipeReader::wire)),
                json.listIfAny("changes", KIND, own(ChangeReader::change)),
                json.listIfAny("reminders", KIND, own(it -> reminder(it, provenance))));
    }

    private static Provenance provenance(JsonThing json, String status, String source) {
        return new Provenance(json.choice(status, Status.class), json.text(source));
    }

    private static Provenance provenanceOr(JsonThing json, Provenance otherwise) {
        return json.has("status") ? provenance(json, "status", "source") : otherwise;
    }

    /** Reads a part and refuses fields that nobody asked for. */
    static <T> Function<JsonThing, T> own(Function<JsonThing, T> read) {
        return json -> {
            T part = read.apply(json);
            json.refuseOthers();
            return part;
        };
    }

    static When when(JsonThing json) {
        if (!json.has("when")) {
            return When.ALWAYS;
        }
        JsonNode node = json.part("when");
        Map<String, Set<String>> allowed = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> entry : node.properties()) {
            Set<String> words = new TreeSet<>();
            entry.getValue().forEach(word -> words.add(word.asString()));
            allowed.put(entry.getKey(), words);
        }
        return new When(allowed);
    }

    private static Question question(JsonThing json, Provenance provenance) {
        return new Question(
                json.text("id"),
                json.text("text"),
                json.choice("kind", Question.Kind.class),
                when(json),
                isTrue(json, "optional"),
                json.findText("usual"),
                json.listIfAny(
                        "choices", KIND, own(it -> new Choice(it.text("value"), it.text("text")))),
                json.listIfAny("near", KIND, own(RecipeReader::selector)),
                words(json, "supplies", Supply.class),
                json.whole("rank", 1),
                decimal(json, "least"),
                decimal(json, "most"),
                provenanceOr(json, provenance));
    }

    private static boolean isTrue(JsonThing json, String field) {
        return "yes".equals(json.findText(field));
    }

    private static @Nullable BigDecimal decimal(JsonThing json, String field) {
        return json.findDecimal(field, Function.identity(), "must be a number");
    }

    static <E extends Enum<E>> List<E> words(JsonThing json, String field, Class<E> type) {
        return json.texts(field).stream()
                .map(word -> word(json, field, word, type))
                .flatMap(List::stream)
                .toList();
    }

    private static <E extends Enum<E>> List<E> word(
            JsonThing json, String field, String word, Class<E> type) {
        try {
            return List.of(Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_')));
        } catch (IllegalArgumentException e) {
            json.fault("json.unknown-word", field, "has an unknown word '" + word + "'");
            return List.of();
        }
    }

    static Selector selector(JsonThing json) {
        return new Selector(
                words(json, "kinds", DeviceKind.class),
                json.texts("serves"),
                json.texts("named"),
                json.texts("points"));
    }

    private static Found found(JsonThing json) {
        return new Found(
                json.text("key"),
                json.text("text"),
                selector(json),
                json.findText("wiredTo"),
                json.findText("answer"),
                isTrue(json, "all"),
                !"no".equals(json.findText("needed")),
                when(json));
    }

    private static Need need(JsonThing json) {
        return new Need(
                json.choice("kind", Need.Kind.class),
                json.text("value"),
                json.text("text"),
                when(json));
    }

    static @Nullable Load load(JsonThing json, String field) {
        if (!json.has(field)) {
            return null;
        }
        return json.findChild(
                field,
                KIND,
                own(
                        it ->
                                it.has("answer")
                                        ? new Load(null, it.text("answer"))
                                        : new Load(amperes(it, "amperes"), null)));
    }

    private static Current amperes(JsonThing json, String field) {
        Current current =
                json.findDecimal(field, Current::ofAmperes, "must be amperes with three decimals");
        if (current == null) {
            json.fault("json.missing-field", field, "is missing");
            return Current.ZERO;
        }
        return current;
    }

    private static DevicePart device(JsonThing json) {
        return new DevicePart(
                json.text("key"),
                json.text("id"),
                json.text("name"),
                json.choice("kind", DeviceKind.class),
                json.findText("serves"),
                load(json, "load"),
                load(json, "rating"),
                json.findText("needsEarth"),
                json.list("points", KIND, own(RecipeReader::point)),
                json.listIfAny("fuses", KIND, own(RecipeReader::fuse)),
                when(json));
    }

    private static PointPart point(JsonThing json) {
        return new PointPart(
                json.text("name"),
                json.text("at"),
                json.length("tailMm"),
                json.findWhole("takes"),
                json.findText("terminal"),
                when(json));
    }

    private static FusePart fuse(JsonThing json) {
        return new FusePart(
                json.text("from"), json.text("to"), json.texts("feeds"), amperes(json, "leastA"));
    }

    private static FeedPart feed(JsonThing json) {
        return new FeedPart(
                json.text("key"),
                json.text("text"),
                json.texts("feeds"),
                json.text("towards"),
                json.list("options", KIND, own(RecipeReader::option)),
                json.findText("fuse"),
                when(json));
    }

    private static FeedPart.Option option(JsonThing json) {
        return new FeedPart.Option(
                json.choice("supply", Supply.class),
                isTrue(json, "ownFuse"),
                isTrue(json, "renew"),
                words(json, "on", DeviceKind.class),
                json.texts("through"),
                when(json));
    }

    private static WirePart wire(JsonThing json) {
        String colour = json.text("colour");
        return new WirePart(
                json.text("from"),
                json.text("to"),
                colour,
                colour.equals(WirePart.BY_SUPPLY)
                        ? new Provenance(Status.COMPUTED, "colour of the supply")
                        : provenance(json, "colourStatus", "colourSource"),
                json.texts("carries"),
                load(json, "bearing"),
                json.findText("least"),
                when(json));
    }

    private static Reminder reminder(JsonThing json, Provenance provenance) {
        return new Reminder(
                json.findChild("about", KIND, own(RecipeReader::selector)),
                json.findText("below"),
                json.text("text"),
                provenanceOr(json, provenance),
                when(json));
    }
}
