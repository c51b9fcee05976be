package org.loomwright.api;

import org.loomwright.app.Specifications;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.finding.AcceptedFinding;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.exchange.AcceptedJson;
import org.loomwright.exchange.AmendmentReader;
import org.loomwright.exchange.JsonThing;
import org.loomwright.exchange.SettingsJson;

import tools.jackson.databind.JsonNode;

import java.util.List;
import java.util.UUID;

/**
 * What is sent to begin a specification.
 *
 * @param loomId the loom to start from
 * @param wishes what is to be changed
 */
record SpecificationBody(UUID loomId, Specifications.Wishes wishes) {

    static final int LONGEST_TITLE = 200;

    static Outcome<SpecificationBody> readNew(JsonNode json) {
        return JsonThing.read(
                json,
                "",
                ThingKind.SPECIFICATION,
                thing -> new SpecificationBody(thing.id("loomId"), wishes(thing)));
    }

    static Outcome<Specifications.Wishes> readChanged(JsonNode json) {
        return JsonThing.read(json, "", ThingKind.SPECIFICATION, SpecificationBody::wishes);
    }

    private static Specifications.Wishes wishes(JsonThing thing) {
        String title = thing.line("title", LONGEST_TITLE);
        Outcome<List<Amendment>> amendments =
                AmendmentReader.read(thing.part("amendments"), "/amendments");
        Outcome<AnalysisSettings> settings =
                thing.has("settings")
                        ? SettingsJson.read(thing.part("settings"), "/settings")
                        : Outcome.accepted(AnalysisSettings.USUAL);
        Outcome<List<AcceptedFinding>> accepted =
                thing.has("accepted")
                        ? AcceptedJson.read(thing.part("accepted"), "/accepted")
                        : Outcome.accepted(List.of());
        return new Specifications.Wishes(
                title,
                orNoting(amendments, List.of(), thing),
                orNoting(settings, AnalysisSettings.USUAL, thing),
                orNoting(accepted, List.of(), thing));
    }

    private static <T> T orNoting(Outcome<T> outcome, T otherwise, JsonThing thing) {
        return switch (outcome) {
            case Outcome.Accepted<T>(T value) -> value;
            case Outcome.Rejected<T>(List<Finding> reasons) -> {
                thing.faults(reasons);
                yield otherwise;
            }
        };
    }
}
