package org.loomwright.document.svg;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.geometry.Point;
import org.loomwright.document.scene.Scene;
import org.loomwright.document.scene.Shape;
import org.loomwright.document.scene.Shape.Anchor;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.document.scene.Shape.Stroke;
import org.w3c.dom.Document;

import java.io.ByteArrayInputStream;
import java.util.List;

import javax.xml.parsers.DocumentBuilderFactory;

class SvgWriterTest {

    private static final String HOSTILE = "<b>&\"'\u0000\u0007\ud800 ]]> \ud83d\udd27 caf\u00e9";
    private static final Scene SCENE =
            new Scene(
                    HOSTILE,
                    HOSTILE,
                    420,
                    297.5,
                    List.of(
                            new Shape.Line(
                                    List.of(new Point(1, 2), new Point(3.00004, 1e-9)),
                                    new Stroke(Ink.BLACK, 0.5, List.of(1.0, 2.5))),
                            new Shape.Area(
                                    List.of(new Point(0, 0), new Point(1, 0), new Point(0, 1)),
                                    Ink.BLACK,
                                    null),
                            new Shape.Disc(new Point(5, 5), 2, null, Stroke.full(Ink.BLACK, 1)),
                            new Shape.Box(new Point(1, 1), 10, 20, Ink.PAPER, null),
                            new Shape.Label(
                                    HOSTILE,
                                    new Point(7, 8),
                                    2.2,
                                    Anchor.END,
                                    30,
                                    true,
                                    Ink.BLACK)));

    @Test
    void anyTextStaysTextInWellFormedXml() throws Exception {
        Document page = parse(SvgWriter.write(SCENE));

        assertThat(page.getDocumentElement().getAttribute("role")).isEqualTo("img");
        assertThat(page.getElementsByTagName("b").getLength()).isZero();
        String expected = "<b>&\"'\ufffd\ufffd\ufffd ]]> \ud83d\udd27 caf\u00e9";
        for (String element : List.of("title", "desc", "text")) {
            assertThat(page.getElementsByTagName(element).item(0).getTextContent())
                    .isEqualTo(expected);
        }
    }

    @Test
    void theSheetIsMeasuredInMillimetres() throws Exception {
        var root = parse(SvgWriter.write(SCENE)).getDocumentElement();

        assertThat(root.getAttribute("width")).isEqualTo("420mm");
        assertThat(root.getAttribute("height")).isEqualTo("297.5mm");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 420 297.5");
    }

    @Test
    void everyShapeIsWrittenWithItsLook() {
        assertThat(SvgWriter.write(SCENE))
                .asString()
                .contains("<polyline points=\"1,2 3,0\" fill=\"none\" stroke=\"#1a1a1a\"")
                .contains("stroke-dasharray=\"1 2.5\"")
                .contains("<polygon points=\"0,0 1,0 0,1\" fill=\"#1a1a1a\"/>")
                .contains("<circle cx=\"5\" cy=\"5\" r=\"2\" fill=\"none\"")
                .contains("<rect x=\"1\" y=\"1\" width=\"10\" height=\"20\" fill=\"#ffffff\"/>")
                .contains("text-anchor=\"end\" font-weight=\"bold\" transform=\"rotate(30 7 8)\"");
    }

    @Test
    void theSameSceneGivesTheSameBytes() {
        assertThat(SvgWriter.write(SCENE)).isEqualTo(SvgWriter.write(SCENE));
    }

    private static Document parse(byte[] page) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(page));
    }
}
