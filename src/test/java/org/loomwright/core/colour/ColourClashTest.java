package org.loomwright.core.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.ColourBench.Way;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.testing.DemoLooms;

import java.util.List;

class ColourClashTest {

    @Test
    void wiresOfOneColourThatAreNotJoinedClashWhereTheyLeave() {
        ColourBench bench = new ColourBench();
        bench.circuit("X", "stop lamp", DeviceKind.LAMP, "FUSE-BOX/A4", Way.SWITCH, "GP");
        bench.circuit("Y", "map lamp", DeviceKind.LAMP, "FUSE-BOX/A2", Way.SWITCH, "GP");
        TracedLoom traced = bench.traced();

        List<ColourClash> clashes = ColourClash.in(traced);

        assertThat(clashes)
                .containsExactly(
                        new ColourClash("N3", WireColour.parse("GP"), List.of("X-LEG", "Y-LEG")));
        Finding finding = clashes.getFirst().finding(traced);
        assertThat(finding.code()).isEqualTo("colour.clash");
        assertThat(finding.text())
                .contains("X-LEG, Y-LEG", "GP (green with purple tracer)", "N3 (node N3)", "tag");
    }

    @Test
    void wiresOfOneNetDoNotClash() {
        ColourBench bench = new ColourBench();
        bench.circuit("X", "stop lamp", DeviceKind.LAMP, "FUSE-BOX/A4", Way.SWITCH, "GP");
        bench.circuit("Y", "heater", DeviceKind.MOTOR, "FUSE-BOX/A4", Way.SWITCH, "GY");

        assertThat(ColourClash.in(bench.traced())).isEmpty();
    }

    @Test
    void earthsOnTwoStudsDoNotClash() {
        ColourBench bench = new ColourBench();
        bench.sketch()
                .device(ColourBench.device("STUD-2", "earth", DeviceKind.EARTH_POINT, "N1", "STUD"))
                .device(
                        ColourBench.device(
                                "L1", "stop lamp", DeviceKind.LAMP, "N3", "FEED", "EARTH"))
                .wire("X1", "G", "FUSE-BOX/A4", "L1/FEED")
                .wire("X2", "B", "L1/EARTH", "STUD-2/STUD");

        assertThat(ColourClash.in(bench.traced())).isEmpty();
    }

    @Test
    void theStockLoomsOfTheDemonstrationHaveNoClashButThatOfTheWrongGreenWire() {
        assertThat(ColourClash.in(ColourBench.traced(DemoLooms.main())))
                .containsExactly(
                        new ColourClash(
                                "N04", WireColour.parse("G"), List.of("W014", "W021", "W022")));
        assertThat(ColourClash.in(ColourBench.traced(DemoLooms.engine()))).isEmpty();
    }

    @Test
    void theThreePurpleFeedsBesideTheBatteryAreToBeTagged() {
        assertThat(ColourClash.in(ColourBench.traced(DemoLooms.amended().loom())))
                .contains(
                        new ColourClash(
                                "N06", WireColour.parse("P"), List.of("W102", "W108", "W123")));
    }
}
