package org.loomwright.document.sheet.electrical;

import org.loomwright.core.colour.ColourReport;
import org.loomwright.core.electrical.report.ElectricalBasis;
import org.loomwright.core.electrical.report.ElectricalReport;
import org.loomwright.core.finding.AcceptedFinding;
import org.loomwright.core.open.OpenReport;
import org.loomwright.document.sheet.content.Acceptance;

import java.util.List;

/**
 * What a job sheet says about the electrical side. The report holds the frozen figures and what was accepted is frozen itself; colours
 * and open questions are those of the day on which the sheet is made.
 *
 * @param basis tables and limits that everything rests on
 * @param report currents, charging, fuses and their findings
 * @param colours colours of new wires and of what was recorded
 * @param open what nobody has said
 * @param accepted findings that the customer takes as they are
 */
public record ElectricalSide(
        ElectricalBasis basis,
        ElectricalReport report,
        ColourReport colours,
        OpenReport open,
        List<AcceptedFinding> accepted) {

    public ElectricalSide {
        accepted = List.copyOf(accepted);
    }

    /** @return what was accepted, to ask about single findings */
    public Acceptance acceptance() {
        return new Acceptance(accepted);
    }
}
