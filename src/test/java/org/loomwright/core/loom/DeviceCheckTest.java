package org.loomwright.core.loom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.testing.LoomSketch.mm;

import org.assertj.core.api.AbstractListAssert;
import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.TestCatalogue;
import org.loomwright.testing.TestLooms;

import java.util.List;

/** What may be said of a device besides its load, and what may not. */
class DeviceCheckTest {

    private static final FittedFuse FUSE = fuse("A1", "A2", 35_000);

    private static FittedFuse fuse(String from, String to, long marked) {
        return new FittedFuse(
                from, to, FuseStyle.GLASS_BLOW_MARKED, Current.ofMilliamperes(marked));
    }

    private static Device device(DeviceKind kind, Particulars particulars) {
        List<Point> points =
                List.of(
                        new Point("A1", "N1", mm(50), 2),
                        new Point("A2", "N1", mm(50), 50),
                        new Point("A3", "N1", mm(50)));
        return new Device("D9", "device", kind, null, particulars, points);
    }

    private static Device fused(DeviceKind kind, FittedFuse... fuses) {
        return device(kind, new Particulars(null, null, null, null, List.of(fuses)));
    }

    private static Device said(String serves, long ratingMa, long voltageMv) {
        return device(
                DeviceKind.LAMP,
                new Particulars(
                        serves,
                        Current.ofMilliamperes(ratingMa),
                        Voltage.ofMillivolts(voltageMv),
                        EarthPolarity.NEGATIVE,
                        List.of()));
    }

    private static Device taking(int ends) {
        return new Device(
                "D9",
                "joint",
                DeviceKind.JOINT,
                null,
                List.of(new Point("1", "N1", mm(1)), new Point("2", "N1", mm(1), ends)));
    }

    private static List<Finding> faults(Device device) {
        LoomDocument document = TestLooms.frontSketch().device(device).document();
        return switch (LoomChecker.check(document, TestCatalogue.get())) {
            case Outcome.Accepted<Loom> accepted -> List.of();
            case Outcome.Rejected<Loom>(List<Finding> reasons) -> reasons;
        };
    }

    /** Asserts on "code pointer" of every fault. */
    private static AbstractListAssert<?, List<? extends String>, String, ?> places(Device device) {
        return assertThat(
                faults(device).stream()
                        .map(finding -> finding.code() + " " + finding.subject().pointer())
                        .toList());
    }

    @Test
    void whatCanBeTrueIsTaken() {
        places(said("reversing-lamps", 1, 4_000)).isEmpty();
        places(said("headlamps", 1_000_000, 48_000)).isEmpty();
        places(fused(DeviceKind.FUSE_BOX, FUSE, fuse("A2", "A3", 500_000))).isEmpty();
        places(fused(DeviceKind.FUSE, fuse("A1", "A2", 1))).isEmpty();
    }

    @Test
    void whatADeviceServesStandsInTheTable() {
        places(said("teleport", 1_000, 12_000)).containsExactly("loom.serves-unknown /devices/5");
    }

    @Test
    void aRatingIsMoreThanNothingAndSane() {
        places(said("radio", 0, 12_000)).containsExactly("loom.rating-not-sane /devices/5");
        places(said("radio", 1_000_001, 12_000)).containsExactly("loom.rating-not-sane /devices/5");
    }

    @Test
    void aVoltageIsThatOfSomeVehicle() {
        places(said("radio", 1, 3_999)).containsExactly("loom.voltage-not-sane /devices/5");
        places(said("radio", 1, 48_001)).containsExactly("loom.voltage-not-sane /devices/5");
    }

    @Test
    void fusesAreFittedOnlyWhereThereAreHolders() {
        places(fused(DeviceKind.SWITCH, FUSE)).containsExactly("loom.fuse-out-of-place /devices/5");
    }

    @Test
    void aFuseRunsBetweenTwoPointsOfItsDevice() {
        places(fused(DeviceKind.FUSE_BOX, fuse("A1", "A9", 35_000)))
                .containsExactly("loom.point-unknown /devices/5/fuses/0");
        places(fused(DeviceKind.FUSE_BOX, FUSE, fuse("A3", "A3", 35_000)))
                .containsExactly("loom.fuse-to-itself /devices/5/fuses/1");
    }

    @Test
    void twoPointsHaveOneFuseWhicheverWayItIsWritten() {
        places(fused(DeviceKind.FUSE_BOX, FUSE, FUSE))
                .containsExactly("loom.fuse-twice /devices/5/fuses/1");
        places(fused(DeviceKind.FUSE_BOX, FUSE, fuse("A2", "A1", 50_000)))
                .containsExactly("loom.fuse-twice /devices/5/fuses/1");
    }

    @Test
    void theFigureOnAFuseIsSane() {
        places(fused(DeviceKind.FUSE, fuse("A1", "A2", 0)))
                .containsExactly("loom.fuse-not-sane /devices/5/fuses/0");
        places(fused(DeviceKind.FUSE, fuse("A1", "A2", 500_001)))
                .containsExactly("loom.fuse-not-sane /devices/5/fuses/0");
    }

    @Test
    void aPointTakesOneToFiftyEnds() {
        places(taking(1)).isEmpty();
        places(taking(0)).containsExactly("loom.takes-not-sane /devices/5/points/1");
        places(taking(51)).containsExactly("loom.takes-not-sane /devices/5/points/1");
    }

    @Test
    void aFaultOfAFuseNamesPointsDeviceAndRule() {
        assertThat(faults(fused(DeviceKind.FUSE, fuse("A1", "A2", 0))))
                .singleElement()
                .extracting(Finding::text)
                .isEqualTo(
                        "The fuse between points A1 and A2 of device D9 is marked 0 A; it must be"
                                + " more than 0 A and at most 500 A.");
    }
}
