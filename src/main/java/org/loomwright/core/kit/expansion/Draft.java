package org.loomwright.core.kit.expansion;

import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.Answer;
import org.loomwright.core.kit.Load;
import org.loomwright.core.kit.Question;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Power;
import org.loomwright.core.routing.Routes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A kit in the making: what is known about the loom, and what has been decided so far. */
final class Draft {

    static final Provenance RULE = new Provenance(Status.COMPUTED, "rule of the kit");

    final KitBench bench;
    final Recipe recipe;
    final Loom loom;
    final Tracing tracing;
    final Routes routes;
    final Currents currents;
    final Ids ids;
    final Finds finds;
    final Map<String, String> facts;
    final Map<String, Answer> answers;

    /** Nodes by the question that they answer. */
    final Map<String, String> nodes;

    /** New devices by their key. */
    final Map<String, Device> made = new LinkedHashMap<>();

    /** Feeds by their key. */
    final Map<String, FeedChoice> feeds = new LinkedHashMap<>();

    /** What flows through each key's devices. */
    final Map<String, Current> loads = new HashMap<>();

    /** How many wire ends the kit has put on a place {@code device/point}. */
    final Map<String, Integer> addedEnds = new HashMap<>();

    private final List<String> reserved = new ArrayList<>();

    /** New sizes of wires of the loom that are renewed, by wire. */
    final Map<String, String> renewed = new LinkedHashMap<>();

    final List<Amendment> amendments = new ArrayList<>();
    final List<Finding> findings = new ArrayList<>();
    final List<KitNote> notes = new ArrayList<>();

    Draft(
            KitBench bench,
            Recipe recipe,
            Loom loom,
            Ids ids,
            Finds finds,
            Map<String, String> facts,
            Map<String, Answer> answers,
            Map<String, String> nodes) {
        this.bench = bench;
        this.recipe = recipe;
        this.loom = loom;
        this.tracing = Tracing.of(loom, bench.catalogue(), bench.behaviours());
        this.routes = new Routes(loom);
        this.currents = new Currents(loom, tracing, bench);
        this.ids = ids;
        this.finds = finds;
        this.facts = facts;
        this.answers = answers;
        this.nodes = nodes;
    }

    void note(ThingKind kind, String id, String rule, String text, Provenance provenance) {
        notes.add(new KitNote(Subject.of(kind, id), rule, text, provenance));
    }

    void refuse(String code, String text) {
        findings.add(
                Finding.fault(
                        "kit." + code, new Subject(ThingKind.REQUEST, recipe.id(), ""), text));
    }

    /** The name with answers in the place of words in braces. */
    String filled(String text) {
        String filled = text;
        for (Map.Entry<String, String> fact : facts.entrySet()) {
            filled = filled.replace("{" + fact.getKey() + "}", fact.getValue());
        }
        return filled;
    }

    Current current(Load load) {
        Current fixed = load.fixed();
        if (fixed != null) {
            return fixed;
        }
        String question = load.answer();
        Answer answer = question == null ? null : answers.get(question);
        if (!(answer instanceof Answer.Amount(BigDecimal amount))) {
            return Current.ZERO;
        }
        boolean watts =
                recipe.findQuestion(String.valueOf(question)).orElseThrow().kind()
                        == Question.Kind.WATTS;
        return watts
                ? Power.ofWatts(amount).at(loom.document().vehicle().system())
                : Current.ofAmperes(amount);
    }

    /** What flows through the devices of those keys together; a key that was not found or is not wanted counts for nothing. */
    Current load(Collection<String> keys) {
        Current sum = Current.ZERO;
        for (String key : keys) {
            sum = sum.plus(loads.getOrDefault(key, foundLoad(key)));
        }
        return sum;
    }

    private Current foundLoad(String key) {
        return currents.together(finds.all(key).stream().map(Device::id).toList());
    }

    /** Where a spot of the recipe is. */
    String node(String spot) {
        int colon = spot.indexOf(':');
        String key = spot.substring(colon + 1);
        return switch (spot.substring(0, colon)) {
            case "answer" -> nodes.getOrDefault(key, loom.datum());
            case "feed" ->
                    feeds.containsKey(key) ? feeds.get(key).at().point().node() : loom.datum();
            default -> device(key).points().getFirst().node();
        };
    }

    boolean has(String key) {
        return made.containsKey(key) || !finds.all(key).isEmpty();
    }

    Device device(String key) {
        Device device = made.get(key);
        if (device == null) {
            device = finds.all(key).stream().findFirst().orElse(null);
        }
        if (device == null) {
            throw new IllegalStateException(
                    "recipe %s speaks of %s, which is neither made nor found"
                            .formatted(recipe.id(), key));
        }
        return device;
    }

    /** The place {@code key/POINT}, or the outlet of {@code feed:key}. */
    Place place(String place) {
        if (place.startsWith("feed:")) {
            FeedChoice feed = feeds.get(place.substring("feed:".length()));
            if (feed == null) {
                throw new IllegalStateException(
                        "recipe %s has no %s under these answers".formatted(recipe.id(), place));
            }
            return feed.outlet(this);
        }
        int slash = place.indexOf('/');
        Device device = device(place.substring(0, slash));
        return new Place(device, point(device, place.substring(slash + 1)));
    }

    private Point point(Device device, String name) {
        return device.points().stream()
                .filter(point -> point.name().equals(name))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalStateException(
                                        "recipe %s wants point %s of %s, which has none"
                                                .formatted(recipe.id(), name, device.id())));
    }

    /** Notes one more wire end of the kit on a place; the first one on a feed's point was noted when the feed was found. */
    void countEnd(Place place) {
        if (!reserved.remove(place.id())) {
            addedEnds.merge(place.id(), 1, Integer::sum);
        }
    }

    /** Keeps room for a wire end on a place. */
    void reserve(Place place) {
        reserved.add(place.id());
        addedEnds.merge(place.id(), 1, Integer::sum);
    }

    /** How many wire ends are on a place, the kit's own among them. */
    int ends(String place) {
        long stock =
                loom.wires().values().stream()
                        .mapToLong(
                                wire ->
                                        (wire.a().place().equals(place) ? 1 : 0)
                                                + (wire.b().place().equals(place) ? 1 : 0))
                        .sum();
        return (int) stock + addedEnds.getOrDefault(place, 0);
    }
}
