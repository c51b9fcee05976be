package org.loomwright.core.amendment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.core.amendment.Amending.accept;
import static org.loomwright.testing.LoomSketch.plainDevice;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.AmendedLoom.TakenOut;
import org.loomwright.core.amendment.Amendment.AddDevice;
import org.loomwright.core.amendment.Amendment.ChangeDevice;
import org.loomwright.core.amendment.Amendment.ChangeVehicle;
import org.loomwright.core.amendment.Amendment.RemoveDevice;
import org.loomwright.core.amendment.Amendment.RemoveWire;
import org.loomwright.core.amendment.Origin.Act;
import org.loomwright.core.amendment.Origin.ByAmendment;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.difference.LoomDifference;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;

import java.util.List;

/** Devices and the vehicle that change while the loom round them stays. */
class DeviceChangeTest extends AmendmentRefusals {

    private static final Voltage TWELVE = Voltage.ofMillivolts(12_000);

    private static final Particulars RATED =
            new Particulars(
                    "side-lamps",
                    Current.ofMilliamperes(5_000),
                    TWELVE,
                    EarthPolarity.NEGATIVE,
                    List.of());

    private static ChangeDevice change(String id, String device, String name, DeviceKind kind) {
        return change(id, device, name, kind, null, Particulars.NONE);
    }

    private static ChangeDevice change(
            String id,
            String device,
            String name,
            DeviceKind kind,
            @Nullable Current load,
            Particulars particulars) {
        return new ChangeDevice(id, "", device, name, kind, load, particulars);
    }

    @Test
    void aDeviceBecomesAnotherAndKeepsItsIdItsPointsAndItsWires() {
        Device was = stock.getDevice("L1");
        AmendedLoom amended =
                accept(
                        stock,
                        change(
                                "A1",
                                "L1",
                                "side lamp, halogen",
                                DeviceKind.LAMP,
                                Current.ofMilliamperes(1_750),
                                RATED));

        assertThat(amended.loom().getDevice("L1"))
                .isEqualTo(
                        new Device(
                                "L1",
                                "side lamp, halogen",
                                DeviceKind.LAMP,
                                Current.ofMilliamperes(1_750),
                                RATED,
                                was.points()));
        assertThat(amended.loom().wires()).isEqualTo(stock.wires());
        assertThat(amended.origin(ThingKind.DEVICE, "L1"))
                .isEqualTo(new ByAmendment(Act.CHANGED, List.of("A1")));
        assertThat(amended.origin(ThingKind.POINT, "L1/1")).isEqualTo(Origin.STOCK);
    }

    @Test
    void theDifferenceTellsWhatBecameOfTheDevice() {
        AmendedLoom amended = accept(stock, change("A1", "L1", "horn", DeviceKind.HORN));

        assertThat(LoomDifference.between(stock, amended.loom()).entries())
                .extracting(LoomDifference.Entry::text)
                .containsExactly("device L1 changed: name horn, was lamp L1; kind horn, was lamp");
    }

    @Test
    void laterAmendmentsSeeTheChange() {
        AmendedLoom amended =
                accept(
                        stock,
                        new AddDevice("A1", "", plainDevice("X1", DeviceKind.RELAY, "N5", "N5")),
                        change("A2", "X1", "fuse", DeviceKind.FUSE),
                        change("A3", "X1", "fuse", DeviceKind.FUSE, null, fused("1", "2")),
                        wire("A4", "W9", "X1/2", "L1/1"));

        assertThat(amended.loom().getDevice("X1").particulars().fuses()).hasSize(1);
        assertThat(amended.origin(ThingKind.DEVICE, "X1"))
                .isEqualTo(new ByAmendment(Act.ADDED, List.of("A1", "A2", "A3")));
        assertThat(amended.origin(ThingKind.POINT, "X1/1"))
                .isEqualTo(new ByAmendment(Act.ADDED, List.of("A1")));
        reasons(
                        change("A1", "L1", "lamp", DeviceKind.LAMP),
                        change("A2", "L1", "lamp", DeviceKind.LAMP))
                .containsExactly(
                        "amendment.changes-nothing | /amendments/1 | Amendment A2: it changes"
                                + " nothing: device L1 is like that already.");
    }

    private static Particulars fused(String from, String to) {
        FittedFuse fuse = new FittedFuse(from, to, FuseStyle.BLADE, Current.ofMilliamperes(15_000));
        return new Particulars(null, null, null, null, List.of(fuse));
    }

    @Test
    void aChangedDeviceCanBeTakenAwayAndIsThenGone() {
        RemoveWire w4 = new RemoveWire("A1", "", "W4");
        RemoveWire w5 = new RemoveWire("A2", "", "W5");
        ChangeDevice change = change("A3", "L2", "lamp", DeviceKind.HORN);
        RemoveDevice remove = new RemoveDevice("A4", "", "L2");
        AmendedLoom amended = accept(stock, w4, w5, change, remove);

        assertThat(amended.loom().devices()).doesNotContainKey("L2");
        assertThat(amended.takenOut())
                .contains(new TakenOut(Subject.of(ThingKind.DEVICE, "L2"), "A4"));
        reasons(w4, w5, remove, change)
                .containsExactly(
                        "amendment.taken-out | /amendments/3/device | Amendment A3: device L2 was"
                                + " taken out by amendment A4.");
    }

    @Test
    void aDeviceThatIsNotThereCannotChange() {
        reasons(change("A1", "X7", "lamp", DeviceKind.LAMP))
                .containsExactly(
                        "amendment.device-unknown | /amendments/0/device | Amendment A1: device X7"
                                + " does not exist.");
    }

    @Test
    void whatCannotBeTrueOfADeviceIsToldOfTheAmendmentThatSaysIt() {
        reasons(
                        change("A1", "L1", " ", DeviceKind.LAMP),
                        change("A2", "L2", "lamp", DeviceKind.LAMP, null, fused("1", "2")),
                        change("A3", "F1", "fuse box", DeviceKind.FUSE_BOX, null, fused("1", "9")))
                .containsExactlyInAnyOrder(
                        "amendment.text-length | /amendments/0 | Amendment A1: The name of device"
                                + " L1 must have 1 to 300 characters, has 0.",
                        "amendment.fuse-out-of-place | /amendments/1 | Amendment A2: Device L2 is a"
                                + " lamp; only a fuse box or a fuse holder has fuses fitted in it.",
                        "amendment.point-unknown | /amendments/2 | Amendment A3: A fuse is fitted"
                                + " on point 9, but device F1 has no such point.");
    }

    @Test
    void aKindThatDoesNotGoWithTheFusesThatStayIsAFault() {
        Particulars fused = fused("1", "2");
        reasons(
                        change("A1", "F1", "fuse box", DeviceKind.FUSE_BOX, null, fused),
                        change("A2", "F1", "terminal block", DeviceKind.JOINT, null, fused))
                .containsExactly(
                        "amendment.fuse-out-of-place | /amendments/1 | Amendment A2: Device F1 is a"
                            + " joint; only a fuse box or a fuse holder has fuses fitted in it.");
    }

    @Test
    void theVehicleTurnsItsEarthAndTheRestOfItStays() {
        AmendedLoom amended =
                accept(stock, new ChangeVehicle("A1", "", EarthPolarity.NEGATIVE, TWELVE));

        assertThat(amended.loom().document().vehicle().earth()).isEqualTo(EarthPolarity.NEGATIVE);
        assertThat(amended.loom().document().vehicle().name())
                .isEqualTo(stock.document().vehicle().name());
        assertThat(amended.origin(ThingKind.VEHICLE, ""))
                .isEqualTo(new ByAmendment(Act.CHANGED, List.of("A1")));
        assertThat(LoomDifference.between(stock, amended.loom()).entries())
                .extracting(LoomDifference.Entry::text)
                .containsExactly("vehicle changed: earth negative, was positive");
    }

    @Test
    void theLastChangeOfTheVehicleHolds() {
        AmendedLoom amended =
                accept(
                        stock,
                        new ChangeVehicle(
                                "A1", "", EarthPolarity.NEGATIVE, Voltage.ofMillivolts(6_000)),
                        new ChangeVehicle("A2", "", EarthPolarity.POSITIVE, TWELVE));

        assertThat(amended.loom()).isEqualTo(stock);
        assertThat(amended.origins()).isEmpty();
    }

    @Test
    void aVehicleThatCannotBeIsAFaultOfItsAmendment() {
        reasons(
                        new ChangeVehicle("A1", "", EarthPolarity.POSITIVE, TWELVE),
                        new ChangeVehicle(
                                "A2", "", EarthPolarity.POSITIVE, Voltage.ofMillivolts(480_000)))
                .containsExactlyInAnyOrder(
                        "amendment.changes-nothing | /amendments/0 | Amendment A1: it changes"
                                + " nothing: the vehicle is like that already.",
                        "amendment.voltage-not-sane | /amendments/1/systemVoltageV | Amendment A2:"
                            + " The system voltage is 480 V; it must lie between 4 V and 48 V.");
    }
}
