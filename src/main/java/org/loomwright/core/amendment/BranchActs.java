package org.loomwright.core.amendment;

import org.loomwright.core.amendment.Whole.Cut;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;

import java.util.Set;

/** The amendments that change the tree: breakouts, branches and lengths. */
final class BranchActs {

    private BranchActs() {}

    static void breakOut(Amendment.BreakOutBranch amendment, Step step) {
        step.needWhole(amendment.segment())
                .ifPresent(whole -> checkPosition(whole, amendment.at(), step));
        step.claim(ThingKind.NODE, amendment.breakout().id(), "/breakout/id");
        step.claim(ThingKind.SEGMENT, amendment.farSegment(), "/farSegment");
        claimBranch(amendment.branch(), amendment.end(), step);
        step.refuseUnless(
                amendment.branch().from().equals(amendment.breakout().id()),
                "branch-astray",
                "/branch/from",
                "branch %s starts at node %s, but the breakout is node %s"
                        .formatted(
                                amendment.branch().id(),
                                amendment.branch().from(),
                                amendment.breakout().id()));
        if (step.isSound()) {
            step.loom().whole(amendment.segment()).ifPresent(whole -> cut(whole, amendment, step));
            addBranch(amendment.branch(), amendment.end(), step);
        }
    }

    private static void checkPosition(Whole whole, Length at, Step step) {
        String segment = whole.recorded().id();
        step.refuseUnless(
                at.isPositive() && whole.length().now().isLongerThan(at),
                "breakout-off-segment",
                "/atMm",
                "a breakout at %s must lie between the ends of segment %s, which is %s long"
                        .formatted(at, segment, whole.length().now()));
        whole.findCut(at)
                .ifPresent(
                        cut ->
                                step.refuse(
                                        "breakout-twice",
                                        "/atMm",
                                        "amendment %s made breakout %s at %s of segment %s; run a branch on from there"
                                                .formatted(cut.madeBy(), cut.node(), at, segment)));
    }

    private static void cut(Whole whole, Amendment.BreakOutBranch amendment, Step step) {
        Node breakout = amendment.breakout();
        Cut cut = new Cut(amendment.at(), breakout.id(), amendment.farSegment(), step.id());
        step.loom().cut(whole, cut, breakout);
        step.writes(ThingKind.NODE, breakout.id(), "", "/breakout");
        step.writes(ThingKind.SEGMENT, amendment.farSegment(), "", "/farSegment");
    }

    static void extend(Amendment.ExtendBranch amendment, Step step) {
        Segment branch = amendment.branch();
        step.needNode(
                branch.from(),
                "/branch/from",
                "branch %s is to run on from node %s, but ".formatted(branch.id(), branch.from()));
        claimBranch(branch, amendment.end(), step);
        if (step.isSound()) {
            addBranch(branch, amendment.end(), step);
        }
    }

    private static void claimBranch(Segment branch, Node end, Step step) {
        step.claim(ThingKind.SEGMENT, branch.id(), "/branch/id");
        step.claim(ThingKind.NODE, end.id(), "/end/id");
        step.refuseUnless(
                branch.to().equals(end.id()),
                "branch-astray",
                "/branch/to",
                "branch %s ends at node %s, but its end is node %s"
                        .formatted(branch.id(), branch.to(), end.id()));
        for (int i = 0; i < branch.openings().size(); i++) {
            Opening opening = branch.openings().get(i);
            String pointer = "/branch/openings/" + i;
            step.claim(ThingKind.OPENING, opening.id(), pointer + "/id");
            OpeningActs.checkPosition(opening, branch.id(), branch.length(), pointer, step);
        }
    }

    private static void addBranch(Segment branch, Node end, Step step) {
        step.loom().addNode(end, step.id());
        step.loom().addWhole(new Whole(branch, step.id()));
        step.writes(ThingKind.NODE, end.id(), "", "/end");
        step.writes(ThingKind.SEGMENT, branch.id(), "", "/branch");
        for (int i = 0; i < branch.openings().size(); i++) {
            String opening = branch.openings().get(i).id();
            step.writes(ThingKind.OPENING, opening, "", "/branch/openings/" + i);
        }
    }

    static void changeLength(Amendment.ChangeLength amendment, Step step) {
        step.needWhole(amendment.segment())
                .ifPresent(whole -> changeLength(whole, amendment.length(), step));
    }

    private static void changeLength(Whole whole, Length length, Step step) {
        String segment = whole.recorded().id();
        for (Cut cut : whole.cuts()) {
            step.refuse(
                    "segment-split",
                    "/segment",
                    "segment %s cannot change its length, because amendment %s broke a branch out of it at %s"
                            .formatted(segment, cut.madeBy(), cut.at()));
        }
        for (Opening opening : whole.openingsBeyond(length)) {
            step.refuse(
                    "opening-off-segment",
                    "/lengthMm",
                    "opening %s stands at %s and would fall off segment %s, made %s long"
                            .formatted(opening.id(), opening.position(), segment, length));
        }
        if (length.equals(whole.length().now())) {
            step.refuseUnchanged("segment %s is %s long already".formatted(segment, length));
        }
        if (step.isSound()) {
            whole.length().change(length, step.id());
            step.writes(ThingKind.SEGMENT, segment, "length", "/lengthMm");
        }
    }

    static void remove(Amendment.RemoveBranch amendment, Step step) {
        step.needWhole(amendment.segment())
                .ifPresent(
                        whole -> {
                            refuseIfNeeded(whole, step);
                            if (step.isSound()) {
                                remove(whole, step);
                            }
                        });
    }

    private static void refuseIfNeeded(Whole whole, Step step) {
        String end = whole.recorded().to();
        refuseIfAny("segments run on", step.loom().segmentsFrom(end), end, step);
        refuseIfAny("wires leave for points", step.loom().pointsAt(end), end, step);
        for (Cut cut : whole.cuts()) {
            step.refuse(
                    "branch-in-use",
                    "/segment",
                    "segment %s cannot go, because breakout %s at %s of it, made by amendment %s, is still in use"
                            .formatted(whole.recorded().id(), cut.node(), cut.at(), cut.madeBy()));
        }
    }

    private static void refuseIfAny(String what, Set<String> ids, String end, Step step) {
        step.refuseUnless(
                ids.isEmpty(),
                "branch-in-use",
                "/segment",
                "something is left on it: from its end, node %s, %s: %s"
                        .formatted(end, what, String.join(", ", ids)));
    }

    private static void remove(Whole whole, Step step) {
        Segment segment = whole.recorded();
        step.loom().removeWhole(whole);
        step.loom().removeNode(segment.to());
        step.takesOut(ThingKind.SEGMENT, segment.id(), whole.isStock());
        step.takesOut(ThingKind.NODE, segment.to(), whole.isStock());
        whole.openings()
                .forEach((id, opening) -> step.takesOut(ThingKind.OPENING, id, opening.isStock()));
        heal(segment.from(), step);
    }

    /** Closes the breakout at a node, if an amendment made it and nothing needs it any more. */
    static void heal(String node, Step step) {
        Cut healed = step.loom().healIfFree(node);
        if (healed != null) {
            step.takesOut(ThingKind.NODE, node, false);
            step.takesOut(ThingKind.SEGMENT, healed.farSegment(), false);
        }
    }
}
