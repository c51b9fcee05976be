package org.loomwright.document.sheet;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.document.sheet.electrical.ElectricalSide;

import java.time.LocalDate;
import java.util.List;

/**
 * Everything that a job sheet is made from.
 *
 * @param workOrderNumber printed on every page
 * @param revisionHash content hash of the frozen specification, 64 hexadecimal digits, printed on every page
 * @param revisionNumber number of the revision within its specification, from 1
 * @param customer who ordered it
 * @param workshop who does it
 * @param dueDate when it is promised, or null when nothing is agreed
 * @param notes anything else that was agreed; may be empty
 * @param status where the job stands, in words
 * @param preparedOn date of the sheet
 * @param change the stock loom beside the amended one
 * @param amendments what was ordered, in order
 * @param catalogue the tables that the analysis used; the sheet adds the loom's own colours
 * @param settings the settings that it used
 * @param pictures drawings of the loom
 * @param electrical currents, colours, open questions, and what the customer accepts
 */
public record JobSheet(
        String workOrderNumber,
        String revisionHash,
        int revisionNumber,
        String customer,
        String workshop,
        @Nullable LocalDate dueDate,
        String notes,
        String status,
        LocalDate preparedOn,
        ChangeAnalysis change,
        List<Amendment> amendments,
        Catalogue catalogue,
        AnalysisSettings settings,
        SheetPictures pictures,
        ElectricalSide electrical) {

    public JobSheet {
        amendments = List.copyOf(amendments);
        catalogue = change.after().loom().document().coloured(catalogue);
        if (workOrderNumber.isBlank()) {
            throw new IllegalArgumentException("a job sheet needs the number of its work order");
        }
        if (!revisionHash.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException(
                    "a revision hash is 64 hexadecimal digits, was '" + revisionHash + "'");
        }
    }
}
