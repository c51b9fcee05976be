package org.loomwright.document.drawing;

import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.analysis.LoomAnalysis;
import org.loomwright.core.analysis.SegmentChange;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.layout.LayoutRoom;
import org.loomwright.core.layout.LoomLayout;
import org.loomwright.core.layout.LoomLayouter;
import org.loomwright.core.quantity.Length;
import org.loomwright.document.scene.Scene;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The whole loom on one sheet, to true proportions. Line widths follow the covered diameters. What the additions change stands out
 * by hatching and blackness, not by colour alone. Tails are only indicated: their lengths are written. The drawing numbers nothing
 * that has a name, except as the last resort where a name finds no place on the sheet.
 */
public final class LoomDrawing {

    private static final double MARGIN_MM = 8;
    private static final double FOOT_MM = 30;

    /** Ways to share the sheet between loom and names; the one with the best placed names is taken. */
    private static final List<Share> SHARES =
            List.of(
                    new Share(24, 16, 5),
                    new Share(24, 20, 8),
                    new Share(36, 26, 7),
                    new Share(36, 30, 10),
                    new Share(52, 36, 10));

    /** The same where no devices are named and the sheet is small. */
    private static final List<Share> CLOSE_SHARES =
            List.of(new Share(8, 6, 4), new Share(12, 8, 5), new Share(20, 12, 6));

    /** Each share costs a layout and all labels: tried by turns up to so many segments in all, but at least one. */
    private static final int WORTH_ALL_SHARES = 300;

    /** Room at the sides, above and below for the names at the ends, and how far branches stay apart. */
    private record Share(double besideMm, double aboveMm, double clearanceMm) {}

    private LoomDrawing() {}

    /**
     * @param analysis a loom
     * @param sheet what to draw it on
     * @return the drawing
     */
    public static Scene of(LoomAnalysis analysis, Sheet sheet) {
        Map<String, Status> status = new LinkedHashMap<>();
        analysis.loom().segments().keySet().forEach(id -> status.put(id, Status.UNCHANGED));
        return draw(analysis, status, false, sheet, Detail.DEVICES);
    }

    /**
     * @param change a stock loom beside the amended one
     * @param sheet what to draw it on
     * @return the amended loom, with what differs from stock standing out
     */
    public static Scene of(ChangeAnalysis change, Sheet sheet) {
        return of(change, sheet, Detail.DEVICES);
    }

    /**
     * @param change a stock loom beside the amended one
     * @param sheet what to draw it on
     * @param detail how much to write
     * @return the amended loom, with what differs from stock standing out
     */
    public static Scene of(ChangeAnalysis change, Sheet sheet, Detail detail) {
        Map<String, Status> status = new LinkedHashMap<>();
        change.segments().forEach(segment -> status.put(segment.segment(), status(segment)));
        return draw(change.after(), status, true, sheet, detail);
    }

    private static Status status(SegmentChange change) {
        if (change.before() == null) {
            return Status.NEW;
        }
        return change.isChanged() ? Status.CHANGED : Status.UNCHANGED;
    }

    private static Scene draw(
            LoomAnalysis analysis,
            Map<String, Status> status,
            boolean compared,
            Sheet sheet,
            Detail detail) {
        Rectangle area =
                new Rectangle(
                        MARGIN_MM,
                        MARGIN_MM,
                        sheet.widthMm() - MARGIN_MM,
                        sheet.heightMm() - MARGIN_MM - FOOT_MM);
        long shares = Math.clamp(WORTH_ALL_SHARES / status.size(), 1L, SHARES.size());
        List<Share> ways = detail == Detail.BRANCHES ? CLOSE_SHARES : SHARES;
        LoomPicture picture =
                ways.stream()
                        .limit(shares)
                        .map(share -> picture(analysis, status, compared, area, share, detail))
                        .min(Comparator.comparingDouble(LoomPicture::awkwardness))
                        .orElseThrow();
        LoomLayout layout = picture.layout();
        Pen pen = picture.pen();
        new TitleBlock(sheet, picture, compared)
                .draw(
                        new Rectangle(
                                MARGIN_MM,
                                area.bottomMm(),
                                sheet.widthMm() - MARGIN_MM,
                                sheet.heightMm() - MARGIN_MM));
        return new Scene(
                sheet.title(),
                description(analysis, layout, status, compared),
                sheet.widthMm(),
                sheet.heightMm(),
                pen.shapes());
    }

    private static LoomPicture picture(
            LoomAnalysis analysis,
            Map<String, Status> status,
            boolean compared,
            Rectangle area,
            Share share,
            Detail detail) {
        LayoutRoom room =
                new LayoutRoom(
                        Pen.length(area.widthMm() - 2 * share.besideMm()),
                        Pen.length(area.heightMm() - 2 * share.aboveMm()),
                        Pen.length(share.clearanceMm()));
        LoomLayout layout = LoomLayouter.fit(analysis.loom(), thickness(analysis), room);
        LoomPicture picture = new LoomPicture(analysis, layout, status, compared, area, new Pen());
        picture.draw(detail);
        return picture;
    }

    private static Map<String, Length> thickness(LoomAnalysis analysis) {
        Map<String, Length> thickness = new LinkedHashMap<>();
        analysis.bundles().bySegment().forEach((id, bundle) -> thickness.put(id, bundle.covered()));
        return thickness;
    }

    private static String description(
            LoomAnalysis analysis,
            LoomLayout layout,
            Map<String, Status> status,
            boolean compared) {
        String text =
                "Loom %s laid flat at a scale of %s: %d segments, measured from %s."
                        .formatted(
                                analysis.loom().name(),
                                layout.scale(),
                                layout.legs().size(),
                                new NodeTexts(analysis.loom()).name(analysis.loom().datum()));
        return compared
                ? text
                        + " New: %s. Changed: %s."
                                .formatted(
                                        listed(status, Status.NEW), listed(status, Status.CHANGED))
                : text;
    }

    private static String listed(Map<String, Status> status, Status wanted) {
        String ids =
                String.join(
                        ", ",
                        status.entrySet().stream()
                                .filter(entry -> entry.getValue() == wanted)
                                .map(Map.Entry::getKey)
                                .toList());
        return ids.isEmpty() ? "none" : ids;
    }
}
