package org.loomwright.document.sheet;

import org.loomwright.core.amendment.Amendment;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.sheet.content.AmendmentWords;
import org.loomwright.document.sheet.style.Type;

import java.util.List;
import java.util.Optional;

/** Branches, devices, coverings and openings that change, in words. */
final class OtherChangesSection {

    private final JobSheet sheet;

    OtherChangesSection(JobSheet sheet) {
        this.sheet = sheet;
    }

    void set(Flow flow) {
        flow.heading("Other changes: vehicle, branches, devices, coverings, openings");
        AmendmentWords words =
                new AmendmentWords(
                        sheet.change().before().loom(),
                        sheet.change().after().loom(),
                        sheet.catalogue());
        Table table =
                new Table(
                        List.of(
                                Column.words("Order", 44),
                                Column.words("What", 290),
                                Column.words("Why", 160)));
        boolean any = false;
        for (Amendment amendment : sheet.amendments()) {
            Optional<String> sentence = words.of(amendment);
            if (sentence.isPresent()) {
                any = true;
                table.row(
                        Type.strong(amendment.id()),
                        Type.words(sentence.get()),
                        Type.words(amendment.reason()));
            }
        }
        if (any) {
            flow.table(table);
        } else {
            flow.text("None.");
        }
    }
}
