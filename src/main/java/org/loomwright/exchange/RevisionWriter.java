package org.loomwright.exchange;

import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.electrical.report.ElectricalReport;
import org.loomwright.core.finding.AcceptedFinding;

import tools.jackson.databind.node.ObjectNode;

import java.util.List;
import java.util.UUID;

/** Writes a whole revision as one JSON document: all that was known and computed when it was frozen. */
public final class RevisionWriter {

    /** Name of the member that holds the analysis. */
    public static final String ANALYSIS = "analysis";

    /** Name of the member that holds the electrical side. */
    public static final String ELECTRICS = "electrics";

    /** Name of the member that holds the findings that the customer accepts. */
    public static final String ACCEPTED = "accepted";

    private static final int FORMAT_VERSION = 1;

    private RevisionWriter() {}

    /**
     * @param specificationId the specification that is frozen
     * @param title what it is called
     * @param amendments what is to be changed, in order
     * @param settings what was calculated with
     * @param accepted findings that the customer takes as they are
     * @param analysis what was calculated, with stock and amended loom
     * @param electrics its electrical side
     * @return the document
     */
    public static ObjectNode write(
            UUID specificationId,
            String title,
            List<Amendment> amendments,
            AnalysisSettings settings,
            List<AcceptedFinding> accepted,
            ChangeAnalysis analysis,
            ElectricalReport electrics) {
        ObjectNode json = JsonParts.object();
        json.put("formatVersion", FORMAT_VERSION);
        json.put("specificationId", specificationId.toString());
        json.put("title", title);
        json.set("stock", LoomWriter.write(analysis.before().loom().document()));
        json.set("amendments", AmendmentWriter.write(amendments));
        json.set("settings", SettingsJson.write(settings));
        json.set(ACCEPTED, AcceptedJson.write(accepted));
        json.set("amended", LoomWriter.write(analysis.after().loom().document()));
        json.set(ANALYSIS, AnalysisWriter.write(analysis));
        json.set(ELECTRICS, ElectricalReportWriter.write(electrics));
        return json;
    }
}
