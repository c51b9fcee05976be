package org.loomwright.app;

/** What was asked cannot be done as things stand: not there, changed by somebody else, or not an allowed move. */
public abstract sealed class RefusalException extends RuntimeException
        permits FiguresChangedException,
                IllegalMoveException,
                KeyReusedException,
                NotFoundException,
                StaleVersionException,
                TooMuchWorkException {

    /** @param message says what and why, for the log; a page words it anew */
    protected RefusalException(String message) {
        super(message);
    }
}
