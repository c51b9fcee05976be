package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

/** What is written in a picture. */
final class SvgWords {

    private SvgWords() {}

    /** @return its texts in their order, with single spaces between */
    static String of(byte[] svg) {
        NodeList texts = parse(svg).getElementsByTagNameNS("http://www.w3.org/2000/svg", "text");
        List<String> words = new ArrayList<>();
        for (int i = 0; i < texts.getLength(); i++) {
            words.add(texts.item(i).getTextContent());
        }
        return String.join(" ", words).replaceAll("[\\s\\u00a0]+", " ");
    }

    private static Document parse(byte[] svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
            assertThat(document.getDocumentElement().getLocalName()).isEqualTo("svg");
            return document;
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError("not well-formed XML", e);
        }
    }
}
