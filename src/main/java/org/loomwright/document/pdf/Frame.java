package org.loomwright.document.pdf;

/** Draws what stands at the head and the foot of every page. */
@FunctionalInterface
public interface Frame {

    /**
     * @param canvas the page
     * @param paper its size
     * @param page its number, from 1
     * @param pages how many there are
     */
    void draw(Canvas canvas, Paper paper, int page, int pages);
}
