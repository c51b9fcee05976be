package org.loomwright.core.open;

import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;

import java.util.HashSet;
import java.util.Set;

/** Is everything said that whoever recorded the loom could see: the vehicle, the state of the wires, lengths read again? */
final class RecordQuestions {

    private final Inquiry inquiry;

    RecordQuestions(Inquiry inquiry) {
        this.inquiry = inquiry;
    }

    void ask() {
        askAboutVehicle();
        inquiry.loom().wires().values().stream()
                .filter(wire -> inquiry.stock().wires().containsKey(wire.id()))
                .forEach(this::askForCondition);
        askForReadings();
    }

    private void askAboutVehicle() {
        inquiry.ask(
                OpenRule.NOT_STANDARD,
                Subject.of(ThingKind.VEHICLE, ""),
                !inquiry.loom().document().vehicle().notStandard().isEmpty(),
                "Nobody said what on the vehicle is not as it left the factory.",
                "What is not standard on the vehicle, as far as the wiring knows of it? If nothing"
                        + " is, say so.");
    }

    private void askForCondition(Wire wire) {
        inquiry.ask(
                OpenRule.CONDITION,
                Subject.of(ThingKind.WIRE, wire.id()),
                wire.condition() != Condition.UNKNOWN,
                "Nobody looked at the state of wire %s (%s, %s)."
                        .formatted(wire.id(), wire.colour().letters(), wire.circuit()),
                "Is wire %s sound, or is it renewed?".formatted(wire.id()));
    }

    /** Only a bench that read some lengths again is asked about the others. */
    private void askForReadings() {
        boolean readsAgain =
                inquiry.stock().segments().values().stream()
                        .anyMatch(it -> it.readings().size() > 1);
        if (!readsAgain) {
            return;
        }
        Set<String> seen = new HashSet<>();
        for (Segment segment : inquiry.loom().walk()) {
            Segment recorded = inquiry.amended().piece(segment.id()).recorded();
            if (inquiry.stock().segments().containsKey(recorded.id()) && seen.add(recorded.id())) {
                askForReadings(segment, recorded);
            }
        }
    }

    private void askForReadings(Segment segment, Segment recorded) {
        String as =
                segment.id().equals(recorded.id())
                        ? ""
                        : " (recorded as %s)".formatted(recorded.id());
        inquiry.ask(
                OpenRule.READINGS,
                Subject.of(ThingKind.SEGMENT, segment.id()),
                recorded.readings().size() > 1,
                "The length of segment %s%s, %s, was not read again, as others were."
                        .formatted(segment.id(), as, recorded.length()),
                "What does a second measurement of %s give?".formatted(recorded.id()));
    }
}
