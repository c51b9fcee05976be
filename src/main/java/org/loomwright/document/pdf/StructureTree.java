package org.loomwright.document.pdf;

import org.jspecify.annotations.Nullable;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfStructureElement;
import org.openpdf.text.pdf.PdfWriter;

import java.util.IdentityHashMap;
import java.util.Map;

/** The PDF library's structure elements for our tags, made in the order in which they are first read. */
final class StructureTree {

    private final PdfWriter writer;
    private final Map<Tag, PdfStructureElement> elements = new IdentityHashMap<>();

    StructureTree(PdfWriter writer) {
        this.writer = writer;
    }

    PdfStructureElement element(Tag tag) {
        PdfStructureElement known = elements.get(tag);
        if (known != null) {
            return known;
        }
        PdfStructureElement made = make(tag, tag.parent());
        elements.put(tag, made);
        return made;
    }

    private PdfStructureElement make(Tag tag, @Nullable Tag parent) {
        PdfName type = new PdfName(tag.role().type());
        PdfStructureElement element =
                parent == null
                        ? new PdfStructureElement(writer.getStructureTreeRoot(), type)
                        : new PdfStructureElement(element(parent), type);
        if (!tag.spoken().isEmpty()) {
            element.put(PdfName.ALT, new PdfString(tag.spoken(), PdfString.TEXT_UNICODE));
        }
        if (tag.role() == Tag.Role.HEADING_CELL) {
            element.put(PdfName.A, scope());
        }
        return element;
    }

    /** Says that a heading heads its column. */
    private static PdfDictionary scope() {
        PdfDictionary scope = new PdfDictionary();
        scope.put(PdfName.O, new PdfName("Table"));
        scope.put(new PdfName("Scope"), new PdfName("Column"));
        return scope;
    }
}
