package org.loomwright.exchange;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.charging.ChargingBalance;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.Figure;
import org.loomwright.core.electrical.check.current.CheckedFinding;
import org.loomwright.core.electrical.fault.FuseLoss;
import org.loomwright.core.electrical.fault.FuseOnWay;
import org.loomwright.core.electrical.fault.Heated;
import org.loomwright.core.electrical.fault.ShortCircuit;
import org.loomwright.core.electrical.report.ElectricalReport;
import org.loomwright.core.electrical.report.ScenarioFigures;
import org.loomwright.core.electrical.report.WireFigures;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.quantity.Current;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

import java.math.BigDecimal;
import java.util.Collection;

/** Writes electrical reports as JSON, in the order of the report. */
public final class ElectricalReportWriter {

    private ElectricalReportWriter() {}

    /**
     * @param report the electrical side of a loom
     * @return it as JSON
     */
    public static ObjectNode write(ElectricalReport report) {
        ObjectNode json = JsonParts.object();
        json.set(
                "scenarios", JsonParts.array(report.scenarios(), ElectricalReportWriter::scenario));
        json.put("ampereHoursPerDay", report.ampereHoursPerDay());
        json.set("findings", findings(report.findings()));
        json.set("wires", JsonParts.array(report.wires(), ElectricalReportWriter::wire));
        json.set("shorts", JsonParts.array(report.shorts(), ElectricalReportWriter::shorted));
        json.set("fuses", JsonParts.array(report.losses(), ElectricalReportWriter::loss));
        return json;
    }

    /**
     * Whether two reports, as written here, agree in every current, balance and time. Findings are words about the figures and may be
     * worded better one day.
     *
     * @param one a report
     * @param other another one
     * @return whether their figures are the same
     */
    public static boolean haveSameFigures(JsonNode one, JsonNode other) {
        return figures(one).equals(figures(other));
    }

    private static String figures(JsonNode report) {
        JsonNode copy = report.deepCopy();
        if (copy instanceof ObjectNode object) {
            object.remove("findings");
        }
        copy.findParents("fuse").forEach(parent -> ((ObjectNode) parent).remove("fuse"));
        return CanonicalJson.of(copy).text();
    }

    /**
     * @param findings findings with their figures
     * @return them as JSON, in their order
     */
    public static ArrayNode findings(Collection<CheckedFinding> findings) {
        return JsonParts.array(findings, ElectricalReportWriter::checked);
    }

    private static ObjectNode scenario(ScenarioFigures figures) {
        ObjectNode json = JsonParts.object();
        json.set("scenario", ScenarioJson.write(figures.scenario()));
        json.put("drawnA", figures.drawn().toAmperes());
        json.set("charging", charging(figures.charging()));
        Current recordedDrawn = figures.recordedDrawn();
        ChargingBalance recorded = figures.recordedCharging();
        if (recordedDrawn != null && recorded != null) {
            json.put("recordedDrawnA", recordedDrawn.toAmperes());
            json.set("recordedCharging", charging(recorded));
        }
        return json;
    }

    private static ObjectNode charging(ChargingBalance balance) {
        ObjectNode json = JsonParts.object();
        json.put("generatorA", balance.output().toAmperes());
        json.put("drawnOnAverageA", balance.drawn().toAmperes());
        json.put("balanceA", balance.balance().toAmperes());
        BigDecimal hours = balance.hoursToFlat();
        if (hours != null) {
            json.put("hoursToFlat", hours);
        }
        return json;
    }

    private static ObjectNode checked(CheckedFinding checked) {
        ElectricalFinding electrical = checked.finding();
        Finding finding = electrical.finding();
        ObjectNode json = JsonParts.object();
        json.put("code", finding.code());
        json.put("severity", JsonThing.kebab(finding.severity()));
        json.put("kind", JsonThing.kebab(finding.subject().kind()));
        json.put("id", finding.subject().id());
        json.put("text", finding.text());
        json.put("scenario", electrical.scenario());
        put(json, "figure", electrical.figure());
        put(json, "limit", electrical.limit());
        put(json, "margin", electrical.margin().orElse(null));
        OpenWriter.putProvenance(json, electrical.source());
        json.put("remedy", electrical.remedy());
        checked.change()
                .ifPresent(
                        change -> json.set("change", AmendmentWriter.write(change.amendments())));
        return json;
    }

    private static void put(ObjectNode json, String name, @Nullable Figure figure) {
        if (figure != null) {
            json.set(
                    name,
                    JsonParts.object().put("value", figure.value()).put("unit", figure.unit()));
        }
    }

    private static ObjectNode wire(WireFigures wire) {
        return JsonParts.object()
                .put("wire", wire.wire())
                .put("mostA", wire.current().toAmperes())
                .put("scenario", wire.scenario());
    }

    private static ObjectNode shorted(ShortCircuit shorted) {
        ObjectNode json = JsonParts.object();
        json.put("wire", shorted.wire());
        json.put("scenario", shorted.scenario());
        json.put("place", shorted.place());
        json.put("currentA", shorted.current().toAmperes());
        json.set("heated", JsonParts.array(shorted.heated(), ElectricalReportWriter::heated));
        FuseOnWay fuse = shorted.fuse();
        if (fuse != null) {
            json.put("fuse", fuse.words());
        }
        json.put("fuseOpensFirst", shorted.opensFirst());
        json.set("dark", JsonParts.texts(shorted.dark()));
        return json;
    }

    private static ObjectNode heated(Heated heated) {
        return JsonParts.object()
                .put("wire", heated.wire())
                .put("currentA", heated.current().toAmperes())
                .put("harmedAfterS", BigDecimal.valueOf(heated.harmed().toMillis(), 3));
    }

    private static ObjectNode loss(FuseLoss loss) {
        ObjectNode json = JsonParts.object();
        json.put("device", loss.device());
        json.put("from", loss.from());
        json.put("to", loss.to());
        json.set("dark", JsonParts.texts(loss.dark()));
        return json;
    }
}
