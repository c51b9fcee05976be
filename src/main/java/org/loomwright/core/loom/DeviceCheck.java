package org.loomwright.core.loom;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether devices stand at nodes of the loom, and whether what is said of them can be true. */
final class DeviceCheck {

    private final Set<String> nodes;
    private final Catalogue catalogue;
    private final Faults faults;

    DeviceCheck(Set<String> nodes, Catalogue catalogue, Faults faults) {
        this.nodes = nodes;
        this.catalogue = catalogue;
        this.faults = faults;
    }

    /** @return the names of its points */
    Set<String> check(Device device, Subject subject) {
        faults.checkText(subject, "name", device.name());
        checkLoad(device, subject);
        faults.addUnless(
                !device.points().isEmpty(),
                "device-without-point",
                subject,
                "Device %s has no connecting point.",
                device.id());
        faults.checkCount(subject, "points", device.points().size(), LoomLimits.MOST_ROWS);
        Set<String> names = new HashSet<>();
        for (int i = 0; i < device.points().size(); i++) {
            checkPoint(device, i, names, subject);
        }
        checkParticulars(device, subject);
        checkFuses(device, names, subject);
        return names;
    }

    private void checkLoad(Device device, Subject subject) {
        Current load = device.load();
        if (load != null) {
            faults.addUnless(
                    load.milliamperes() >= 0 && load.milliamperes() <= LoomLimits.MOST_MILLIAMPERES,
                    "load-not-sane",
                    subject,
                    "The load of device %s is %s; it must be 0 A to %d A.",
                    device.id(),
                    load,
                    LoomLimits.MOST_MILLIAMPERES / 1_000);
        }
    }

    private void checkPoint(Device device, int index, Set<String> names, Subject under) {
        Point point = device.points().get(index);
        Subject subject =
                new Subject(
                        ThingKind.POINT,
                        device.id() + "/" + point.name(),
                        under.pointer() + "/points/" + index);
        faults.checkId(new Subject(ThingKind.POINT, point.name(), subject.pointer()));
        faults.addUnless(
                names.add(point.name()),
                "id-twice",
                subject,
                "Device %s has more than one point %s.",
                device.id(),
                point.name());
        faults.addUnless(
                nodes.contains(point.node()),
                "node-unknown",
                subject,
                "Point %s leaves the loom at node %s, which does not exist.",
                subject.id(),
                point.node());
        faults.checkNotNegative(subject, "tail", point.tail(), LoomLimits.LONGEST_TAIL);
        checkRoom(point, subject);
    }

    private void checkRoom(Point point, Subject subject) {
        Integer takes = point.takes();
        if (takes != null) {
            faults.addUnless(
                    takes >= 1 && takes <= LoomLimits.MOST_ENDS_ON_A_POINT,
                    "takes-not-sane",
                    subject,
                    "Point %s takes %d wire ends; it must be 1 to %d.",
                    subject.id(),
                    takes,
                    LoomLimits.MOST_ENDS_ON_A_POINT);
        }
    }

    private void checkParticulars(Device device, Subject subject) {
        Particulars particulars = device.particulars();
        String serves = particulars.serves();
        if (serves != null) {
            faults.addUnless(
                    catalogue.findService(serves).isPresent(),
                    "serves-unknown",
                    subject,
                    "Device %s serves '%s', which is no service of the catalogue.",
                    device.id(),
                    serves);
        }
        Current rating = particulars.rating();
        if (rating != null) {
            faults.addUnless(
                    rating.milliamperes() > 0
                            && rating.milliamperes() <= LoomLimits.MOST_MILLIAMPERES,
                    "rating-not-sane",
                    subject,
                    "The rating of device %s is %s; it must be more than 0 A and at most %d A.",
                    device.id(),
                    rating,
                    LoomLimits.MOST_MILLIAMPERES / 1_000);
        }
        Voltage voltage = particulars.voltage();
        if (voltage != null) {
            faults.addUnless(
                    LoomLimits.isSane(voltage),
                    "voltage-not-sane",
                    subject,
                    "Device %s is made for %s; it must be %s to %s.",
                    device.id(),
                    voltage,
                    LoomLimits.LOWEST_VOLTAGE,
                    LoomLimits.HIGHEST_VOLTAGE);
        }
    }

    private void checkFuses(Device device, Set<String> points, Subject under) {
        List<FittedFuse> fuses = device.particulars().fuses();
        DeviceKind kind = device.kind();
        faults.addUnless(
                fuses.isEmpty() || kind == DeviceKind.FUSE_BOX || kind == DeviceKind.FUSE,
                "fuse-out-of-place",
                under,
                "Device %s is a %s; only a fuse box or a fuse holder has fuses fitted in it.",
                device.id(),
                kind.words());
        faults.checkCount(under, "fuses", fuses.size(), LoomLimits.MOST_ROWS);
        Set<Set<String>> pairs = new HashSet<>();
        for (int i = 0; i < fuses.size(); i++) {
            FittedFuse fuse = fuses.get(i);
            Subject subject =
                    new Subject(ThingKind.DEVICE, device.id(), under.pointer() + "/fuses/" + i);
            checkFuse(fuse, points, subject);
            faults.addUnless(
                    pairs.add(new HashSet<>(List.of(fuse.from(), fuse.to()))),
                    "fuse-twice",
                    subject,
                    "Device %s has more than one fuse between its points %s and %s.",
                    device.id(),
                    fuse.from(),
                    fuse.to());
        }
    }

    private void checkFuse(FittedFuse fuse, Set<String> points, Subject subject) {
        for (String point : new String[] {fuse.from(), fuse.to()}) {
            faults.addUnless(
                    points.contains(point),
                    "point-unknown",
                    subject,
                    "A fuse is fitted on point %s, but device %s has no such point.",
                    point,
                    subject.id());
        }
        faults.addUnless(
                !fuse.from().equals(fuse.to()),
                "fuse-to-itself",
                subject,
                "A fuse of device %s runs from point %s to itself.",
                subject.id(),
                fuse.from());
        faults.addUnless(
                fuse.marked().milliamperes() > 0
                        && fuse.marked().milliamperes() <= LoomLimits.LARGEST_FUSE_MILLIAMPERES,
                "fuse-not-sane",
                subject,
                "The fuse between points %s and %s of device %s is marked %s; it must be more than"
                        + " 0 A and at most %d A.",
                fuse.from(),
                fuse.to(),
                subject.id(),
                fuse.marked(),
                LoomLimits.LARGEST_FUSE_MILLIAMPERES / 1_000);
    }
}
