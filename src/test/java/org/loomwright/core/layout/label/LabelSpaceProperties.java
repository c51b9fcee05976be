package org.loomwright.core.layout.label;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.geometry.Straight;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

class LabelSpaceProperties {

    private static final Rectangle AREA = new Rectangle(0, 0, 200, 150);

    @Test
    void labelsNeverOverlapEachOtherOrALineOrLeaveTheArea() {
        for (long seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            LabelSpace space = new LabelSpace(AREA);
            List<Straight> lines = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                Straight line = new Straight(point(random), point(random));
                lines.add(line);
                space.occupy(line, Length.ofMillimetres(1));
            }
            List<Rectangle> boxes = boxes(space, random, lines);

            assertThat(boxes).hasSizeGreaterThan(20);
            assertApart(boxes, lines);
        }
    }

    @Test
    void aLabelGetsALeaderWhenTheNeighbourhoodIsFull() {
        LabelSpace space = new LabelSpace(AREA);
        Point anchor = new Point(100, 75);
        space.occupy(Rectangle.around(anchor, anchor).grown(0.2));
        LabelPlace first = space.place(request(anchor, 30)).orElseThrow();
        List<LabelPlace> more = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            space.place(request(anchor, 30)).ifPresent(more::add);
        }

        assertThat(first.leader()).isNull();
        assertThat(more).hasSize(3).anyMatch(place -> place.leader() != null);
    }

    @Test
    void aLabelLargerThanTheAreaFindsNoPlace() {
        assertThat(new LabelSpace(AREA).place(request(new Point(100, 75), 201))).isEmpty();
    }

    private static List<Rectangle> boxes(LabelSpace space, Random random, List<Straight> lines) {
        List<Rectangle> boxes = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            Point anchor = lines.get(random.nextInt(lines.size())).at(random.nextDouble());
            space.place(request(anchor, 10 + random.nextInt(15)))
                    .ifPresent(place -> boxes.add(place.box()));
        }
        return boxes;
    }

    private static void assertApart(List<Rectangle> boxes, List<Straight> lines) {
        for (int i = 0; i < boxes.size(); i++) {
            Rectangle box = boxes.get(i);
            assertThat(AREA.contains(box)).isTrue();
            assertThat(lines).noneMatch(box::isMetBy);
            assertThat(boxes.subList(0, i)).noneMatch(box::overlaps);
        }
    }

    private static LabelRequest request(Point anchor, int widthMm) {
        return new LabelRequest(
                List.of(anchor),
                new Point(0, -1),
                Length.ofMillimetres(widthMm),
                Length.ofMillimetres(3),
                Length.ofMillimetres(1),
                Length.ofMillimetres(1));
    }

    private static Point point(Random random) {
        return new Point(random.nextDouble(200), random.nextDouble(150));
    }
}
