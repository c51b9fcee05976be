package org.loomwright.document.pdf;

import org.loomwright.document.pdf.PdfFile.Bookmark;
import org.loomwright.document.scene.Scene;
import org.loomwright.document.scene.Shape.Ink;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Sets headings, text, tables and pictures one below the other, and takes a new page when the last one is full. */
public final class Flow {

    private static final TextStyle SECTION = TextStyle.of(Face.BOLD, 14);
    private static final TextStyle HEADING = TextStyle.of(Face.BOLD, 9.5);
    private static final TextStyle TEXT = TextStyle.of(Face.REGULAR, 8.6);
    private static final double LEAST_UNDER_SECTION_PT = 160;
    private static final double LEAST_UNDER_HEADING_PT = 95;
    private static final double BULLET_INDENT_PT = 10;
    private static final double BASE_LINE = 0.76;

    private final Tag root = Tag.document();
    private final List<Page> pages = new ArrayList<>();
    private final List<Bookmark> bookmarks = new ArrayList<>();
    private Tag section = root;
    private Paper paper;
    private double y;

    /**
     * @param paper the first page
     */
    public Flow(Paper paper) {
        this.paper = paper;
        newPage();
    }

    /** @return the pages set so far */
    public List<Page> pages() {
        return Collections.unmodifiableList(pages);
    }

    /** @return the bookmarks set so far */
    public List<Bookmark> bookmarks() {
        return Collections.unmodifiableList(bookmarks);
    }

    /** @return the size of the page that is being set */
    public Paper paper() {
        return paper;
    }

    /** @return the page that is being set */
    public Page page() {
        return pages.getLast();
    }

    /** @return the section that is being set */
    public Tag section() {
        return section;
    }

    /** @return how much of the page is left */
    public double remainingPt() {
        return paper.bottomPt() - y;
    }

    /** Goes on on a new page of the same paper. */
    public void newPage() {
        pages.add(new Page(paper));
        y = paper.topPt();
    }

    /** Goes on on a new page of this paper. */
    public void newPage(Paper newPaper) {
        paper = newPaper;
        newPage();
    }

    /** Goes on on a new page unless so much is left on this one. */
    public void makeRoom(double heightPt) {
        boolean atTop = y <= paper.topPt();
        if (heightPt > remainingPt() && !atTop) {
            newPage();
        }
    }

    /**
     * Takes the next part of the page.
     *
     * @return its top
     */
    public double take(double heightPt) {
        double top = y;
        y += heightPt;
        return top;
    }

    /** Leaves a gap. */
    public void space(double heightPt) {
        y += heightPt;
    }

    /** Begins a section, with a bookmark. */
    public void section(String title) {
        makeRoom(LEAST_UNDER_SECTION_PT);
        section = root.child(Tag.Role.SECTION);
        if (y > paper.topPt()) {
            space(12);
            Paper here = paper;
            double rule = take(4);
            page().decorate(canvas -> canvas.rule(here.leftPt(), rule, here.rightPt(), rule, 1.6));
        }
        bookmarks.add(new Bookmark(title, pages.size() - 1, y));
        line(Tag.Role.HEADING_1, title, SECTION, take(SECTION.leadingPt()));
        space(5);
    }

    /** Begins a part of a section. */
    public void heading(String title) {
        makeRoom(LEAST_UNDER_HEADING_PT);
        space(3);
        line(Tag.Role.HEADING_2, title, HEADING, take(HEADING.leadingPt()));
        space(3);
    }

    private void line(Tag.Role role, String text, TextStyle style, double top) {
        double left = paper.leftPt();
        double baseLine = top + style.leadingPt() * BASE_LINE;
        page().add(section.child(role), canvas -> canvas.text(text, style, left, baseLine));
    }

    /** Sets a paragraph in the usual style. */
    public void text(String text) {
        text(text, TEXT, 0);
    }

    /** Sets a paragraph in the usual style, in italics. */
    public void note(String text) {
        text(text, TEXT.in(Face.ITALIC), 0);
    }

    /** Sets a paragraph. */
    public void text(String text, TextStyle style, double indentPt) {
        Tag tag = section.child(Tag.Role.PARAGRAPH);
        List<String> lines = style.wrap(text, paper.bodyWidthPt() - indentPt);
        if (lines.size() <= 3) {
            makeRoom(lines.size() * style.leadingPt());
        }
        for (String line : lines) {
            makeRoom(style.leadingPt());
            double left = paper.leftPt() + indentPt;
            double baseLine = take(style.leadingPt()) + style.leadingPt() * BASE_LINE;
            page().add(tag, canvas -> canvas.text(line, style, left, baseLine));
        }
        space(3);
    }

    /** Sets a paragraph with a mark before it. */
    public void bullet(String text) {
        List<String> lines = TEXT.wrap(text, paper.bodyWidthPt() - BULLET_INDENT_PT);
        makeRoom(Math.min(lines.size(), 3) * TEXT.leadingPt());
        double left = paper.leftPt();
        double middle = y + TEXT.leadingPt() / 2;
        page().decorate(canvas -> canvas.box(left + 1, middle - 1.2, 3, 3, Ink.BLACK, 0));
        text(text, TEXT, BULLET_INDENT_PT);
        space(-1.2);
    }

    /** Sets a table. */
    public void table(Table table) {
        new TableSetter(this, table).set();
    }

    /**
     * Sets a picture below everything so far, in the middle of the column.
     *
     * @param scale paper millimetres for one of the scene's
     */
    public void picture(Scene scene, double scale) {
        double width = scene.widthMm() * scale * Paper.POINTS_PER_MM;
        double height = scene.heightMm() * scale * Paper.POINTS_PER_MM;
        makeRoom(height);
        double left = paper.leftPt() + (paper.bodyWidthPt() - width) / 2;
        pictureAt(scene, scale, left, take(height));
        space(6);
    }

    /** Places a picture on the page, wherever the flow stands. */
    public void pictureAt(Scene scene, double scale, double leftPt, double topPt) {
        String spoken = scene.title() + ". " + scene.description();
        page().add(
                        section.figure(spoken),
                        canvas -> PdfSceneWriter.draw(canvas, scene, leftPt, topPt, scale));
    }
}
