package org.loomwright.document.scene;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.geometry.Point;

import java.util.List;

/** One thing that is drawn. All measures are millimetres. */
public sealed interface Shape {

    /** A line through two or more points, with round joins and ends. */
    record Line(List<Point> points, Stroke stroke) implements Shape {

        public Line {
            points = List.copyOf(points);
            if (points.size() < 2) {
                throw new IllegalArgumentException("a line needs two points, has " + points.size());
            }
        }
    }

    /** A closed area through three or more points. */
    record Area(List<Point> points, @Nullable Ink fill, @Nullable Stroke stroke) implements Shape {

        public Area {
            points = List.copyOf(points);
        }
    }

    /** A circle. */
    record Disc(Point centre, double radiusMm, @Nullable Ink fill, @Nullable Stroke stroke)
            implements Shape {}

    /** An upright rectangle, by its top left corner. */
    record Box(
            Point corner,
            double widthMm,
            double heightMm,
            @Nullable Ink fill,
            @Nullable Stroke stroke)
            implements Shape {}

    /**
     * One line of text.
     *
     * @param at where it is anchored: a point on its base line
     * @param sizeMm height of the font (its em)
     * @param anchor which part of the text stands at the point
     * @param turnedDegrees turned clockwise about the point
     */
    record Label(
            String text,
            Point at,
            double sizeMm,
            Anchor anchor,
            double turnedDegrees,
            boolean bold,
            Ink ink)
            implements Shape {}

    /** Which part of a text stands at its point. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /**
     * A line's look.
     *
     * @param dashMm lengths of dash and gap in turn, empty for a full line
     */
    record Stroke(Ink ink, double widthMm, List<Double> dashMm) {

        public Stroke {
            dashMm = List.copyOf(dashMm);
        }

        /** @return a full line */
        public static Stroke full(Ink ink, double widthMm) {
            return new Stroke(ink, widthMm, List.of());
        }
    }

    /**
     * A colour.
     *
     * @param hex {@code #rrggbb}
     */
    record Ink(String hex) {

        /** Nearly black, as printed text. */
        public static final Ink BLACK = new Ink("#1a1a1a");

        /** The sheet itself. */
        public static final Ink PAPER = new Ink("#ffffff");

        public Ink {
            if (!hex.matches("#[0-9a-f]{6}")) {
                throw new IllegalArgumentException("a colour is #rrggbb, was " + hex);
            }
        }
    }
}
