package org.loomwright.document.pdf;

import org.openpdf.text.Document;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfBoolean;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfDate;
import org.openpdf.text.pdf.PdfDestination;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfOutline;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;

import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Locale;

/** Writes set pages as a tagged PDF file. The same pages and facts give the same bytes. */
public final class PdfFile {

    private static final PdfName ARTIFACT = new PdfName("Artifact");

    private final DocumentFacts facts;
    private final Frame frame;

    /**
     * @param facts what the file says about itself
     * @param frame head and foot of every page
     */
    public PdfFile(DocumentFacts facts, Frame frame) {
        this.facts = facts;
        this.frame = frame;
    }

    /**
     * @param pages at least one set page
     * @param bookmarks what the reader's side bar lists
     * @return the file
     */
    public byte[] write(List<Page> pages, List<Bookmark> bookmarks) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Document document = new Document(size(pages.getFirst()), 0, 0, 0, 0);
        PdfWriter writer = PdfWriter.getInstance(document, out);
        prepare(document, writer);
        document.open();
        describe(writer);
        StructureTree structure = new StructureTree(writer);
        PdfContentByte content = writer.getDirectContent();
        for (int i = 0; i < pages.size(); i++) {
            Page page = pages.get(i);
            if (i > 0) {
                document.setPageSize(size(page));
                document.newPage();
            }
            writer.setPageEmpty(false);
            int index = i;
            bookmarks.stream()
                    .filter(bookmark -> bookmark.page() == index)
                    .forEach(bookmark -> addBookmark(content, page, bookmark));
            draw(content, page, structure, i + 1, pages.size());
        }
        document.close();
        return StableBytes.settle(out.toByteArray(), facts.identity());
    }

    /**
     * A line of the reader's side bar.
     *
     * @param title what it says
     * @param page index of the page, from 0
     * @param yPt how far down the page
     */
    public record Bookmark(String title, int page, double yPt) {}

    private static Rectangle size(Page page) {
        return new Rectangle((float) page.paper().widthPt(), (float) page.paper().heightPt());
    }

    private void prepare(Document document, PdfWriter writer) {
        writer.setPdfVersion(PdfWriter.VERSION_1_7);
        writer.setTagged();
        writer.setTabs(PdfName.S);
        writer.setViewerPreferences(PdfWriter.PageModeUseOutlines);
        writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, PdfBoolean.PDFTRUE);
        document.setDocumentLanguage(facts.language());
        document.addTitle(facts.title());
        document.addAuthor(facts.author());
        document.addSubject(facts.subject());
        document.addKeywords(facts.keywords());
        document.addCreator("Loomwright");
    }

    private void describe(PdfWriter writer) {
        PdfString date =
                new PdfDate(
                        String.format(
                                Locale.ROOT,
                                "D:%04d%02d%02d000000Z",
                                facts.preparedOn().getYear(),
                                facts.preparedOn().getMonthValue(),
                                facts.preparedOn().getDayOfMonth()));
        writer.getInfo().put(PdfName.CREATIONDATE, date);
        writer.getInfo().put(PdfName.MODDATE, date);
        writer.getExtraCatalog().put(PdfName.LANG, new PdfString(facts.language()));
        writer.createXmpMetadata();
    }

    private static void addBookmark(PdfContentByte content, Page page, Bookmark bookmark) {
        PdfDestination destination =
                new PdfDestination(
                        PdfDestination.XYZ,
                        0,
                        (float) (page.paper().heightPt() - bookmark.yPt()),
                        0);
        new PdfOutline(content.getRootOutline(), destination, bookmark.title());
    }

    private void draw(
            PdfContentByte content, Page page, StructureTree structure, int number, int of) {
        Canvas canvas = new Canvas(content, page.paper().heightPt());
        for (Page.Mark mark : page.marks()) {
            if (mark.tag() == null) {
                content.beginMarkedContentSequence(ARTIFACT, kind("Layout"), true);
            } else {
                content.beginMarkedContentSequence(structure.element(mark.tag()));
            }
            mark.drawing().accept(canvas);
            content.endMarkedContentSequence();
        }
        content.beginMarkedContentSequence(ARTIFACT, kind("Pagination"), true);
        frame.draw(canvas, page.paper(), number, of);
        content.endMarkedContentSequence();
    }

    /** Why something is not read out with the page: it belongs to the page, not to what it says (ISO 32000-1, 14.8.2.2). */
    private static PdfDictionary kind(String type) {
        PdfDictionary kind = new PdfDictionary();
        kind.put(PdfName.TYPE, new PdfName(type));
        return kind;
    }
}
