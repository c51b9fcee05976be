package org.loomwright.core.electrical.structure;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.Bench;
import org.loomwright.testing.LoomSketch;

import java.util.List;

/** Whether devices suit the vehicle's earth and voltage. */
class SuitsTest {

    private static LoomSketch sketch(Device... devices) {
        LoomSketch sketch =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 1_000)
                        .device(Bench.device("BATTERY", DeviceKind.BATTERY, null, "LIVE"));
        List.of(devices).forEach(sketch::device);
        return sketch;
    }

    private static Device device(
            DeviceKind kind, @Nullable EarthPolarity needed, @Nullable Voltage made) {
        return Bench.with(
                Bench.device("D", kind, Bench.mA(1_000), "FEED"),
                new Particulars(null, null, made, needed, List.of()));
    }

    private static List<Finding> found(Loom loom, Loom recorded, String code) {
        return StructureChecksTest.findings(loom, recorded).stream()
                .map(it -> it.finding())
                .filter(it -> it.code().equals("electrical." + code))
                .toList();
    }

    private static Loom loom(EarthPolarity earth, long millivolts, Device... devices) {
        return Bench.loom(sketch(devices), earth, millivolts);
    }

    @ParameterizedTest
    @CsvSource({
        "POSITIVE, NEGATIVE, FAULT",
        "NEGATIVE, POSITIVE, FAULT",
        "POSITIVE, POSITIVE, ",
        "NEGATIVE, NEGATIVE, ",
        "POSITIVE, , WARNING",
        "NEGATIVE, , ",
    })
    void aRadioHasToSuitTheEarth(
            EarthPolarity earth, @Nullable EarthPolarity needed, @Nullable Severity expected) {
        Loom loom = loom(earth, 12_000, device(DeviceKind.RADIO, needed, null));
        assertThat(found(loom, loom, "polarity"))
                .extracting(Finding::severity)
                .isEqualTo(expected == null ? List.of() : List.of(expected));
    }

    @Test
    void aNewFlasherUnitInAPositiveEarthCarIsToBeAskedAboutButNotTheOldOne() {
        Loom loom = loom(EarthPolarity.POSITIVE, 12_000, device(DeviceKind.FLASHER, null, null));
        assertThat(found(loom, loom, "polarity")).isEmpty();
        assertThat(found(loom, loom(EarthPolarity.POSITIVE, 12_000), "polarity")).hasSize(1);
    }

    @Test
    void aChangedEarthListsWhatHasToBeLookedAt() {
        Device[] devices = {
            Bench.device("COIL", DeviceKind.COIL, Bench.mA(3_000), "SW"),
            Bench.device("AMMETER", DeviceKind.AMMETER, null, "BATT", "LOAD"),
            Bench.device("LAMP", DeviceKind.LAMP, Bench.mA(500), "FEED"),
            Bench.device("DYNAMO", DeviceKind.DYNAMO, null, "D"),
            Bench.named(
                    Bench.device("WIPER", DeviceKind.MOTOR, Bench.mA(3_000), "FEED"),
                    "wiper motor"),
            Bench.named(
                    Bench.device("PUMP", DeviceKind.MOTOR, Bench.mA(1_000), "FEED"), "fuel pump"),
            Bench.named(
                    Bench.device("TACHO", DeviceKind.GAUGE, Bench.mA(100), "FEED"), "tachometer"),
            Bench.named(
                    Bench.device("FUEL", DeviceKind.GAUGE, Bench.mA(100), "FEED"), "fuel gauge"),
        };
        Loom before = loom(EarthPolarity.POSITIVE, 12_000, devices);
        Loom after = loom(EarthPolarity.NEGATIVE, 12_000, devices);
        assertThat(found(after, before, "polarity"))
                .extracting(it -> it.subject().id())
                .containsExactly("AMMETER", "BATTERY", "COIL", "DYNAMO", "PUMP", "TACHO");
        assertThat(found(before, before, "polarity")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"6000, 12000, FAULT", "12000, 6000, WARNING", "12000, 12000, ", "6000, 6000, "})
    void aDeviceHasToSuitTheVoltage(long made, long system, @Nullable Severity expected) {
        Loom loom =
                loom(
                        EarthPolarity.POSITIVE,
                        system,
                        device(DeviceKind.LAMP, null, Voltage.ofMillivolts(made)));
        assertThat(found(loom, loom, "system-voltage"))
                .extracting(Finding::severity)
                .isEqualTo(expected == null ? List.of() : List.of(expected));
    }

    @Test
    void aChangedVoltageListsEveryDeviceThatNobodySpokeOf() {
        Device horn = Bench.device("HORN", DeviceKind.HORN, Bench.mA(8_000), "FEED");
        Device lamp = device(DeviceKind.LAMP, null, Voltage.ofMillivolts(12_000));
        Device fuse = Bench.device("FUSE", DeviceKind.FUSE, null, "IN", "OUT");
        Loom before = loom(EarthPolarity.POSITIVE, 6_000, horn, lamp, fuse);
        Loom after = loom(EarthPolarity.POSITIVE, 12_000, horn, lamp, fuse);
        assertThat(found(after, before, "system-voltage"))
                .extracting(it -> it.subject().id())
                .containsExactly("BATTERY", "HORN");
    }
}
