package org.loomwright.document.pdf;

import org.loomwright.document.scene.Shape.Ink;

import java.util.ArrayList;
import java.util.List;

/**
 * How a text looks and where it may break.
 *
 * @param face cut of the type family
 * @param sizePt height of the font
 * @param leadingPt from base line to base line
 * @param trackingPt extra space after each letter
 * @param ink its colour
 */
public record TextStyle(Face face, double sizePt, double leadingPt, double trackingPt, Ink ink) {

    private static final double USUAL_LEADING = 1.28;
    private static final String ELLIPSIS = "\u2026";

    /**
     * @param face cut of the type family
     * @param sizePt height of the font
     * @return black text with the usual leading
     */
    public static TextStyle of(Face face, double sizePt) {
        return new TextStyle(face, sizePt, sizePt * USUAL_LEADING, 0, Ink.BLACK);
    }

    /** @return the same with extra space after each letter */
    public TextStyle spaced(double newTrackingPt) {
        return new TextStyle(face, sizePt, leadingPt, newTrackingPt, ink);
    }

    /** @return the same in another cut */
    public TextStyle in(Face newFace) {
        return new TextStyle(newFace, sizePt, leadingPt, trackingPt, ink);
    }

    /** @return the same in another colour */
    public TextStyle in(Ink newInk) {
        return new TextStyle(face, sizePt, leadingPt, trackingPt, newInk);
    }

    /**
     * @param text one line
     * @return how wide it prints
     */
    public double widthOf(String text) {
        return face.widthOf(text, sizePt) + trackingPt * text.length();
    }

    /**
     * Breaks between words, and inside a word only where it alone is wider than the line.
     *
     * @param text the text; a line feed always breaks
     * @param widthPt width of the line
     * @return its lines, at least one
     */
    public List<String> wrap(String text, double widthPt) {
        List<String> lines = new ArrayList<>();
        for (String part : text.split("\n", -1)) {
            wrapPart(face.printable(part), widthPt, lines);
        }
        return lines;
    }

    /**
     * @param text one line
     * @param widthPt width of the line
     * @return the text, or as much of it as fits with an ellipsis at its end
     */
    public String shortened(String text, double widthPt) {
        List<String> lines = wrap(text, widthPt);
        if (lines.size() == 1) {
            return lines.getFirst();
        }
        return wrap(text, widthPt - widthOf(ELLIPSIS)).getFirst() + ELLIPSIS;
    }

    private void wrapPart(String text, double widthPt, List<String> lines) {
        String line = "";
        for (String word : text.strip().split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (widthOf(longer) <= widthPt) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = breakWord(word, widthPt, lines);
        }
        lines.add(line);
    }

    /** Sets full lines of an overlong word aside and gives the rest. */
    private String breakWord(String word, double widthPt, List<String> lines) {
        String rest = word;
        while (widthOf(rest) > widthPt && rest.codePointCount(0, rest.length()) > 1) {
            int end = rest.offsetByCodePoints(0, 1);
            int next = rest.offsetByCodePoints(end, 1);
            while (widthOf(rest.substring(0, next)) <= widthPt) {
                end = next;
                next = rest.offsetByCodePoints(end, 1);
            }
            lines.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        return rest;
    }
}
