package org.loomwright.exchange;

import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.analysis.LoomAnalysis;
import org.loomwright.core.analysis.SegmentChange;
import org.loomwright.core.bundle.SegmentBundle;
import org.loomwright.core.bundle.WireClass;
import org.loomwright.core.bundle.WireCounts;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.routing.CutLength;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

import java.util.Collection;
import java.util.Map;

/** Writes analyses as JSON. Everything is in the order of the analysis, so equal analyses give equal JSON. */
public final class AnalysisWriter {

    private AnalysisWriter() {}

    /**
     * @param analysis analysis of one loom
     * @return it as JSON
     */
    public static ObjectNode write(LoomAnalysis analysis) {
        ObjectNode json = JsonParts.object();
        json.set(
                "segments",
                JsonParts.array(analysis.bundles().bySegment().values(), AnalysisWriter::segment));
        json.set("cutLengths", cutLengths(analysis.cutLengths().values()));
        json.set("findings", findings(analysis.findings()));
        return json;
    }

    /**
     * @param analysis a stock loom beside the amended one
     * @return it as JSON
     */
    public static ObjectNode write(ChangeAnalysis analysis) {
        ObjectNode json = JsonParts.object();
        json.set("segments", JsonParts.array(analysis.segments(), AnalysisWriter::change));
        json.set("gone", JsonParts.array(analysis.gone(), AnalysisWriter::segment));
        json.set("cutLengths", cutLengths(analysis.after().cutLengths().values()));
        json.set("findings", findings(analysis.findings()));
        return json;
    }

    /**
     * @param findings findings in their order
     * @return them as a JSON array
     */
    public static ArrayNode findings(Collection<Finding> findings) {
        return JsonParts.array(
                findings,
                finding -> {
                    ObjectNode json = JsonParts.object();
                    json.put("code", finding.code());
                    json.put("severity", JsonThing.kebab(finding.severity()));
                    json.put("kind", JsonThing.kebab(finding.subject().kind()));
                    json.put("id", finding.subject().id());
                    json.put("text", finding.text());
                    return json;
                });
    }

    /**
     * Whether two analyses, as written here, agree in every count, length and diameter. Findings and explanations are words about
     * the figures and may be worded better one day.
     *
     * @param one an analysis of a change
     * @param other another one
     * @return whether their figures are the same
     */
    public static boolean haveSameFigures(JsonNode one, JsonNode other) {
        return figures(one).equals(figures(other));
    }

    private static String figures(JsonNode analysis) {
        JsonNode copy = analysis.deepCopy();
        if (copy instanceof ObjectNode object) {
            object.remove("findings");
        }
        copy.findParents("howFound").forEach(parent -> ((ObjectNode) parent).remove("howFound"));
        return CanonicalJson.of(copy).text();
    }

    private static ObjectNode segment(SegmentBundle bundle) {
        ObjectNode json = JsonParts.object();
        json.put("segment", bundle.segment().id());
        json.put("from", bundle.segment().from());
        json.put("to", bundle.segment().to());
        json.set("lengthMm", JsonParts.millimetres(bundle.segment().length()));
        json.setAll(bundle(bundle));
        return json;
    }

    private static ObjectNode bundle(SegmentBundle bundle) {
        ObjectNode json = JsonParts.object();
        json.put("wireCount", bundle.counts().total());
        json.set("wires", counts(bundle.counts()));
        json.set("byColour", tally(bundle.counts().byColour()));
        json.set("bySize", tally(bundle.counts().bySize()));
        json.set("tightDiameterMm", JsonParts.millimetres(bundle.tight()));
        json.set("laidDiameterMm", JsonParts.millimetres(bundle.laid()));
        json.set("coveredDiameterMm", JsonParts.millimetres(bundle.covered()));
        json.set("tightLowerBoundMm", JsonParts.millimetres(bundle.packed().lowerBound()));
        json.put("howFound", bundle.howFound());
        return json;
    }

    private static ObjectNode change(SegmentChange change) {
        ObjectNode json = JsonParts.object();
        SegmentBundle before = change.before();
        json.put("segment", change.segment());
        if (before != null) {
            json.put("recordedAs", before.segment().id());
            json.set("before", bundle(before));
        }
        json.set("after", segment(change.after()));
        json.set("added", counts(change.added()));
        json.set("removed", counts(change.removed()));
        json.set("growthMm", JsonParts.millimetres(change.growth()));
        return json;
    }

    private static ArrayNode counts(WireCounts counts) {
        return JsonParts.array(
                counts.byClass().entrySet(),
                (Map.Entry<WireClass, Integer> entry) ->
                        JsonParts.object()
                                .put("colour", entry.getKey().colour().letters())
                                .put("size", entry.getKey().size())
                                .put("count", entry.getValue().intValue()));
    }

    private static ObjectNode tally(Map<String, Integer> tally) {
        ObjectNode json = JsonParts.object();
        tally.forEach((name, count) -> json.put(name, count.intValue()));
        return json;
    }

    private static ArrayNode cutLengths(Collection<CutLength> lengths) {
        return JsonParts.array(lengths, AnalysisWriter::cutLength);
    }

    private static ObjectNode cutLength(CutLength cut) {
        ObjectNode json = JsonParts.object();
        json.put("wire", cut.wire());
        json.set("alongLoomMm", JsonParts.millimetres(cut.alongLoom()));
        json.set("tailAMm", JsonParts.millimetres(cut.tailA()));
        json.set("tailBMm", JsonParts.millimetres(cut.tailB()));
        json.set("takeUpMm", JsonParts.millimetres(cut.takeUp()));
        json.set("terminationAMm", JsonParts.millimetres(cut.terminationA()));
        json.set("terminationBMm", JsonParts.millimetres(cut.terminationB()));
        json.set("reserveMm", JsonParts.millimetres(cut.reserve()));
        json.set("roundingMm", JsonParts.millimetres(cut.rounding()));
        json.set("cutMm", JsonParts.millimetres(cut.cut()));
        return json;
    }
}
