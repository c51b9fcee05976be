package org.loomwright.document.sheet;

import org.loomwright.core.loom.Loom;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Paper;
import org.loomwright.document.pdf.Tag;
import org.loomwright.document.sheet.SheetPictures.BranchPicture;
import org.loomwright.document.sheet.content.Places;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

import java.util.ArrayList;
import java.util.List;

/** The branches that change, cut through, before beside after, about four on a page. */
final class CrossSectionsSection {

    /** At this scale two pictures of before and after stand beside each other. */
    private static final double LARGEST = 0.7;

    /** At this scale the diameters still print 1.8 mm high. */
    private static final double SMALLEST = 0.56;

    private static final double GAP_PT = 8;

    private final JobSheet sheet;

    CrossSectionsSection(JobSheet sheet) {
        this.sheet = sheet;
    }

    void set(Flow flow) {
        boolean none = sheet.pictures().branches().isEmpty();
        if (!none) {
            flow.newPage(Paper.A4_LANDSCAPE);
        }
        flow.section(Part.CROSS_SECTIONS.title());
        if (none) {
            flow.text("No cross-sections are shown on this sheet.");
            return;
        }
        flow.text(
                "What must fit, not where a hand will lay each wire. Before and after of a branch"
                        + " are drawn at one enlargement.");
        rows(flow.paper().bodyWidthPt()).forEach(row -> set(flow, row));
        flow.newPage(Paper.A4);
    }

    /** Deals the pictures out into rows, in their order. */
    private List<List<BranchPicture>> rows(double widthPt) {
        List<List<BranchPicture>> rows = new ArrayList<>();
        double left = 0;
        for (BranchPicture picture : sheet.pictures().branches()) {
            if (rows.isEmpty() || widthPt(picture) > left) {
                rows.add(new ArrayList<>());
                left = widthPt;
            }
            rows.getLast().add(picture);
            left -= widthPt(picture) + GAP_PT;
        }
        return rows;
    }

    private void set(Flow flow, List<BranchPicture> row) {
        double captions = row.stream().mapToDouble(p -> caption(p).size()).max().orElse(0);
        double captionPt = captions * Type.TEXT_STRONG.leadingPt() + 3;
        double highestPt = row.stream().mapToDouble(CrossSectionsSection::heightPt).max().orElse(1);
        double halfPt = flow.paper().bodyHeightPt() / 2 - captionPt - GAP_PT;
        double scale = Math.clamp(halfPt / highestPt, SMALLEST, LARGEST);
        double rowPt = captionPt + highestPt * scale;
        flow.makeRoom(rowPt);
        double top = flow.take(rowPt + GAP_PT);
        double left = flow.paper().leftPt();
        for (BranchPicture picture : row) {
            setCaption(flow, caption(picture), left, top);
            flow.pictureAt(picture.scene(), scale, left, top + captionPt);
            left += widthPt(picture) + GAP_PT;
        }
    }

    private static void setCaption(Flow flow, List<String> lines, double left, double top) {
        Tag tag = flow.section().child(Tag.Role.HEADING_2);
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            double baseLine = top + (i + 1) * Type.TEXT_STRONG.leadingPt();
            flow.page().add(tag, canvas -> canvas.text(line, Type.TEXT_STRONG, left, baseLine - 2));
        }
    }

    private List<String> caption(BranchPicture picture) {
        Loom loom = sheet.change().after().loom();
        return Type.TEXT_STRONG.wrap(
                picture.segment() + "  " + Places.run(loom, loom.getSegment(picture.segment())),
                widthPt(picture));
    }

    private static double widthPt(BranchPicture picture) {
        return picture.scene().widthMm() * LARGEST * Paper.POINTS_PER_MM;
    }

    private static double heightPt(BranchPicture picture) {
        return picture.scene().heightMm() * Paper.POINTS_PER_MM;
    }
}
