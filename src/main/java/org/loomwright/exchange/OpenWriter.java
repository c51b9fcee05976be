package org.loomwright.exchange;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.open.OpenPoint;
import org.loomwright.core.open.OpenReport;
import org.loomwright.core.open.OpenReport.Score;

import tools.jackson.databind.node.ObjectNode;

/** Writes what is open as JSON, in the order of the report. */
public final class OpenWriter {

    private OpenWriter() {}

    /**
     * @param report what is open
     * @return it as JSON
     */
    public static ObjectNode write(OpenReport report) {
        ObjectNode json = JsonParts.object();
        json.set("price", score(report.price()));
        json.set("build", score(report.build()));
        json.set("total", score(report.total()));
        report.next().ifPresent(point -> json.set("next", point(point)));
        json.set("points", JsonParts.array(report.points(), OpenWriter::point));
        json.set("cautions", JsonParts.texts(report.cautions()));
        return json;
    }

    private static ObjectNode score(Score score) {
        return JsonParts.object()
                .put("percent", score.percent())
                .put("said", score.said())
                .put("asked", score.asked());
    }

    private static ObjectNode point(OpenPoint point) {
        ObjectNode json = JsonParts.object();
        json.put("code", point.code());
        json.put("kind", JsonThing.kebab(point.subject().kind()));
        json.put("id", point.subject().id());
        json.put("neededFor", JsonThing.kebab(point.neededFor()));
        json.put("weight", point.weight());
        json.put("text", point.text());
        json.put("question", point.question());
        putProvenance(json, point.basis());
        return json;
    }

    /** Nothing where the rule follows from the work itself. */
    static void putProvenance(ObjectNode json, @Nullable Provenance provenance) {
        if (provenance != null) {
            json.put("status", provenance.status().words());
            json.put("source", provenance.source());
        }
    }
}
