package org.loomwright.document.sheet;

import org.loomwright.document.pdf.DocumentFacts;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Paper;
import org.loomwright.document.pdf.PdfFile;
import org.loomwright.document.sheet.content.WireWork;
import org.loomwright.document.sheet.electrical.AcceptedSection;
import org.loomwright.document.sheet.electrical.ColoursSection;
import org.loomwright.document.sheet.electrical.ElectricalSection;
import org.loomwright.document.sheet.electrical.LimitsSection;
import org.loomwright.document.sheet.electrical.OpenSection;

/** Writes a job sheet as a PDF file. The same sheet gives the same bytes. */
public final class JobSheetPdf {

    private JobSheetPdf() {}

    /**
     * @param sheet what to print
     * @return the file
     */
    public static byte[] write(JobSheet sheet) {
        Flow flow = new Flow(Paper.A4);
        WireWork work = new WireWork(sheet.change(), sheet.amendments(), sheet.catalogue());
        new SummarySection(sheet, work).set(flow);
        new DrawingSection(sheet).set(flow);
        new WiresSection(sheet, work).set(flow);
        new OtherChangesSection(sheet).set(flow);
        new CutListSection(sheet, work).set(flow);
        new BranchSection(sheet).set(flow);
        new CrossSectionsSection(sheet).set(flow);
        new ElectricalSection(sheet.change(), sheet.electrical()).set(flow);
        new ColoursSection(sheet.change(), sheet.electrical()).set(flow);
        new AcceptedSection(sheet.change(), sheet.electrical()).set(flow);
        new OpenSection(sheet.electrical().open()).set(flow);
        new LimitsSection(sheet.change().after().loom(), sheet.electrical()).set(flow);
        CautionsSection.set(flow);
        SignOffSection.set(flow);
        return new PdfFile(facts(sheet), new SheetFrame(sheet))
                .write(flow.pages(), flow.bookmarks());
    }

    private static DocumentFacts facts(JobSheet sheet) {
        String loom = sheet.change().after().loom().name();
        return new DocumentFacts(
                "Job sheet " + sheet.workOrderNumber() + ", " + loom,
                sheet.workshop(),
                "Rebinding of %s, revision %d".formatted(loom, sheet.revisionNumber()),
                "wiring loom, job sheet, work order " + sheet.workOrderNumber(),
                "en-GB",
                sheet.preparedOn(),
                sheet.workOrderNumber() + "/" + sheet.revisionHash());
    }
}
