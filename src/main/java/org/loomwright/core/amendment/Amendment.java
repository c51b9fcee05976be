package org.loomwright.core.amendment;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Voltage;

/**
 * One change to a loom. Distances along a segment always count from its end nearer the datum and along the segment as it was
 * before any branch was broken out of it, so that two breakouts on one segment do not depend on their order. {@link Amendments}
 * applies them and states the finer rules.
 */
public sealed interface Amendment {

    /** @return unique within a specification */
    String id();

    /** @return why, in the customer's words; may be empty */
    String reason();

    /** Adds a wire between two existing points. */
    record AddWire(String id, String reason, Wire wire) implements Amendment {}

    /** Takes a wire out. */
    record RemoveWire(String id, String reason, String wire) implements Amendment {}

    /**
     * Puts a new wire of this colour and size in the place of an old one; ends, circuit and id stay. Colour and size may be the
     * old ones: the wire is new all the same.
     */
    record ReplaceWire(String id, String reason, String wire, WireColour colour, String size)
            implements Amendment {}

    /** Moves one end of a wire to another point. */
    record MoveWireEnd(String id, String reason, String wire, Side side, WireEnd to)
            implements Amendment {}

    /** Puts another terminal on one end of a wire. */
    record ChangeTerminal(String id, String reason, String wire, Side side, String terminal)
            implements Amendment {}

    /**
     * Breaks a new branch out of a segment.
     *
     * @param segment the segment; the part nearer the datum keeps its id
     * @param at distance of the new breakout along it, more than zero and less than its length
     * @param breakout the new node there
     * @param farSegment id for the part beyond the new breakout
     * @param branch the new branch, from the new breakout to the new end
     * @param end the new node at its end
     */
    record BreakOutBranch(
            String id,
            String reason,
            String segment,
            Length at,
            Node breakout,
            String farSegment,
            Segment branch,
            Node end)
            implements Amendment {}

    /** Runs the loom on from an existing node: a new segment, from that node, to a new end. */
    record ExtendBranch(String id, String reason, Segment branch, Node end) implements Amendment {}

    /** Makes a whole segment longer or shorter: one that nothing was broken out of and whose openings stay on it. */
    record ChangeLength(String id, String reason, String segment, Length length)
            implements Amendment {}

    /**
     * Takes off a last segment with its end, on which nothing may be left. A breakout that an amendment made and that nothing
     * else needs is healed: its two parts become one segment again.
     */
    record RemoveBranch(String id, String reason, String segment) implements Amendment {}

    /** Adds a device with its points. */
    record AddDevice(String id, String reason, Device device) implements Amendment {}

    /** Takes a device away, on which no wire may be left. */
    record RemoveDevice(String id, String reason, String device) implements Amendment {}

    /**
     * Puts another thing in the place of a device, or says more about it. What is not said is no longer known; its id and its points,
     * with all wires on them, stay.
     *
     * @param device the device
     * @param name what it is called now
     * @param kind what it is now
     * @param load what it draws now
     * @param particulars what else is known about it now
     */
    record ChangeDevice(
            String id,
            String reason,
            String device,
            String name,
            DeviceKind kind,
            @Nullable Current load,
            Particulars particulars)
            implements Amendment {}

    /**
     * Turns the vehicle's earth or changes its system voltage, for the whole loom.
     *
     * @param earth which battery terminal goes to the body now
     * @param system the nominal system voltage now
     */
    record ChangeVehicle(String id, String reason, EarthPolarity earth, Voltage system)
            implements Amendment {}

    /** Gives a segment, with all parts broken out of it, another covering. */
    record ChangeCovering(String id, String reason, String segment, Finish finish)
            implements Amendment {}

    /** Adds a grommet, hole, tube or clip; its position counts along the whole segment. */
    record AddOpening(String id, String reason, String segment, Opening opening)
            implements Amendment {}

    /** Takes an opening away. */
    record RemoveOpening(String id, String reason, String opening) implements Amendment {}
}
