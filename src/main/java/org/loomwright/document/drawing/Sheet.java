package org.loomwright.document.drawing;

/**
 * A sheet of paper and what its foot says.
 *
 * @param widthMm from left to right
 * @param heightMm from top to bottom
 * @param title what the sheet is, for example the loom's name
 * @param footer a line for the title block: revision and content hash
 */
public record Sheet(double widthMm, double heightMm, String title, String footer) {

    /** @return an A3 sheet lying on its side */
    public static Sheet a3(String title, String footer) {
        return new Sheet(420, 297, title, footer);
    }
}
