package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.Load;
import org.loomwright.core.kit.Reminder;
import org.loomwright.core.kit.Selector;
import org.loomwright.core.loom.Device;
import org.loomwright.core.quantity.Current;

/** Tells what a kit cannot do, of every device that it is about. */
final class Reminders {

    private final Draft draft;

    Reminders(Draft draft) {
        this.draft = draft;
    }

    void tell() {
        draft.recipe.reminders().stream()
                .filter(reminder -> reminder.when().holds(draft.facts))
                .forEach(this::tell);
    }

    private void tell(Reminder reminder) {
        Selector about = reminder.about();
        if (about == null) {
            draft.note(
                    ThingKind.VEHICLE,
                    "",
                    "reminder",
                    draft.filled(reminder.text()),
                    reminder.provenance());
            return;
        }
        draft.loom.devices().values().stream()
                .filter(device -> about.fits(device, draft.bench.catalogue()))
                .filter(device -> isBelow(device, reminder.below()))
                .forEach(
                        device ->
                                draft.note(
                                        ThingKind.DEVICE,
                                        device.id(),
                                        "reminder",
                                        "%s (%s): %s"
                                                .formatted(
                                                        device.id(),
                                                        device.name(),
                                                        draft.filled(reminder.text())),
                                        reminder.provenance()));
    }

    private boolean isBelow(Device device, @Nullable String question) {
        if (question == null) {
            return true;
        }
        Current rating = device.particulars().rating();
        return rating == null || rating.compareTo(draft.current(new Load(null, question))) < 0;
    }
}
