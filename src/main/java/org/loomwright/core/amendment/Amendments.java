package org.loomwright.core.amendment;

import org.loomwright.core.amendment.Ledger.Place;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.LoomLimits;
import org.loomwright.core.loom.Point;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Applies an ordered list of amendments to a stock loom. Pure: the same stock, list and catalogue give the same outcome, and the
 * stock loom is left as it is.
 *
 * <p>The outcome is the amended loom, proven again by {@link LoomChecker}, or all the reasons why not. An amendment that cannot
 * be applied is skipped and the next ones are still tried, so that one pass tells everything; every reason names the amendment
 * and the thing and points into the list ({@code /amendments/2/to}). What depends on a refused amendment says so. A fault that
 * only the finished loom shows (a colour that the code does not know) is told of the amendment that wrote it; an amendment whose
 * slip a later one corrects is let pass.
 *
 * <p>Rules beyond those of {@link Amendment}:
 *
 * <ul>
 *   <li>An id names one thing for the whole list. It is not given again after the thing was taken out.
 *   <li>Amendments name a segment as it was recorded or added, never a piece that a breakout cut from it.
 *   <li>An opening exactly at a new breakout belongs to the piece nearer the datum.
 *   <li>The near piece keeps the recorded departure; a far piece runs on along the trunk and has none. The sum of bends is
 *       spread evenly along the whole, rounded at each cut so that the pieces add up to the whole.
 *   <li>Repeat readings speak of the whole segment: its pieces have none, {@link AmendedLoom#piece} still shows them, and they
 *       are back when the breakout is healed. They are likewise gone while a changed length differs from the recorded one.
 *   <li>An end-to-end check no longer speaks, and is dropped, while a length between its ends differs from the recorded one
 *       or when one of its ends is taken off ({@link AmendedLoom#voided}). Breakouts leave checks alone.
 *   <li>A branch that is taken off takes its openings with it.
 *   <li>A changed device says only what the amendment says of it; its points stay and keep their origin.
 *   <li>Another terminal is fitted when the one before was, seen from the covering.
 *   <li>A replaced wire is new, so that replacing an old one by its like is a change.
 * </ul>
 *
 * <p>Cost: linear in the size of the loom plus, for each amendment, the logarithm of what stands on the things that it names;
 * with changed lengths also checks times the depth of the tree.
 */
public final class Amendments {

    /** Faults about a covering; the piece nearest the datum tells them for all pieces of a segment. */
    private static final Set<String> ABOUT_FINISH =
            Set.of(
                    "covering-unknown",
                    "colour-unknown",
                    "yarn-without-weave",
                    "yarn-missing",
                    "number-not-sane",
                    "text-length");

    private static final String CHECKER_PREFIX = "loom.";

    private final List<Amendment> amendments;
    private final Catalogue catalogue;
    private final WorkingLoom working;
    private final Ledger ledger;
    private final Set<String> ids = new HashSet<>();
    private final List<Finding> reasons = new ArrayList<>();

    private Amendments(Loom stock, List<Amendment> amendments, Catalogue catalogue) {
        this.amendments = amendments;
        this.catalogue = catalogue;
        this.working = new WorkingLoom(stock);
        this.ledger = new Ledger(amendments);
    }

    /**
     * @param stock the loom as it was recorded
     * @param amendments the changes, in order
     * @param catalogue the tables that both refer to
     * @return the amended loom with the origin of its parts, or every reason why there is none: what was refused in the order of
     *     the list, then what only the finished loom shows
     */
    public static Outcome<AmendedLoom> apply(
            Loom stock, List<Amendment> amendments, Catalogue catalogue) {
        return new Amendments(stock, List.copyOf(amendments), catalogue).run();
    }

    private Outcome<AmendedLoom> run() {
        for (int i = 0; i < amendments.size(); i++) {
            applyOne(new Step(amendments.get(i), i, working, ledger));
        }
        Result result = new Result(working, ledger);
        LoomDocument document = result.document();
        return switch (LoomChecker.check(document, catalogue)) {
            case Outcome.Accepted<Loom>(Loom proven) ->
                    reasons.isEmpty()
                            ? Outcome.accepted(result.amended(proven))
                            : Outcome.rejected(reasons);
            case Outcome.Rejected<Loom>(List<Finding> faults) -> {
                faults.forEach(fault -> tell(fault, document));
                yield Outcome.rejected(reasons);
            }
        };
    }

    private void applyOne(Step step) {
        checkFrame(step);
        if (step.isSound()) {
            dispatch(step);
        }
        if (!step.isSound()) {
            ledger.refuse(step.amendment());
            reasons.addAll(step.reasons());
        }
    }

    private void checkFrame(Step step) {
        String id = step.id();
        step.refuseUnless(
                !id.isBlank() && id.length() <= LoomLimits.LONGEST_ID,
                "id-malformed",
                "/id",
                "its id must have 1 to %d characters".formatted(LoomLimits.LONGEST_ID));
        step.refuseUnless(
                ids.add(id), "id-twice", "/id", "an earlier amendment has the same id already");
        step.refuseUnless(
                step.amendment().reason().length() <= LoomLimits.LONGEST_TEXT,
                "text-length",
                "/reason",
                "its reason must have at most %d characters".formatted(LoomLimits.LONGEST_TEXT));
    }

    private static void dispatch(Step step) {
        switch (step.amendment()) {
            case Amendment.AddWire a -> WireActs.add(a, step);
            case Amendment.RemoveWire a -> WireActs.remove(a, step);
            case Amendment.ReplaceWire a -> WireActs.replace(a, step);
            case Amendment.MoveWireEnd a -> WireActs.moveEnd(a, step);
            case Amendment.ChangeTerminal a -> WireActs.changeTerminal(a, step);
            case Amendment.BreakOutBranch a -> BranchActs.breakOut(a, step);
            case Amendment.ExtendBranch a -> BranchActs.extend(a, step);
            case Amendment.ChangeLength a -> BranchActs.changeLength(a, step);
            case Amendment.RemoveBranch a -> BranchActs.remove(a, step);
            case Amendment.AddDevice a -> DeviceActs.add(a, step);
            case Amendment.RemoveDevice a -> DeviceActs.remove(a, step);
            case Amendment.ChangeDevice a -> DeviceActs.change(a, step);
            case Amendment.ChangeVehicle a -> VehicleActs.change(a, step);
            case Amendment.ChangeCovering a -> OpeningActs.changeCovering(a, step);
            case Amendment.AddOpening a -> OpeningActs.add(a, step);
            case Amendment.RemoveOpening a -> OpeningActs.remove(a, step);
        }
    }

    /** Tells a fault of the finished loom of the amendment that wrote it, where one did. */
    private void tell(Finding fault, LoomDocument document) {
        String code = fault.code().substring(CHECKER_PREFIX.length());
        Subject thing = thing(fault.subject(), document);
        boolean toldByNearPiece =
                thing.kind() == ThingKind.SEGMENT
                        && ABOUT_FINISH.contains(code)
                        && working.wholeOfFarPiece(thing.id()).isPresent();
        if (!toldByNearPiece) {
            reasons.add(told("amendment." + code, thing, aspect(fault, code), fault.text()));
        }
    }

    /** The thing without its place; a point with its device, which the checker gives by its place alone. */
    private static Subject thing(Subject subject, LoomDocument document) {
        if (subject.kind() != ThingKind.POINT) {
            return Subject.of(subject.kind(), subject.id());
        }
        String[] path = subject.pointer().split("/", -1);
        Device device = document.devices().get(Integer.parseInt(path[2]));
        Point point = device.points().get(Integer.parseInt(path[4]));
        return Subject.of(ThingKind.POINT, device.id() + "/" + point.name());
    }

    private Finding told(String code, Subject thing, String aspect, String text) {
        Optional<Place> place = ledger.findPlace(thing, aspect);
        if (place.isEmpty()) {
            return Finding.fault(code, thing, "The amended loom: " + text);
        }
        String amendment = place.get().amendment();
        return Finding.fault(
                code,
                new Subject(ThingKind.AMENDMENT, amendment, place.get().pointer()),
                "Amendment %s: %s".formatted(amendment, text));
    }

    /** Which part of the thing the fault is about, in the words that the acts use when they write it. */
    private static String aspect(Finding fault, String code) {
        String pointer = fault.subject().pointer();
        return switch (fault.subject().kind()) {
            case WIRE -> {
                String last = pointer.substring(pointer.lastIndexOf('/') + 1);
                yield last.equals("a") || last.equals("b") ? last : code.replace("-unknown", "");
            }
            case SEGMENT ->
                    ABOUT_FINISH.contains(code)
                            ? "finish"
                            : code.startsWith("length") ? "length" : "";
            case LOOM,
                    VEHICLE,
                    NODE,
                    OPENING,
                    DEVICE,
                    POINT,
                    CHECK,
                    AMENDMENT,
                    REQUEST,
                    SPECIFICATION,
                    SETTINGS,
                    WORK_ORDER ->
                    "";
        };
    }
}
