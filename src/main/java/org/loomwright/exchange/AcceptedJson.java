package org.loomwright.exchange;

import org.loomwright.core.finding.AcceptedFinding;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads and writes the findings that a customer accepts. */
public final class AcceptedJson {

    private static final int MOST = 1_000;
    private static final int LONGEST_REASON = 300;

    private AcceptedJson() {}

    /**
     * @param json a parsed array of accepted findings
     * @param pointer where it stands in the whole document
     * @return the accepted findings in their order, or every fault with its JSON pointer
     */
    public static Outcome<List<AcceptedFinding>> read(JsonNode json, String pointer) {
        if (!json.isArray() || json.size() > MOST) {
            return Outcome.rejected(
                    List.of(
                            Finding.fault(
                                    "json.wrong-type",
                                    new Subject(ThingKind.SPECIFICATION, "", pointer),
                                    "%s must be an array of at most %d accepted findings."
                                            .formatted(pointer, MOST))));
        }
        List<Finding> faults = new ArrayList<>();
        List<AcceptedFinding> accepted = new ArrayList<>();
        Set<AcceptedFinding> seen = new HashSet<>();
        for (int i = 0; i < json.size(); i++) {
            JsonThing thing =
                    new JsonThing(json.get(i), pointer + "/" + i, ThingKind.SPECIFICATION, faults);
            AcceptedFinding one = accepted(thing);
            if (!seen.add(new AcceptedFinding(one.code(), one.kind(), one.id(), ""))) {
                thing.fault("specification.accepted-twice", "code", "is accepted above already");
            }
            accepted.add(one);
        }
        return faults.isEmpty() ? Outcome.accepted(accepted) : Outcome.rejected(faults);
    }

    private static AcceptedFinding accepted(JsonThing json) {
        AcceptedFinding accepted =
                new AcceptedFinding(
                        json.text("code"),
                        json.choice("kind", ThingKind.class),
                        json.text("id"),
                        json.line("reason", LONGEST_REASON));
        json.refuseOthers();
        return accepted;
    }

    /**
     * @param accepted accepted findings
     * @return them as JSON
     */
    public static ArrayNode write(List<AcceptedFinding> accepted) {
        return JsonParts.array(
                accepted,
                one ->
                        JsonParts.object()
                                .put("code", one.code())
                                .put("kind", JsonThing.kebab(one.kind()))
                                .put("id", one.id())
                                .put("reason", one.reason()));
    }
}
