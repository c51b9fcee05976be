package org.loomwright.document.sheet.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.TestCatalogue;
import org.loomwright.testing.TestLooms;

import java.util.List;

class AmendmentWordsTest {

    private final Loom front = TestLooms.front();
    private final AmendmentWords words = new AmendmentWords(front, front, TestCatalogue.get());

    @Test
    void aChangedDeviceIsToldWithAllThatIsSaidOfItNow() {
        Particulars said =
                new Particulars(
                        "horns",
                        Current.ofMilliamperes(30_000),
                        Voltage.ofMillivolts(12_000),
                        EarthPolarity.NEGATIVE,
                        List.of(
                                new FittedFuse(
                                        "1",
                                        "2",
                                        FuseStyle.BLADE,
                                        Current.ofMilliamperes(15_000))));
        Amendment change =
                new Amendment.ChangeDevice(
                        "A1", "", "F1", "Fuse box", DeviceKind.FUSE_BOX, null, said);

        assertThat(words.of(change))
                .hasValue(
                        "fuse box F1 (fuse box) is now: Fuse box (fuse box); rating 30 A; made for"
                                + " 12 V; needs earth negative; fuse 1 to 2 15 A, blade.");
    }

    @Test
    void ofADeviceThatIsNotStockTheIdIsGiven() {
        Amendment change =
                new Amendment.ChangeDevice(
                        "A1", "", "X1", "Horn", DeviceKind.HORN, null, Particulars.NONE);

        assertThat(words.of(change)).hasValue("Device X1 is now: Horn (horn).");
    }

    @Test
    void aTurnedEarthIsToldBesideWhatWasRecorded() {
        Amendment change =
                new Amendment.ChangeVehicle(
                        "A1", "", EarthPolarity.NEGATIVE, Voltage.ofMillivolts(12_000));

        assertThat(words.of(change))
                .hasValue(
                        "The vehicle: negative earth and 12 V; as recorded positive earth and 12"
                                + " V.");
    }
}
