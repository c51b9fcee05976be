package org.loomwright.core.loom;

import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.quantity.Voltage;

/** Whether the vehicle sheet can be true. */
final class VehicleCheck {

    private static final int FIRST_YEAR = 1885;
    private static final int LAST_YEAR = 2100;
    private static final Voltage LOWEST = Voltage.ofMillivolts(4_000);
    private static final Voltage HIGHEST = Voltage.ofMillivolts(48_000);

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
                vehicle.system().compareTo(LOWEST) >= 0 && vehicle.system().compareTo(HIGHEST) <= 0,
                "voltage-not-sane",
                at("/systemVoltageV"),
                "The system voltage is %s; it must lie between %s and %s.",
                vehicle.system(),
                LOWEST,
                HIGHEST);
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
