package org.loomwright.core.open;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.core.open.Opened.car;
import static org.loomwright.core.open.Opened.device;
import static org.loomwright.core.open.Opened.said;
import static org.loomwright.core.open.Opened.taking;
import static org.loomwright.core.open.Opened.with;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.quantity.Current;

/** What is asked about additions, rule by rule. */
class OpenPointsTest {

    private static final Current TEN = Current.ofMilliamperes(10_000);

    @Test
    void aLampWithoutAnythingIsAskedForEverything() {
        assertThat(car().add("L", "reversing lamp", DeviceKind.LAMP, "FEED", "EARTH").open("L"))
                .containsExactly("feed", "return", "fuse", "switch", "tell-tale", "load");
    }

    @Test
    void aLampWithAllThatItNeedsIsNotAskedAnything() {
        Opened car =
                car().add(
                                taking(
                                        device(
                                                "L",
                                                "reversing lamp",
                                                DeviceKind.LAMP,
                                                "N2",
                                                "FEED",
                                                "EARTH"),
                                        1_750))
                        .add(
                                "K",
                                "reversing switch on the gearbox",
                                DeviceKind.SWITCH,
                                "FEED",
                                "OUT")
                        .wire("A1", "G", "BOX/A4", "K/FEED")
                        .wire("A2", "GN", "K/OUT", "L/FEED")
                        .wire("A3", "B", "L/EARTH", "STUD/STUD");
        assertThat(car.open("L")).isEmpty();
        assertThat(car.open("K")).containsExactly("contact-rating");
        assertThat(car.open("BOX")).containsExactly("fuse-rating", "stock-fuse-rating");
        assertThat(car.open("BOX/A4")).containsExactly("room");
        assertThat(car.open("IGN")).containsExactly("contact-rating");
    }

    @Test
    void theIgnitionSwitchIsNotASwitchOfItsOwn() {
        assertThat(
                        car().add("L", "reversing lamp", DeviceKind.LAMP, "FEED", "EARTH")
                                .wire("A1", "G", "BOX/A4", "L/FEED")
                                .wire("A2", "B", "L/EARTH", "STUD/STUD")
                                .open("L"))
                .containsExactly("switch", "tell-tale", "load");
    }

    @Test
    void aSwitchOnTheEarthSideIsFoundThroughAJoint() {
        Opened car =
                car().add("F", "radiator fan relay", DeviceKind.RELAY, "30", "87", "86", "85")
                        .add("J", "joint", DeviceKind.JOINT, "JOINT")
                        .add("K", "thermostat switch", DeviceKind.SWITCH, "SWITCH")
                        .wire("A1", "G", "BOX/A4", "F/86")
                        .wire("A2", "GB", "F/85", "J/JOINT");
        assertThat(car.open("F")).contains("return", "switch");
        assertThat(car.wire("A3", "GB", "J/JOINT", "K/SWITCH").open("F")).containsExactly("load");
        assertThat(car.open("K")).containsExactly("contact-rating");
    }

    @Test
    void aHandSwitchNeedsATellTaleAndOneOnTheGearboxDoesNot() {
        assertThat(reversingBy("reversing switch on the dash").open("L")).contains("tell-tale");
        assertThat(reversingBy("reversing switch on the gearbox").open("L"))
                .doesNotContain("tell-tale");
        assertThat(
                        reversingBy("reversing switch on the dash")
                                .add("T", "reversing lamp warning lamp", DeviceKind.LAMP, "FEED")
                                .open("L"))
                .doesNotContain("tell-tale");
    }

    private static Opened reversingBy(String name) {
        return car().add("K", name, DeviceKind.SWITCH, "FEED", "OUT")
                .add("L", "reversing lamp", DeviceKind.LAMP, "FEED", "EARTH");
    }

    @Test
    void fogLampsNeedARelayOnlyAsAPair() {
        Opened car =
                car().add("L1", "fog lamp", DeviceKind.LAMP, "FEED", "EARTH")
                        .wire("A1", "P", "BOX/A2", "L1/FEED");
        assertThat(car.open("L1")).contains("tell-tale").doesNotContain("relay");
        assertThat(car.add("L2", "fog lamp", DeviceKind.LAMP, "FEED", "EARTH").open("L1"))
                .contains("relay", "tell-tale");
        assertThat(car.open("L2")).doesNotContain("relay", "tell-tale");
    }

    @Test
    void aLampThatTheBodyEarthsIsAskedForAWordAboutIt() {
        assertThat(car().add("L", "rear fog lamp", DeviceKind.LAMP, "FEED").open("L"))
                .contains("own-earth")
                .doesNotContain("return");
        assertThat(
                        car().add(
                                        "L",
                                        "rear fog lamp, earthed by its bracket",
                                        DeviceKind.LAMP,
                                        "FEED")
                                .open("L"))
                .doesNotContain("own-earth");
    }

    @Test
    void whatNobodyCanNameIsAskedWhatItServes() {
        Opened unnamed = car().add("X", "thing", DeviceKind.MOTOR, "FEED", "EARTH");
        assertThat(unnamed.open("X")).contains("service").doesNotContain("switch");
        Device washer =
                with(
                        device("X", "thing", DeviceKind.MOTOR, "N2", "FEED", "EARTH"),
                        said("washer", null, null, null));
        assertThat(car().add(washer).open("X"))
                .contains("fuse", "switch")
                .doesNotContain("service");
    }

    @Test
    void hazardFlashersNeedAFeedThatTheIgnitionDoesNotCut() {
        Opened car = car().add("H", "hazard flasher unit", DeviceKind.FLASHER, "FEED", "LAMPS");
        assertThat(car.wire("A1", "G", "BOX/A4", "H/FEED").open("H"))
                .contains("always-live", "tell-tale");
        assertThat(
                        car().add("H", "hazard flasher unit", DeviceKind.FLASHER, "FEED", "LAMPS")
                                .wire("A1", "P", "BOX/A2", "H/FEED")
                                .open("H"))
                .doesNotContain("always-live");
    }

    @Test
    void oneLampLightsOneGauge() {
        Opened car =
                car().add("G1", "oil pressure gauge", DeviceKind.GAUGE, "FEED", "SENDER")
                        .add("G2", "temperature gauge", DeviceKind.GAUGE, "FEED", "SENDER");
        assertThat(car.open("G1")).contains("panel-lamp", "sender");
        car.add("P1", "panel lamp", DeviceKind.LAMP, "FEED");
        assertThat(car.open("G1")).doesNotContain("panel-lamp");
        assertThat(car.open("G2")).contains("panel-lamp");
        car.add("P2", "temperature gauge lamp", DeviceKind.LAMP, "FEED");
        assertThat(car.open("G2")).doesNotContain("panel-lamp");
    }

    @Test
    void aGaugeWhoseWireLeadsToASenderIsNotAskedForOne() {
        assertThat(
                        car().add("G", "temperature gauge", DeviceKind.GAUGE, "FEED", "SENDER")
                                .add("T", "temperature sender", DeviceKind.SENDER, "SENDER")
                                .wire("A1", "GU", "G/SENDER", "T/SENDER")
                                .open("G"))
                .contains("panel-lamp")
                .doesNotContain("sender", "return");
    }

    @Test
    void aVoltmeterIsAskedForItsPolarityAndNotForASender() {
        Device voltmeter = device("V", "voltmeter", DeviceKind.GAUGE, "N2", "FEED", "EARTH");
        assertThat(car().add(voltmeter).open("V")).contains("polarity").doesNotContain("sender");
        assertThat(
                        car().add(with(voltmeter, said(null, null, null, EarthPolarity.POSITIVE)))
                                .open("V"))
                .doesNotContain("polarity");
    }

    @Test
    void electronicsAreKnownByAWholeWord() {
        assertThat(car().add("L", "LED fog lamp", DeviceKind.LAMP, "FEED").open("L"))
                .contains("polarity");
        assertThat(car().add("L", "sealed fog lamp", DeviceKind.LAMP, "FEED").open("L"))
                .doesNotContain("polarity");
    }

    @Test
    void aFuseWhoseMarkIsSaidIsNotAskedForIt() {
        Device fuse = device("F", "fog lamp fuse", DeviceKind.FUSE, "N1", "IN", "OUT");
        assertThat(car().add(fuse).open("F")).containsExactly("fuse-rating");
        FittedFuse fitted = new FittedFuse("OUT", "IN", FuseStyle.BLADE, TEN);
        assertThat(car().add(with(fuse, said(null, null, null, null, fitted))).open("F")).isEmpty();
    }

    @Test
    void aSwitchThatCarriesNothingNewIsNotAskedForItsRating() {
        assertThat(car().open("IGN")).isEmpty();
    }

    @Test
    void aSwitchWhoseRatingIsSaidIsNotAskedForIt() {
        Device rated =
                with(
                        device("K", "fog switch", DeviceKind.SWITCH, "N2", "FEED", "OUT"),
                        said(null, TEN, null, null));
        assertThat(
                        car().add(rated)
                                .add("L", "fog lamp", DeviceKind.LAMP, "FEED", "EARTH")
                                .wire("A1", "P", "BOX/A2", "K/FEED")
                                .wire("A2", "PY", "K/OUT", "L/FEED")
                                .open("K"))
                .isEmpty();
    }

    @Test
    void anExpectationNamesItsSource() {
        assertThat(
                        car().add("L", "rear fog lamp", DeviceKind.LAMP, "FEED", "EARTH")
                                .report()
                                .points())
                .filteredOn(point -> point.rule() == OpenRule.TELL_TALE)
                .singleElement()
                .satisfies(
                        point -> {
                            assertThat(point.basis()).isNotNull();
                            assertThat(point.text()).contains("rear fog lamp", "check local rules");
                            assertThat(point.question()).endsWith("?");
                        });
    }

    @Test
    void addedLampsBringTheGeneralWordAboutLocalRules() {
        assertThat(car().report().cautions()).hasSize(1);
        assertThat(car().add("L", "rear fog lamp", DeviceKind.LAMP, "FEED").report().cautions())
                .hasSize(2)
                .anyMatch(caution -> caution.contains("Check local rules"));
        assertThat(car().add("L", "panel lamp", DeviceKind.LAMP, "FEED").report().cautions())
                .hasSize(1);
    }
}
