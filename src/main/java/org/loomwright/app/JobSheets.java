package org.loomwright.app;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.report.ElectricalReports.Changes;
import org.loomwright.document.sheet.JobSheet;
import org.loomwright.document.sheet.JobSheetPdf;
import org.loomwright.document.sheet.SheetPictures;
import org.loomwright.document.sheet.electrical.ElectricalSide;
import org.springframework.stereotype.Service;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.UUID;

/** Makes the job sheet of a work order from what it pins. */
@Service
public class JobSheets {

    private final WorkOrders workOrders;
    private final Revisions revisions;
    private final Analyses analyses;
    private final Electrics electrics;
    private final Clock clock;

    JobSheets(
            WorkOrders workOrders,
            Revisions revisions,
            Analyses analyses,
            Electrics electrics,
            Clock clock) {
        this.workOrders = workOrders;
        this.revisions = revisions;
        this.analyses = analyses;
        this.electrics = electrics;
        this.clock = clock;
    }

    /**
     * A finished sheet.
     *
     * @param workOrder the work order
     * @param pdf the sheet
     */
    public record Sheet(StoredWorkOrder workOrder, byte[] pdf) {}

    /**
     * @param workOrderId of a work order
     * @return its job sheet as it stands today
     * @throws NotFoundException if there is no such work order
     * @throws FiguresChangedException if the revision's figures cannot be given again as they were frozen
     */
    public Sheet make(UUID workOrderId) {
        StoredWorkOrder order = workOrders.get(workOrderId);
        StoredRevision revision = revisions.get(order.revisionHash());
        Analyses.Amended amended = revisions.compute(revision);
        String footer =
                "%s, revision %d, %s"
                        .formatted(
                                order.number(),
                                revision.number(),
                                Drawings.shortened(revision.hash()));
        Catalogue catalogue = analyses.catalogue(amended.settings());
        JobSheet sheet =
                new JobSheet(
                        order.number(),
                        revision.hash(),
                        revision.number(),
                        order.customer(),
                        order.workshop(),
                        order.dueDate(),
                        order.notes(),
                        order.status().words(),
                        LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC),
                        amended.analysis(),
                        amended.amendments(),
                        catalogue,
                        amended.settings(),
                        SheetPictures.of(amended.analysis(), catalogue, footer),
                        electrical(revision, amended));
        return new Sheet(order, JobSheetPdf.write(sheet));
    }

    private ElectricalSide electrical(StoredRevision revision, Analyses.Amended amended) {
        WiredLoom wired = Revisions.wired(amended);
        return new ElectricalSide(
                electrics.basis(wired),
                revisions.electrics(revision, amended, Changes.SOUGHT),
                electrics.colours(wired),
                electrics.open(wired),
                revisions.accepted(revision));
    }
}
