package org.loomwright.core.electrical.structure;

import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.EarthPolarity;

/** How the checks call things. */
final class Words {

    private Words() {}

    /** For example {@code FAN-MOTOR (electric radiator fan)}. */
    static String of(Device device) {
        return "%s (%s)".formatted(device.id(), device.name());
    }

    static String of(EarthPolarity earth) {
        return switch (earth) {
            case POSITIVE -> "positive earth";
            case NEGATIVE -> "negative earth";
        };
    }

    static Subject subject(Device device) {
        return Subject.of(ThingKind.DEVICE, device.id());
    }
}
