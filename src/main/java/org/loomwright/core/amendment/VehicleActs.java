package org.loomwright.core.amendment;

import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.VehicleSheet;

/** The amendments that concern the vehicle as a whole. */
final class VehicleActs {

    private VehicleActs() {}

    static void change(Amendment.ChangeVehicle amendment, Step step) {
        Tracked<VehicleSheet> vehicle = step.loom().vehicle();
        VehicleSheet now = vehicle.now();
        VehicleSheet changed =
                new VehicleSheet(
                        now.name(),
                        now.year(),
                        now.hand(),
                        amendment.earth(),
                        amendment.system(),
                        now.notStandard());
        if (changed.equals(now)) {
            step.refuseUnchanged("the vehicle is like that already");
            return;
        }
        vehicle.change(changed, step.id());
        step.writes(ThingKind.VEHICLE, "", "", "/systemVoltageV");
    }
}
