package org.loomwright.document.pdf;

import org.jspecify.annotations.Nullable;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;

/** A page that is set but not yet written: its paper and what will be drawn on it, in reading order. */
public final class Page {

    private final Paper paper;
    private final List<Mark> marks = new ArrayList<>();

    /**
     * @param paper its size
     */
    public Page(Paper paper) {
        this.paper = paper;
    }

    /**
     * Something that will be drawn.
     *
     * @param tag its place in the document's structure, or null for what only decorates the page
     * @param drawing draws it
     */
    record Mark(@Nullable Tag tag, Consumer<Canvas> drawing) {}

    /** Adds something that is read. */
    public void add(Tag tag, Consumer<Canvas> drawing) {
        marks.add(new Mark(tag, drawing));
    }

    /** Adds something that only decorates. */
    public void decorate(Consumer<Canvas> drawing) {
        marks.add(new Mark(null, drawing));
    }

    /** @return its size */
    public Paper paper() {
        return paper;
    }

    List<Mark> marks() {
        return Collections.unmodifiableList(marks);
    }
}
