package org.loomwright.core.period;

import org.loomwright.core.finding.Subject;

/**
 * One step of the way back to stock.
 *
 * @param act what is done
 * @param subject to what: a part of the amended loom, or one of the stock loom that is to be put back
 * @param text the step in one sentence
 */
public record BackStep(Act act, Subject subject, String text) {

    /** Acts in the order in which they are done. */
    public enum Act {
        /** The vehicle's earth and voltage. */
        VEHICLE,
        /** An added wire that comes off at both ends. */
        CAP_WIRE,
        /** An end that goes back to where it was. */
        MOVE_END_BACK,
        /** A terminal that is made as it was. */
        CHANGE_TERMINAL_BACK,
        /** A wire of another colour or size. */
        REPLACE_WIRE_BACK,
        /** A device that comes out. */
        TAKE_OUT_DEVICE,
        /** A device that is made as it was. */
        CHANGE_DEVICE_BACK,
        /** Something of the stock loom that was taken out. */
        PUT_BACK,
        /** An added opening. */
        CLOSE_OPENING,
        /** An added leg. */
        TIE_BACK_LEG,
        /** A covering or length that is made as it was. */
        RECOVER_SEGMENT
    }
}
