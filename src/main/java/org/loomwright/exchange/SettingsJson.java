package org.loomwright.exchange;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.bundle.LayFactor;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.geometry.packing.Effort;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.routing.Allowances;
import org.loomwright.core.routing.TakeUp;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Reads and writes the settings of an analysis. What is left out keeps its usual value. */
public final class SettingsJson {

    private static final Ratio HIGHEST_TAKE_UP = new Ratio(500_000);
    private static final Ratio LOWEST_LAY = Ratio.ONE;
    private static final Ratio HIGHEST_LAY = new Ratio(1_000_000_000);
    private static final Ratio HIGHEST_LAY_FACTOR = new Ratio(2_000_000);
    private static final int MOST_RE_TERMINATIONS = 10;
    private static final Length LONGEST_STEP = Length.ofMillimetres(1_000);
    private static final String SIX_DECIMALS = "must have at most six decimals";

    private SettingsJson() {}

    /** How a take-up is given. */
    private enum TakeUpKind {
        GIVEN,
        FROM_LAY
    }

    /**
     * @param json parsed settings, which may be an empty object
     * @param pointer where they stand in the whole document
     * @return the settings, or every fault with its JSON pointer
     */
    public static Outcome<AnalysisSettings> read(JsonNode json, String pointer) {
        return JsonThing.read(json, pointer, ThingKind.SETTINGS, SettingsJson::settings);
    }

    private static AnalysisSettings settings(JsonThing json) {
        Allowances usual = Allowances.USUAL;
        TakeUp takeUp = json.findChild("takeUp", ThingKind.SETTINGS, SettingsJson::takeUp);
        int reTerminations = json.whole("reTerminations", usual.reTerminations());
        if (reTerminations < 0 || reTerminations > MOST_RE_TERMINATIONS) {
            json.fault("settings.out-of-range", "reTerminations", "must be 0 to 10");
            reTerminations = usual.reTerminations();
        }
        Length step = json.has("cutStepMm") ? json.length("cutStepMm") : usual.step();
        if (!step.isPositive() || step.isLongerThan(LONGEST_STEP)) {
            json.fault(
                    "settings.out-of-range",
                    "cutStepMm",
                    "must be more than 0 mm and at most " + LONGEST_STEP);
            step = usual.step();
        }
        Ratio factor = ratio(json, "layFactor", Ratio.ONE, HIGHEST_LAY_FACTOR);
        return new AnalysisSettings(
                new Allowances(takeUp == null ? usual.takeUp() : takeUp, reTerminations, step),
                factor == null ? LayFactor.PUBLISHED : new LayFactor(factor),
                json.has("packing") ? json.choice("packing", Effort.class) : Effort.NORMAL,
                OverrideJson.read(json));
    }

    private static TakeUp takeUp(JsonThing json) {
        TakeUp takeUp =
                switch (json.choice("kind", TakeUpKind.class)) {
                    case GIVEN -> {
                        Ratio ratio = required(json, "ratio", Ratio.ZERO, HIGHEST_TAKE_UP);
                        yield ratio == null ? Allowances.USUAL.takeUp() : new TakeUp.Given(ratio);
                    }
                    case FROM_LAY -> {
                        Ratio multiple = required(json, "layMultiple", LOWEST_LAY, HIGHEST_LAY);
                        yield multiple == null
                                ? Allowances.USUAL.takeUp()
                                : new TakeUp.FromLay(multiple);
                    }
                };
        json.refuseOthers();
        return takeUp;
    }

    private static @Nullable Ratio required(JsonThing json, String field, Ratio least, Ratio most) {
        if (!json.has(field)) {
            json.fault("json.missing-field", field, "is missing");
        }
        return ratio(json, field, least, most);
    }

    private static @Nullable Ratio ratio(JsonThing json, String field, Ratio least, Ratio most) {
        Ratio ratio = json.findDecimal(field, Ratio::of, SIX_DECIMALS);
        if (ratio != null && (ratio.compareTo(least) < 0 || ratio.compareTo(most) > 0)) {
            json.fault("settings.out-of-range", field, "must be %s to %s".formatted(least, most));
            return null;
        }
        return ratio;
    }

    /**
     * @param settings settings
     * @return them as JSON; only where there are no own figures nothing is said of them
     */
    public static ObjectNode write(AnalysisSettings settings) {
        Allowances allowances = settings.allowances();
        ObjectNode json = JsonParts.object();
        json.set(
                "takeUp",
                switch (allowances.takeUp()) {
                    case TakeUp.Given given ->
                            JsonParts.object()
                                    .put("kind", JsonThing.kebab(TakeUpKind.GIVEN))
                                    .put("ratio", given.ratio().toFraction());
                    case TakeUp.FromLay lay ->
                            JsonParts.object()
                                    .put("kind", JsonThing.kebab(TakeUpKind.FROM_LAY))
                                    .put("layMultiple", lay.layMultiple().toFraction());
                });
        json.put("reTerminations", allowances.reTerminations());
        json.set("cutStepMm", JsonParts.millimetres(allowances.step()));
        json.put("layFactor", settings.layFactor().fromSeven().toFraction());
        json.put("packing", JsonThing.kebab(settings.effort()));
        if (!settings.overrides().isEmpty()) {
            json.set("overrides", OverrideJson.write(settings.overrides()));
        }
        return json;
    }
}
