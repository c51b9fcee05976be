package org.loomwright.core.amendment;

import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.quantity.Length;

/** The amendments that concern what a segment is covered with and passes through. */
final class OpeningActs {

    private OpeningActs() {}

    static void add(Amendment.AddOpening amendment, Step step) {
        Opening opening = amendment.opening();
        step.claim(ThingKind.OPENING, opening.id(), "/opening/id");
        step.needWhole(amendment.segment())
                .ifPresent(
                        whole -> {
                            checkPosition(
                                    opening,
                                    amendment.segment(),
                                    whole.length().now(),
                                    "/opening",
                                    step);
                            if (step.isSound()) {
                                step.loom().addOpening(whole, opening, step.id());
                                step.writes(ThingKind.OPENING, opening.id(), "", "/opening");
                            }
                        });
    }

    static void checkPosition(
            Opening opening, String segment, Length length, String pointer, Step step) {
        step.refuseUnless(
                !opening.position().isNegative() && !opening.position().isLongerThan(length),
                "opening-off-segment",
                pointer + "/positionMm",
                "opening %s would stand at %s on segment %s, which runs from 0 mm to %s"
                        .formatted(opening.id(), opening.position(), segment, length));
    }

    static void remove(Amendment.RemoveOpening amendment, Step step) {
        step.needOpening(amendment.opening())
                .ifPresent(
                        opening -> {
                            step.loom().removeOpening(amendment.opening());
                            step.takesOut(
                                    ThingKind.OPENING, amendment.opening(), opening.isStock());
                        });
    }

    static void changeCovering(Amendment.ChangeCovering amendment, Step step) {
        step.needWhole(amendment.segment())
                .ifPresent(
                        whole -> {
                            if (amendment.finish().equals(whole.finish().now())) {
                                step.refuseUnchanged(
                                        "segment %s has that covering already"
                                                .formatted(amendment.segment()));
                                return;
                            }
                            whole.finish().change(amendment.finish(), step.id());
                            step.writes(
                                    ThingKind.SEGMENT, amendment.segment(), "finish", "/finish");
                        });
    }
}
