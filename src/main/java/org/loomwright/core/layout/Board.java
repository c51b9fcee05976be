package org.loomwright.core.layout;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.geometry.Rectangle;

import java.util.ArrayList;
import java.util.List;

/** What is drawn so far. Its bounds float: only their width and height are limited, not where they lie. */
final class Board {

    private final double widthMm;
    private final double heightMm;
    private final NearnessRule rule;
    private final List<Piece> pieces = new ArrayList<>();
    private @Nullable Rectangle bounds;

    Board(double widthMm, double heightMm, NearnessRule rule) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.rule = rule;
    }

    /** Draws them if there is room and nothing comes too near, themselves included. */
    boolean takes(List<Piece> added) {
        Rectangle grown = bounds;
        for (Piece piece : added) {
            grown = grown == null ? piece.bounds() : grown.with(piece.bounds());
        }
        if (grown == null || grown.widthMm() > widthMm || grown.heightMm() > heightMm) {
            return false;
        }
        for (int i = 0; i < added.size(); i++) {
            if (!admits(added.get(i), pieces) || !admits(added.get(i), added.subList(0, i))) {
                return false;
            }
        }
        pieces.addAll(added);
        bounds = grown;
        return true;
    }

    private boolean admits(Piece piece, List<Piece> others) {
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
