package org.loomwright.exchange;

import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.ChangePart;
import org.loomwright.core.kit.ChangePart.Wires;
import org.loomwright.core.loom.DeviceKind;

/** Reads the changes of a recipe. */
final class ChangeReader {

    /** The words for changes. */
    private enum Kind {
        MOVE_ENDS,
        RENEW,
        REMOVE,
        REMOVE_DEVICE,
        BECOME,
        VEHICLE
    }

    private ChangeReader() {}

    static ChangePart change(JsonThing json) {
        String reason = json.text("reason");
        return switch (json.choice("kind", Kind.class)) {
            case MOVE_ENDS ->
                    new ChangePart.MoveEnds(
                            wires(json), json.text("to"), reason, RecipeReader.when(json));
            case RENEW ->
                    new ChangePart.Renew(
                            wires(json),
                            json.texts("carries"),
                            RecipeReader.load(json, "bearing"),
                            json.findText("behind"),
                            reason,
                            RecipeReader.when(json));
            case REMOVE -> new ChangePart.Remove(wires(json), reason, RecipeReader.when(json));
            case REMOVE_DEVICE ->
                    new ChangePart.RemoveDevice(
                            json.text("device"), reason, RecipeReader.when(json));
            case BECOME ->
                    new ChangePart.Become(
                            json.text("device"),
                            json.text("name"),
                            json.choice("deviceKind", DeviceKind.class),
                            RecipeReader.load(json, "load"),
                            RecipeReader.load(json, "rating"),
                            reason,
                            RecipeReader.when(json));
            case VEHICLE ->
                    new ChangePart.Vehicle(
                            json.findText("earth"),
                            json.findWhole("volts"),
                            reason,
                            RecipeReader.when(json));
        };
    }

    private static Wires wires(JsonThing json) {
        JsonThing child = json.child("wires", ThingKind.REQUEST);
        return RecipeReader.<Wires>own(it -> new Wires(it.text("on"), it.findText("other")))
                .apply(child);
    }
}
