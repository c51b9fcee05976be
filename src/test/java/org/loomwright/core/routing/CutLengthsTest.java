package org.loomwright.core.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.TerminalType;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.util.Map;

class CutLengthsTest {

    private static final TerminalType BULLET = TestCatalogue.get().getTerminal("bullet-4.7");

    /** 1600 mm along the loom, bullets at both ends, tails as the sketch gives them. */
    private final LoomSketch sketch =
            new LoomSketch("N1")
                    .segment("S1", "N1", "N2", 600)
                    .segment("S2", "N2", "N3", 1000)
                    .device("SWITCH", DeviceKind.SWITCH, "N1")
                    .device("LAMP", DeviceKind.LAMP, "N3")
                    .wire("W1", "GN", "SWITCH/1", "LAMP/1");

    private static CutLength cut(Loom loom, Allowances allowances, Map<String, Length> tight) {
        return new CutLengths(loom, new Routes(loom), TestCatalogue.get(), allowances, tight)
                .of(loom.getWire("W1"));
    }

    private static Length tails(Loom loom) {
        return loom.getPoint(loom.getWire("W1").a())
                .tail()
                .plus(loom.getPoint(loom.getWire("W1").b()).tail());
    }

    @Test
    void everyAllowanceIsItemisedAndTheyAddUp() {
        Loom loom = sketch.loom();
        CutLength cut = cut(loom, Allowances.USUAL, Map.of());

        assertThat(cut.alongLoom()).isEqualTo(Length.ofMillimetres(1600));
        assertThat(cut.tailA().plus(cut.tailB())).isEqualTo(tails(loom));
        assertThat(cut.takeUp().micrometres()).isEqualTo(cut.measured().micrometres() * 15 / 1000);
        assertThat(cut.terminationA()).isEqualTo(BULLET.allowance());
        assertThat(cut.terminationB()).isEqualTo(BULLET.allowance());
        assertThat(cut.reserve()).isEqualTo(BULLET.renewal().times(4));
        assertThat(cut.cut().micrometres() % 10_000).isZero();
        assertThat(cut.rounding().micrometres()).isBetween(0L, 9_999L);
        assertThat(cut.cut())
                .isEqualTo(
                        cut.alongLoom()
                                .plus(cut.tailA())
                                .plus(cut.tailB())
                                .plus(cut.takeUp())
                                .plus(cut.terminationA())
                                .plus(cut.terminationB())
                                .plus(cut.reserve())
                                .plus(cut.rounding()));
    }

    @Test
    void aLengthThatIsAWholeStepAlreadyIsNotRoundedOn() {
        Allowances bare = new Allowances(new TakeUp.Given(Ratio.ZERO), 0, Length.ofMillimetres(1));
        CutLength cut = cut(sketch.loom(), bare, Map.of());

        assertThat(cut.rounding()).isEqualTo(Length.ZERO);
        assertThat(cut.reserve()).isEqualTo(Length.ZERO);
        assertThat(cut.takeUp()).isEqualTo(Length.ZERO);
    }

    /** Own calculation: sqrt(1 + (pi/10)^2) - 1 = 0.0481897...; 1600 mm give 77.1 mm. */
    @Test
    void aLayOfTenDiametersAddsFourPointEightPerCentAlongTheLoomOnly() {
        Allowances lay =
                new Allowances(
                        new TakeUp.FromLay(new Ratio(10_000_000)), 0, Length.ofMillimetres(1));
        CutLength cut = cut(sketch.loom(), lay, Map.of());

        assertThat(cut.takeUp().toDoubleMillimetres()).isCloseTo(77.104, within(0.01));
    }

    /** Own calculation: a right angle of a 12 mm bundle adds pi/2 x 6 mm = 9.42 mm. */
    @Test
    void aRightAngleOfATwelveMillimetreBundleAddsNineAndAHalfMillimetres() {
        Allowances lay =
                new Allowances(
                        new TakeUp.FromLay(new Ratio(1_000_000_000)), 0, Length.ofMillimetres(1));
        Loom straight = sketch.loom();
        Loom bent = sketch.bends("S2", 90).loom();
        Map<String, Length> tight = Map.of("S2", Length.ofMillimetres(12));

        Length extra = cut(bent, lay, tight).takeUp().minus(cut(straight, lay, tight).takeUp());
        assertThat(extra.toDoubleMillimetres()).isCloseTo(9.425, within(0.001));
    }
}
