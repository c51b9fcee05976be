package org.loomwright.core.layout.label;

import org.loomwright.core.geometry.CellGrid;
import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.geometry.Straight;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What is drawn on a sheet so far, and the free places between. Labels given a place become obstacles for the next ones, so call it
 * in a fixed order. Not thread-safe.
 *
 * <p>Own derivation: places are tried on growing rings round the anchor, the wanted direction first. A label next to its anchor
 * needs no leader; farther ones get a straight leader that meets neither a line nor a label. Cost of one label: places x things
 * near each. The work is counted, never timed, and has an end: on a sheet that asks for more, later labels find no place.
 */
public final class LabelSpace {

    private static final double[] RINGS_MM = {
        0, 1, 2, 3.5, 5, 7, 9, 11.5, 14, 17, 20, 24, 28, 33, 38, 44, 50, 58, 66, 75, 85, 100
    };
    private static final int DIRECTIONS = 24;

    /** Up to this distance beyond the wanted gap a label plainly belongs to its anchor. */
    private static final double NEXT_TO_MM = 1;

    /** A leader that crosses a line stays short. */
    private static final double FARTHEST_CROSSING_MM = 75;

    private static final double MARGIN_MM = 0.5;

    /** How finely a place anywhere is looked for. */
    private static final double STEP_MM = 2;

    /** About the height of a few lines of text. Own trials. */
    private static final double CELL_MM = 8;

    /** Enough for many times the names of a car's loom; less than a second's work. */
    private static final long MOST_WORK = 4_000_000;

    private static final long MOST_WORK_WITH_LIST = 2 * MOST_WORK;

    private final Rectangle area;
    private final CellGrid<Rectangle> boxes;
    private final CellGrid<Line> lines;
    private final List<Point> refused = new ArrayList<>();
    private long tried;

    /** A drawn line and the rectangle round it. */
    private record Line(Straight middle, double halfWidthMm, Rectangle bounds) {

        Line(Straight middle, double halfWidthMm) {
            this(
                    middle,
                    halfWidthMm,
                    Rectangle.around(middle.from(), middle.to()).grown(halfWidthMm));
        }
    }

    /**
     * @param area all labels lie inside
     */
    public LabelSpace(Rectangle area) {
        this.area = area;
        this.boxes = new CellGrid<>(area, CELL_MM);
        this.lines = new CellGrid<>(area, CELL_MM);
    }

    /**
     * @param box no label or leader may lie there
     */
    public void occupy(Rectangle box) {
        boxes.add(box, box);
    }

    /**
     * @param line no label may lie on it and no leader may cross it
     * @param width how thick it is
     */
    public void occupy(Straight line, Length width) {
        keep(new Line(line, width.toDoubleMillimetres() / 2));
    }

    private void keep(Line line) {
        lines.add(line, line.middle(), line.halfWidthMm());
    }

    /**
     * @param request what wants a place
     * @return the place, taken from now on; empty when there is none. Only when there is no other way does a leader cross a line;
     *     it never crosses a label.
     */
    public Optional<LabelPlace> place(LabelRequest request) {
        Optional<LabelPlace> clear = search(request, false);
        Optional<LabelPlace> place = clear.isPresent() ? clear : search(request, true);
        place.ifPresent(this::take);
        return place;
    }

    private Optional<LabelPlace> search(LabelRequest request, boolean mayCross) {
        int[] order = directions(request.towards());
        for (double ring : RINGS_MM) {
            if (isSpent() || mayCross && ring > FARTHEST_CROSSING_MM) {
                return Optional.empty();
            }
            for (Point anchor : request.anchors()) {
                for (int direction : order) {
                    LabelPlace place = candidate(request, anchor, ring, direction);
                    if (isFree(place, request.foot(), mayCross)) {
                        return Optional.of(place);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /**
     * @param width of the wanted box
     * @param height of the wanted box
     * @return a free place anywhere, the lowest and then the leftmost, taken from now on; empty when there is none, or when a box no
     *     larger than this one found none before
     */
    public Optional<Rectangle> placeAnywhere(Length width, Length height) {
        double w = width.toDoubleMillimetres();
        double h = height.toDoubleMillimetres();
        if (refused.stream().anyMatch(size -> size.xMm() <= w && size.yMm() <= h)) {
            return Optional.empty();
        }
        Optional<Rectangle> free = lowest(w, h);
        free.ifPresentOrElse(this::occupy, () -> refused.add(new Point(w, h)));
        return free;
    }

    private Optional<Rectangle> lowest(double w, double h) {
        for (double top = area.bottomMm() - h; top >= area.topMm(); top -= STEP_MM) {
            if (work() >= MOST_WORK_WITH_LIST) {
                return Optional.empty();
            }
            for (double left = area.leftMm(); left + w <= area.rightMm(); left += STEP_MM) {
                Rectangle box = new Rectangle(left, top, left + w, top + h);
                if (isFree(box)) {
                    return Optional.of(box);
                }
            }
        }
        return Optional.empty();
    }

    /** @return whether no more labels get a place near their anchors, because enough work was done */
    public boolean isSpent() {
        return work() >= MOST_WORK;
    }

    /** Places tried and things asked, the same on every machine. */
    long work() {
        return tried + boxes.looked() + lines.looked();
    }

    private static int[] directions(Point towards) {
        double wanted = Math.atan2(towards.yMm(), towards.xMm());
        return IntStream.range(0, DIRECTIONS)
                .boxed()
                .sorted(
                        Comparator.comparingDouble((Integer i) -> away(i, wanted))
                                .thenComparing(i -> i))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static double away(int direction, double wanted) {
        double turn = Math.abs(Math.IEEEremainder(angle(direction) - wanted, 2 * Math.PI));
        return Math.rint(turn * 1e6);
    }

    private static double angle(int direction) {
        return 2 * Math.PI * direction / DIRECTIONS;
    }

    /** The box whose near side, in that direction, is as far from the anchor as the ring says. */
    private static LabelPlace candidate(
            LabelRequest request, Point anchor, double ringMm, int direction) {
        double cos = Math.cos(angle(direction));
        double sin = Math.sin(angle(direction));
        double distance = request.gap().toDoubleMillimetres() + ringMm;
        double w = request.width().toDoubleMillimetres();
        double h = request.height().toDoubleMillimetres();
        double x = anchor.xMm() + cos * distance;
        double y = anchor.yMm() + sin * distance;
        double left = x - w * (1 - ramp(cos)) / 2;
        double top = y - h * (1 - ramp(sin)) / 2;
        Rectangle box = new Rectangle(left, top, left + w, top + h);
        Straight leader = new Straight(anchor, nearest(box, anchor));
        return new LabelPlace(box, anchor, ringMm <= NEXT_TO_MM ? null : leader);
    }

    /** From -1 to 1, but level at the ends, so that a box beside its anchor stands clear of it. */
    private static double ramp(double x) {
        return Math.clamp(x * 1.6, -1, 1);
    }

    private static Point nearest(Rectangle box, Point to) {
        return new Point(
                Math.clamp(to.xMm(), box.leftMm(), box.rightMm()),
                Math.clamp(to.yMm(), box.topMm(), box.bottomMm()));
    }

    private boolean isFree(LabelPlace place, Length foot, boolean mayCross) {
        double footMm = foot.toDoubleMillimetres();
        return isFree(place.box())
                && (place.leader() == null
                        || place.leader().lengthMm() <= footMm
                        || isClear(withoutFoot(place.leader(), footMm), mayCross));
    }

    private boolean isFree(Rectangle box) {
        tried++;
        if (!area.contains(box)) {
            return false;
        }
        Rectangle wide = box.grown(MARGIN_MM);
        return !boxes.anyNear(wide, wide::overlaps)
                && !lines.anyNear(
                        wide,
                        line ->
                                wide.overlaps(line.bounds())
                                        && wide.grown(line.halfWidthMm()).isMetBy(line.middle()));
    }

    private static Straight withoutFoot(Straight leader, double footMm) {
        return new Straight(leader.at(footMm / leader.lengthMm()), leader.to());
    }

    private boolean isClear(Straight leader, boolean mayCross) {
        Rectangle bounds = Rectangle.around(leader.from(), leader.to()).grown(MARGIN_MM);
        return !boxes.anyNear(
                        leader,
                        MARGIN_MM,
                        box -> bounds.overlaps(box) && box.grown(MARGIN_MM / 2).isMetBy(leader))
                && (mayCross
                        || !lines.anyNear(
                                leader,
                                MARGIN_MM,
                                line ->
                                        bounds.overlaps(line.bounds())
                                                && line.middle().distanceToMm(leader)
                                                        < MARGIN_MM / 2));
    }

    private void take(LabelPlace place) {
        occupy(place.box());
        if (place.leader() != null) {
            keep(new Line(place.leader(), 0.1));
        }
    }
}
