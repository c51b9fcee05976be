package org.loomwright.core.amendment;

import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Point;

import java.util.Set;

/** The amendments that concern devices. */
final class DeviceActs {

    private DeviceActs() {}

    static void add(Amendment.AddDevice amendment, Step step) {
        Device device = amendment.device();
        step.claim(ThingKind.DEVICE, device.id(), "/device/id");
        for (int i = 0; i < device.points().size(); i++) {
            Point point = device.points().get(i);
            step.needNode(
                    point.node(),
                    "/device/points/%d/node".formatted(i),
                    "point %s/%s is to leave the loom at node %s, but "
                            .formatted(device.id(), point.name(), point.node()));
        }
        if (step.isSound()) {
            step.loom().addDevice(Tracked.made(device, step.id()));
            step.writes(ThingKind.DEVICE, device.id(), "", "/device");
            for (int i = 0; i < device.points().size(); i++) {
                String point = device.id() + "/" + device.points().get(i).name();
                step.writes(ThingKind.POINT, point, "", "/device/points/" + i);
            }
        }
    }

    static void change(Amendment.ChangeDevice amendment, Step step) {
        step.needDevice(amendment.device())
                .ifPresent(
                        device -> {
                            Device changed = changed(device.now(), amendment);
                            if (changed.equals(device.now())) {
                                step.refuseUnchanged(
                                        "device %s is like that already"
                                                .formatted(amendment.device()));
                                return;
                            }
                            device.change(changed, step.id());
                            step.writes(ThingKind.DEVICE, amendment.device(), "", "");
                        });
    }

    private static Device changed(Device old, Amendment.ChangeDevice amendment) {
        return new Device(
                old.id(),
                amendment.name(),
                amendment.kind(),
                amendment.load(),
                amendment.particulars(),
                old.points());
    }

    static void remove(Amendment.RemoveDevice amendment, Step step) {
        Set<String> wires = step.loom().wiresOn(amendment.device());
        step.needDevice(amendment.device())
                .ifPresent(
                        device -> {
                            step.refuseUnless(
                                    wires.isEmpty(),
                                    "device-in-use",
                                    "/device",
                                    "device %s still has wires on it: %s"
                                            .formatted(
                                                    amendment.device(), String.join(", ", wires)));
                            if (step.isSound()) {
                                remove(device, step);
                            }
                        });
    }

    private static void remove(Tracked<Device> device, Step step) {
        step.loom().removeDevice(device.now());
        step.takesOut(ThingKind.DEVICE, device.now().id(), device.isStock());
        device.now().points().forEach(point -> BranchActs.heal(point.node(), step));
    }
}
