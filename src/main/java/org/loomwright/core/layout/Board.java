package org.loomwright.core.layout;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.geometry.CellGrid;
import org.loomwright.core.geometry.Rectangle;

import java.util.List;

/** What is drawn so far. Its bounds float: only their width and height are limited, not where they lie. */
final class Board {

    private static final double CELL_MM = 10;

    private final double widthMm;
    private final double heightMm;
    private final CellGrid<Piece> pieces;
    private boolean empty = true;
    private @Nullable Rectangle bounds;

    Board(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.pieces =
                new CellGrid<>(new Rectangle(-widthMm, -heightMm, widthMm, heightMm), CELL_MM);
    }

    /** Draws them if there is room and nothing comes too near, themselves included. */
    boolean takes(List<Piece> added, NearnessRule rule) {
        Rectangle grown = bounds;
        for (Piece piece : added) {
            grown = grown == null ? piece.bounds() : grown.with(piece.bounds());
        }
        if (grown == null || grown.widthMm() > widthMm || grown.heightMm() > heightMm) {
            return false;
        }
        for (int i = 0; i < added.size(); i++) {
            if (!admits(added.get(i), rule) || !admits(added.get(i), added.subList(0, i), rule)) {
                return false;
            }
        }
        added.forEach(piece -> pieces.add(piece, piece.line(), 0));
        empty &= added.isEmpty();
        bounds = grown;
        return true;
    }

    private boolean admits(Piece piece, NearnessRule rule) {
        return !pieces.anyNear(
                piece.line(), rule.clearanceMm(), other -> !rule.allows(piece, other));
    }

    private boolean admits(Piece piece, List<Piece> others, NearnessRule rule) {
        for (Piece other : others) {
            if (!rule.allows(piece, other)) {
                return false;
            }
        }
        return true;
    }

    boolean isEmpty() {
        return empty;
    }

    /** Work done so far. */
    long looked() {
        return pieces.looked();
    }
}
