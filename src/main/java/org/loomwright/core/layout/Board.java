package org.loomwright.core.layout;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.geometry.Rectangle;

import java.util.ArrayList;
import java.util.List;

/** What is drawn so far. Its bounds float: only their width and height are limited, not where they lie. */
final class Board {

    private final double widthMm;
    private final double heightMm;
    private final List<Piece> pieces = new ArrayList<>();
    private @Nullable Rectangle bounds;

    Board(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
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
            if (!admits(added.get(i), pieces, rule)
                    || !admits(added.get(i), added.subList(0, i), rule)) {
                return false;
            }
        }
        pieces.addAll(added);
        bounds = grown;
        return true;
    }

    private boolean admits(Piece piece, List<Piece> others, NearnessRule rule) {
        for (Piece other : others) {
            if (!rule.allows(piece, other)) {
                return false;
            }
        }
        return true;
    }

    List<Piece> pieces() {
        return pieces;
    }
}
