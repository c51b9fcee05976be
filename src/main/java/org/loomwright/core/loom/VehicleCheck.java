package org.loomwright.core.loom;

import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;

/** Whether the vehicle sheet can be true. */
final class VehicleCheck {

    private static final int FIRST_YEAR = 1885;
    private static final int LAST_YEAR = 2100;

    private final Faults faults;

    VehicleCheck(Faults faults) {
        this.faults = faults;
    }

    void check(VehicleSheet vehicle) {
        faults.checkText(at("/name"), "name", vehicle.name());
        faults.addUnless(
                vehicle.year() >= FIRST_YEAR && vehicle.year() <= LAST_YEAR,
                "year-not-sane",
                at("/year"),
                "The vehicle's year is %d; it must lie between %d and %d.",
                vehicle.year(),
                FIRST_YEAR,
                LAST_YEAR);
        faults.addUnless(
                LoomLimits.isSane(vehicle.system()),
                "voltage-not-sane",
                at("/systemVoltageV"),
                "The system voltage is %s; it must lie between %s and %s.",
                vehicle.system(),
                LoomLimits.LOWEST_VOLTAGE,
                LoomLimits.HIGHEST_VOLTAGE);
        faults.checkCount(
                at("/notStandard"), "remarks", vehicle.notStandard().size(), LoomLimits.MOST_ROWS);
        for (int i = 0; i < vehicle.notStandard().size(); i++) {
            faults.checkText(at("/notStandard/" + i), "remark", vehicle.notStandard().get(i));
        }
    }

    private static Subject at(String pointer) {
        return new Subject(ThingKind.VEHICLE, "", "/vehicle" + pointer);
    }
}
