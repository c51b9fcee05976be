package org.loomwright.document.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.analysis.LoomAnalysis;
import org.loomwright.core.loom.Segment;
import org.loomwright.document.scene.Scene;
import org.loomwright.document.scene.Shape;
import org.loomwright.document.svg.SvgWriter;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.xml.parsers.DocumentBuilderFactory;

class LoomDrawingTest {

    private static final Sheet SHEET = Sheet.a3("Averley Twelve, main loom", "revision 1");
    private static final Pattern SCALE = Pattern.compile("scale of 1 : ([0-9.]+):");

    @ParameterizedTest
    @ValueSource(strings = {"averley-saloon-main", "averley-saloon-engine"})
    void everySegmentReadBackFromThePageHasItsRecordedLength(String loom) throws Exception {
        LoomAnalysis analysis = DemoAnalyses.stock(loom);
        Scene scene = LoomDrawing.of(analysis, SHEET);
        List<Double> drawn = polylineLengths(SvgWriter.write(scene));
        double scale = scale(scene);

        int at = 0;
        for (Segment segment : analysis.loom().walk()) {
            double expected = segment.length().toDoubleMillimetres() / scale;
            assertThat(drawn.get(at)).as(segment.id()).isCloseTo(expected, within(0.1));
            at += 2;
        }
    }

    @Test
    void everyNameAndMeasureIsOnTheSheet() {
        LoomAnalysis analysis = DemoAnalyses.stock("averley-saloon-main");
        String all = String.join("\n", texts(LoomDrawing.of(analysis, SHEET)));

        analysis.loom()
                .segments()
                .values()
                .forEach(
                        segment ->
                                assertThat(all)
                                        .contains(
                                                segment.id()
                                                        + "  "
                                                        + segment.length()
                                                                .toMillimetres()
                                                                .toPlainString()));
        analysis.loom()
                .devices()
                .values()
                .forEach(device -> assertThat(all).contains(device.name()));
        assertThat(all).contains("Scale 1 : ", "revision 1", "Disconnect the battery");
    }

    @Test
    void textsStayOnTheSheet() {
        Scene scene = LoomDrawing.of(DemoAnalyses.additions(), SHEET);
        for (Shape shape : scene.shapes()) {
            if (shape instanceof Shape.Label label) {
                double width = Pen.widthMm(label.text(), label.sizeMm(), label.bold());
                double left =
                        switch (label.anchor()) {
                            case START -> label.at().xMm();
                            case MIDDLE -> label.at().xMm() - width / 2;
                            case END -> label.at().xMm() - width;
                        };
                assertThat(left).as(label.text()).isGreaterThan(8);
                assertThat(left + width).as(label.text()).isLessThan(420 - 8);
                assertThat(label.at().yMm()).as(label.text()).isBetween(8.0, 297.0 - 8);
            }
        }
    }

    @Test
    void whatTheAdditionsChangeIsSaidInWords() {
        ChangeAnalysis change = DemoAnalyses.additions();
        String all = String.join("\n", texts(LoomDrawing.of(change, SHEET)));

        change.segments().stream()
                .filter(segment -> segment.before() == null)
                .forEach(
                        segment ->
                                assertThat(all)
                                        .containsPattern(
                                                Pattern.quote(segment.segment())
                                                        + "  [0-9.]+ new"));
    }

    @Test
    void theSameLoomGivesTheSameBytes() {
        LoomAnalysis analysis = DemoAnalyses.stock("averley-saloon-engine");

        assertThat(SvgWriter.write(LoomDrawing.of(analysis, SHEET)))
                .isEqualTo(SvgWriter.write(LoomDrawing.of(analysis, SHEET)));
    }

    private static double scale(Scene scene) {
        Matcher matcher = SCALE.matcher(scene.description());
        assertThat(matcher.find()).isTrue();
        return Double.parseDouble(matcher.group(1));
    }

    private static List<String> texts(Scene scene) {
        return scene.shapes().stream()
                .filter(Shape.Label.class::isInstance)
                .map(shape -> ((Shape.Label) shape).text())
                .toList();
    }

    private static List<Double> polylineLengths(byte[] page) throws Exception {
        NodeList lines =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new ByteArrayInputStream(page))
                        .getElementsByTagName("polyline");
        List<Double> lengths = new ArrayList<>();
        for (int i = 0; i < lines.getLength(); i++) {
            lengths.add(length(((Element) lines.item(i)).getAttribute("points")));
        }
        return lengths;
    }

    private static double length(String points) {
        double length = 0;
        double[] last = null;
        for (String point : points.split(" ")) {
            String[] xy = point.split(",");
            double[] here = {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])};
            length += last == null ? 0 : Math.hypot(here[0] - last[0], here[1] - last[1]);
            last = here;
        }
        return length;
    }
}
