package org.loomwright.exchange;

import org.loomwright.core.period.BackStep;
import org.loomwright.core.period.PeriodItem;
import org.loomwright.core.period.PeriodReport;

import tools.jackson.databind.node.ObjectNode;

/** Writes how far additions are of the period as JSON, in the order of the report. */
public final class PeriodWriter {

    private PeriodWriter() {}

    /**
     * @param report how far additions are of the period
     * @return it as JSON
     */
    public static ObjectNode write(PeriodReport report) {
        ObjectNode json = JsonParts.object();
        ObjectNode counts = JsonParts.object();
        report.counts()
                .forEach((judgement, count) -> counts.put(JsonThing.kebab(judgement), (int) count));
        json.set("counts", counts);
        json.set("items", JsonParts.array(report.items(), PeriodWriter::item));
        json.set("wayBack", JsonParts.array(report.wayBack(), PeriodWriter::step));
        json.set("notes", JsonParts.texts(report.notes()));
        return json;
    }

    private static ObjectNode item(PeriodItem item) {
        ObjectNode json = JsonParts.object();
        json.put("kind", JsonThing.kebab(item.subject().kind()));
        json.put("id", item.subject().id());
        json.put("aspect", JsonThing.kebab(item.aspect()));
        json.put("what", item.what());
        json.put("judgement", JsonThing.kebab(item.judgement()));
        json.put("why", item.why());
        OpenWriter.putProvenance(json, item.basis());
        if (item.alternative() != null) {
            json.put("alternative", item.alternative());
        }
        json.put("wayBack", item.wayBack());
        return json;
    }

    private static ObjectNode step(BackStep step) {
        ObjectNode json = JsonParts.object();
        json.put("act", JsonThing.kebab(step.act()));
        json.put("kind", JsonThing.kebab(step.subject().kind()));
        json.put("id", step.subject().id());
        json.put("text", step.text());
        return json;
    }
}
