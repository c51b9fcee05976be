package org.loomwright.document.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomwright.core.geometry.Point;
import org.loomwright.document.scene.Scene;
import org.loomwright.document.scene.Shape;
import org.loomwright.document.scene.Shape.Anchor;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.document.scene.Shape.Stroke;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

class PdfSceneWriterTest {

    /** The library writes coordinates to 0.01 point, which is 0.0035 mm on paper. */
    private static final double WRITTEN_PT = 0.01;

    private static final double PT = 72 / 25.4;

    private static Scene scene(Shape... shapes) {
        return new Scene("Picture", "For a test.", 200, 100, List.of(shapes));
    }

    private static String content(Scene scene, double scale) {
        Flow flow = new Flow(Paper.A4);
        flow.pictureAt(scene, scale, 0, 0);
        byte[] file = FlowTest.write(flow);
        try {
            return new String(PdfPages.open(file).getPageContent(1), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double[] operands(String content, String operator, int count) {
        Matcher matcher =
                Pattern.compile("((?:-?[0-9.]+ ){%d})%s\\s".formatted(count, operator))
                        .matcher(content);
        assertThat(matcher.find()).as(content).isTrue();
        String[] parts = matcher.group(1).strip().split(" ");
        return Arrays.stream(parts).mapToDouble(Double::parseDouble).toArray();
    }

    @Test
    void aMillimetreOfTheSceneIsAMillimetreOfThePaperAtScaleOne() {
        Shape box = new Shape.Box(new Point(10, 20), 100, 50, null, Stroke.full(Ink.BLACK, 0.25));

        double[] drawn = operands(content(scene(box), 1), "re", 4);

        assertThat(drawn[0]).isCloseTo(10 * PT, within(WRITTEN_PT));
        assertThat(drawn[1]).isCloseTo((297 - 70) * PT, within(WRITTEN_PT));
        assertThat(drawn[2]).isCloseTo(100 * PT, within(WRITTEN_PT));
        assertThat(drawn[3]).isCloseTo(50 * PT, within(WRITTEN_PT));
    }

    @Test
    void aScaleShrinksPlacesWidthsAndText() {
        Shape line =
                new Shape.Line(
                        List.of(new Point(40, 0), new Point(80, 40)), Stroke.full(Ink.BLACK, 2));
        Shape label =
                new Shape.Label("5 mm", new Point(0, 10), 8, Anchor.START, 0, false, Ink.BLACK);

        String content = content(scene(line, label), 0.25);

        assertThat(operands(content, "m", 2)[0]).isCloseTo(10 * PT, within(WRITTEN_PT));
        assertThat(operands(content, "l", 2)[0]).isCloseTo(20 * PT, within(WRITTEN_PT));
        assertThat(operands(content, "w", 1)[0]).isCloseTo(0.5 * PT, within(WRITTEN_PT));
        assertThat(operands(content, "Tf", 1)[0]).isCloseTo(2 * PT, within(WRITTEN_PT));
    }

    @Test
    void aLabelTurnsClockwiseAboutItsAnchor() {
        Shape label =
                new Shape.Label("up", new Point(30, 30), 4, Anchor.START, 90, false, Ink.BLACK);

        double[] matrix = operands(content(scene(label), 1), "Tm", 6);

        assertThat(matrix[0]).isCloseTo(0, within(1e-6));
        assertThat(matrix[1]).isCloseTo(-1, within(1e-6));
        assertThat(matrix[4]).isCloseTo(30 * PT, within(WRITTEN_PT));
        assertThat(matrix[5]).isCloseTo((297 - 30) * PT, within(WRITTEN_PT));
    }

    @Test
    void aPictureIsSpokenByItsTitleAndDescription() {
        Flow flow = new Flow(Paper.A4);
        flow.pictureAt(scene(), 1, 0, 0);

        String file = new String(FlowTest.write(flow), StandardCharsets.ISO_8859_1);

        assertThat(file).contains("/Figure").contains("/Alt");
    }

    @Test
    void aPictureIsShrunkToFitButNeverEnlarged() {
        assertThat(PdfSceneWriter.scaleToFit(scene(), 100 * PT, 100 * PT)).isEqualTo(0.5);
        assertThat(PdfSceneWriter.scaleToFit(scene(), 1000 * PT, 20 * PT))
                .isCloseTo(0.2, within(1e-12));
        assertThat(PdfSceneWriter.scaleToFit(scene(), 9000, 9000)).isEqualTo(1);
    }
}
