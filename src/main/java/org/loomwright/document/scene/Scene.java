package org.loomwright.document.scene;

import java.util.List;

/**
 * A picture in millimetres.
 *
 * @param title what it shows, in a few words
 * @param description what it shows, for a reader who cannot see it
 * @param widthMm width of the sheet
 * @param heightMm height of the sheet
 * @param shapes drawn in this order
 */
public record Scene(
        String title, String description, double widthMm, double heightMm, List<Shape> shapes) {

    public Scene {
        shapes = List.copyOf(shapes);
    }
}
