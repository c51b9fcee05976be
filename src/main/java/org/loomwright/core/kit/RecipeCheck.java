package org.loomwright.core.kit;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.Question.Kind;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Whether the parts of a recipe speak of what there is: its own keys and questions, and codes of the catalogue. */
public final class RecipeCheck {

    private final Recipe recipe;
    private final Catalogue catalogue;
    private final Set<String> keys = new HashSet<>();
    private final Set<String> feeds = new HashSet<>();
    private final List<Finding> faults = new ArrayList<>();

    private RecipeCheck(Recipe recipe, Catalogue catalogue) {
        this.recipe = recipe;
        this.catalogue = catalogue;
        recipe.finds().forEach(found -> addKey(found.key()));
        recipe.devices().forEach(device -> addKey(device.key()));
        recipe.feeds().forEach(feed -> feeds.add(feed.key()));
    }

    /**
     * @return everything that is wrong in the recipe
     */
    public static List<Finding> check(Recipe recipe, Catalogue catalogue) {
        return new RecipeCheck(recipe, catalogue).run();
    }

    private List<Finding> run() {
        recipe.questions().forEach(this::checkQuestion);
        recipe.finds().forEach(this::checkFound);
        recipe.needs().forEach(need -> checkWhen(need.when()));
        recipe.devices().forEach(this::checkDevice);
        recipe.feeds().forEach(this::checkFeed);
        recipe.wires().forEach(this::checkWire);
        recipe.changes().forEach(this::checkChange);
        recipe.reminders().forEach(this::checkReminder);
        return faults;
    }

    private void unless(boolean right, String text) {
        if (!right) {
            faults.add(
                    Finding.fault(
                            "kit.recipe-wrong",
                            Subject.of(ThingKind.REQUEST, recipe.id()),
                            "%s.".formatted(text)));
        }
    }

    private void addKey(String key) {
        unless(keys.add(key), "Two parts have the key " + key);
    }

    private void checkKeys(Collection<String> used) {
        used.forEach(key -> unless(keys.contains(key), "Nothing has the key " + key));
    }

    private void checkWhen(When when) {
        for (String fact : when.allowed().keySet()) {
            boolean known =
                    fact.startsWith("vehicle.")
                            || fact.startsWith("found.") && keys.contains(fact.substring(6))
                            || recipe.findQuestion(fact).isPresent();
            unless(known, "A condition asks for %s, which nobody answers".formatted(fact));
        }
    }

    private void checkAnswer(@Nullable String question, Kind... kinds) {
        if (question != null) {
            unless(
                    recipe.findQuestion(question)
                            .filter(it -> List.of(kinds).contains(it.kind()))
                            .isPresent(),
                    "There is no question %s of that kind".formatted(question));
        }
    }

    private void checkLoad(@Nullable Load load) {
        if (load != null) {
            checkAnswer(load.answer(), Kind.AMPERES, Kind.WATTS);
        }
    }

    private void checkQuestion(Question question) {
        checkWhen(question.when());
        question.near().forEach(this::checkSelector);
        String usual = question.usual();
        boolean sane =
                usual == null
                        || question.kind() != Kind.CHOICE
                        || usual.startsWith("{")
                        || question.choices().stream().anyMatch(it -> it.value().equals(usual));
        unless(sane, "The usual answer to %s is none of its choices".formatted(question.id()));
    }

    private void checkSelector(Selector selector) {
        selector.serves().forEach(this::checkService);
    }

    private void checkService(@Nullable String code) {
        unless(
                code == null || code.contains("{") || catalogue.findService(code).isPresent(),
                "There is no service " + code);
    }

    private void checkFound(Found found) {
        checkWhen(found.when());
        checkSelector(found.selector());
        checkAnswer(found.answer(), Kind.DEVICE, Kind.WIRE);
        if (found.wiredTo() != null) {
            checkPlace(found.wiredTo());
        }
    }

    private void checkDevice(DevicePart device) {
        checkWhen(device.when());
        checkService(device.serves());
        checkLoad(device.load());
        checkLoad(device.rating());
        for (DevicePart.PointPart point : device.points()) {
            checkWhen(point.when());
            checkSpot(point.at());
            unless(
                    point.terminal() == null
                            || catalogue.findTerminal(point.terminal()).isPresent(),
                    "There is no terminal " + point.terminal());
        }
        device.fuses().forEach(fuse -> checkKeys(fuse.feeds()));
    }

    private void checkSpot(String spot) {
        int colon = spot.indexOf(':');
        String key = spot.substring(colon + 1);
        boolean known =
                switch (spot.substring(0, Math.max(colon, 0))) {
                    case "answer" ->
                            recipe.findQuestion(key)
                                    .filter(it -> it.kind() == Kind.NODE)
                                    .isPresent();
                    case "feed" -> feeds.contains(key);
                    case "device" -> keys.contains(key);
                    default -> false;
                };
        unless(known, "There is no spot " + spot);
    }

    private void checkFeed(FeedPart feed) {
        checkWhen(feed.when());
        checkKeys(feed.feeds());
        checkSpot(feed.towards());
        feed.options().forEach(option -> checkWhen(option.when()));
        boolean fused = feed.options().stream().anyMatch(FeedPart.Option::ownFuse);
        unless(
                !fused || feed.fuse() != null && keys.contains(feed.fuse()),
                "The feed %s wants its own fuse and has none".formatted(feed.key()));
    }

    private void checkPlace(String place) {
        boolean known =
                place.equals(WirePart.EARTH)
                        || place.startsWith(WirePart.FEED)
                                && feeds.contains(place.substring(WirePart.FEED.length()))
                        || place.contains("/")
                                && keys.contains(place.substring(0, place.indexOf('/')));
        unless(known, "There is no place " + place);
        recipe.devices().stream()
                .filter(device -> place.startsWith(device.key() + "/"))
                .forEach(device -> unless(hasPoint(device, place), "There is no point " + place));
    }

    private static boolean hasPoint(DevicePart device, String place) {
        return device.points().stream()
                .anyMatch(point -> place.equals(device.key() + "/" + point.name()));
    }

    private void checkWire(WirePart wire) {
        checkWhen(wire.when());
        Stream.of(wire.from(), wire.to()).forEach(this::checkPlace);
        checkKeys(wire.carries());
        checkLoad(wire.bearing());
        boolean known =
                wire.colour().equals(WirePart.BY_SUPPLY)
                        || WireColour.isWellFormed(wire.colour())
                                && catalogue.hasColour(WireColour.parse(wire.colour()));
        unless(known, "There is no colour " + wire.colour());
        unless(
                wire.least() == null || catalogue.findSize(wire.least()).isPresent(),
                "There is no size " + wire.least());
    }

    private void checkChange(ChangePart change) {
        checkWhen(change.when());
        switch (change) {
            case ChangePart.MoveEnds move -> {
                checkWires(move.wires());
                checkPlace(move.to());
            }
            case ChangePart.Renew renew -> {
                checkWires(renew.wires());
                checkKeys(renew.carries());
                checkLoad(renew.bearing());
                if (renew.behind() != null) {
                    checkPlace(renew.behind());
                }
            }
            case ChangePart.Remove remove -> checkWires(remove.wires());
            case ChangePart.RemoveDevice remove -> checkKeys(List.of(remove.key()));
            case ChangePart.Become become -> {
                checkKeys(List.of(become.key()));
                checkLoad(become.load());
                checkLoad(become.rating());
            }
            case ChangePart.Vehicle vehicle ->
                    unless(
                            vehicle.earth() == null
                                    || Set.of("positive", "negative").contains(vehicle.earth()),
                            "There is no earth " + vehicle.earth());
        }
    }

    private void checkWires(ChangePart.Wires wires) {
        if (wires.on().startsWith("answer:")) {
            checkAnswer(wires.on().substring("answer:".length()), Kind.WIRE);
        } else {
            checkPlace(wires.on());
        }
        if (wires.other() != null) {
            checkKeys(List.of(wires.other()));
        }
    }

    private void checkReminder(Reminder reminder) {
        checkWhen(reminder.when());
        checkAnswer(reminder.below(), Kind.AMPERES);
        if (reminder.about() != null) {
            checkSelector(reminder.about());
        }
    }
}
