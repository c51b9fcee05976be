package org.loomwright.document.svg;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.geometry.Point;
import org.loomwright.document.scene.Scene;
import org.loomwright.document.scene.Shape;
import org.loomwright.document.scene.Shape.Anchor;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.document.scene.Shape.Stroke;

import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes a scene as SVG: one user unit is one millimetre. The same scene gives the same bytes. Text is escaped by the XML writer;
 * characters that XML cannot hold become U+FFFD.
 */
public final class SvgWriter {

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final int DECIMALS = 4;

    private final XMLStreamWriter xml;

    private SvgWriter(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /**
     * @param scene the picture
     * @return the page in UTF-8
     */
    public static byte[] write(Scene scene) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            XMLStreamWriter xml =
                    XMLOutputFactory.newDefaultFactory()
                            .createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
            new SvgWriter(xml).writeScene(scene);
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("a scene in memory could not be written", e);
        }
        return bytes.toByteArray();
    }

    private void writeScene(Scene scene) throws XMLStreamException {
        xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(NAMESPACE);
        xml.writeAttribute("role", "img");
        xml.writeAttribute("aria-labelledby", "title desc");
        xml.writeAttribute("width", number(scene.widthMm()) + "mm");
        xml.writeAttribute("height", number(scene.heightMm()) + "mm");
        xml.writeAttribute(
                "viewBox", "0 0 " + number(scene.widthMm()) + " " + number(scene.heightMm()));
        xml.writeAttribute("font-family", "'Liberation Sans', Arial, sans-serif");
        xml.writeAttribute("stroke-linecap", "round");
        xml.writeAttribute("stroke-linejoin", "round");
        writeText("title", scene.title());
        writeText("desc", scene.description());
        for (Shape shape : scene.shapes()) {
            writeShape(shape);
        }
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private void writeText(String id, String text) throws XMLStreamException {
        xml.writeStartElement(id);
        xml.writeAttribute("id", id);
        xml.writeCharacters(legal(text));
        xml.writeEndElement();
    }

    private void writeShape(Shape shape) throws XMLStreamException {
        switch (shape) {
            case Shape.Line line -> writeLine(line);
            case Shape.Area area -> writeArea(area);
            case Shape.Disc disc -> writeDisc(disc);
            case Shape.Box box -> writeBox(box);
            case Shape.Label label -> writeLabel(label);
        }
    }

    private void writeLine(Shape.Line line) throws XMLStreamException {
        xml.writeEmptyElement("polyline");
        xml.writeAttribute("points", points(line.points()));
        writeLook(null, line.stroke());
    }

    private void writeArea(Shape.Area area) throws XMLStreamException {
        xml.writeEmptyElement("polygon");
        xml.writeAttribute("points", points(area.points()));
        writeLook(area.fill(), area.stroke());
    }

    private void writeDisc(Shape.Disc disc) throws XMLStreamException {
        xml.writeEmptyElement("circle");
        writeNumber("cx", disc.centre().xMm());
        writeNumber("cy", disc.centre().yMm());
        writeNumber("r", disc.radiusMm());
        writeLook(disc.fill(), disc.stroke());
    }

    private void writeBox(Shape.Box box) throws XMLStreamException {
        xml.writeEmptyElement("rect");
        writeNumber("x", box.corner().xMm());
        writeNumber("y", box.corner().yMm());
        writeNumber("width", box.widthMm());
        writeNumber("height", box.heightMm());
        writeLook(box.fill(), box.stroke());
    }

    private void writeLabel(Shape.Label label) throws XMLStreamException {
        xml.writeStartElement("text");
        writeNumber("x", label.at().xMm());
        writeNumber("y", label.at().yMm());
        writeNumber("font-size", label.sizeMm());
        xml.writeAttribute("fill", label.ink().hex());
        if (label.anchor() != Anchor.START) {
            xml.writeAttribute("text-anchor", label.anchor() == Anchor.MIDDLE ? "middle" : "end");
        }
        if (label.bold()) {
            xml.writeAttribute("font-weight", "bold");
        }
        if (label.turnedDegrees() != 0) {
            xml.writeAttribute(
                    "transform",
                    "rotate(%s %s %s)"
                            .formatted(
                                    number(label.turnedDegrees()),
                                    number(label.at().xMm()),
                                    number(label.at().yMm())));
        }
        xml.writeCharacters(legal(label.text()));
        xml.writeEndElement();
    }

    private void writeLook(@Nullable Ink fill, @Nullable Stroke stroke) throws XMLStreamException {
        xml.writeAttribute("fill", fill == null ? "none" : fill.hex());
        if (stroke == null) {
            return;
        }
        xml.writeAttribute("stroke", stroke.ink().hex());
        writeNumber("stroke-width", stroke.widthMm());
        if (!stroke.dashMm().isEmpty()) {
            xml.writeAttribute("stroke-linecap", "butt");
            xml.writeAttribute(
                    "stroke-dasharray",
                    stroke.dashMm().stream()
                            .map(SvgWriter::number)
                            .collect(Collectors.joining(" ")));
        }
    }

    private void writeNumber(String name, double value) throws XMLStreamException {
        xml.writeAttribute(name, number(value));
    }

    private static String points(List<Point> points) {
        return points.stream()
                .map(point -> number(point.xMm()) + "," + number(point.yMm()))
                .collect(Collectors.joining(" "));
    }

    private static String number(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value)
                        .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros();
        return rounded.toPlainString();
    }

    /** The text with everything that XML 1.0 does not allow replaced, lone surrogates included. */
    private static String legal(String text) {
        StringBuilder legal = new StringBuilder();
        text.codePoints()
                .map(character -> isLegal(character) ? character : 0xFFFD)
                .forEach(legal::appendCodePoint);
        return legal.toString();
    }

    private static boolean isLegal(int character) {
        return character == '\t'
                || character == '\n'
                || character == '\r'
                || character >= 0x20 && character <= 0xD7FF
                || character >= 0xE000 && character <= 0xFFFD
                || character >= 0x10000;
    }
}
