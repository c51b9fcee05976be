package org.loomwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Limits, overflow and rounding of every quantity. */
class QuantityTest {

    private static final Length LONGEST = Length.ofMicrometres(Long.MAX_VALUE);
    private static final Length SHORTEST = Length.ofMicrometres(Long.MIN_VALUE);
    private static final Length ONE = Length.ofMicrometres(1);

    @ParameterizedTest
    @CsvSource({
        "812500, 812.5 mm",
        "0, 0 mm",
        "1, 0.001 mm",
        "-1, -0.001 mm",
        "1000000, 1000 mm",
        "-2500000, -2500 mm",
        "9223372036854775807, 9223372036854775.807 mm"
    })
    void aLengthIsWrittenInMillimetresWithoutTrailingZeros(long micrometres, String text) {
        assertThat(Length.ofMicrometres(micrometres)).hasToString(text);
    }

    @Test
    void millimetresAreTakenExactlyOrNotAtAll() {
        assertThat(Length.ofMillimetres(new BigDecimal("12.345")).micrometres()).isEqualTo(12_345);
        assertThat(Length.ofMillimetres(new BigDecimal("1E+3")).micrometres()).isEqualTo(1_000_000);
        assertThat(Length.ofMillimetres(new BigDecimal("12.3450")).micrometres()).isEqualTo(12_345);
        assertThatThrownBy(() -> Length.ofMillimetres(new BigDecimal("12.3456")))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Length.ofMillimetres(new BigDecimal("1E+30")))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test
    void whatDoesNotFitThrowsInsteadOfWrappingRound() {
        List<Runnable> tooMuch =
                List.of(
                        () -> LONGEST.plus(ONE),
                        () -> SHORTEST.minus(ONE),
                        () -> LONGEST.times(2),
                        () -> SHORTEST.absolute(),
                        () -> LONGEST.ceilingTo(Length.ofMicrometres(2)),
                        () -> Length.ofMillimetres(Long.MAX_VALUE),
                        () -> Length.sum(List.of(LONGEST, ONE)),
                        () -> LONGEST.times(new Ratio(1_000_001), RoundingMode.DOWN),
                        () -> new Ratio(Long.MAX_VALUE).plus(new Ratio(1)));

        assertThat(tooMuch)
                .allSatisfy(
                        step ->
                                assertThatThrownBy(step::run)
                                        .isInstanceOf(ArithmeticException.class));
    }

    @ParameterizedTest
    @CsvSource({
        "0.0004, CEILING, 1",
        "0.0004, HALF_UP, 0",
        "0.0005, HALF_UP, 1",
        "0.0005, HALF_EVEN, 0",
        "-0.0004, CEILING, 0",
        "-0.0004, FLOOR, -1",
        "2.675, HALF_UP, 2675",
        "0.1, UNNECESSARY, 100"
    })
    void geometryIsRoundedOnceInTheWayAskedFor(double mm, RoundingMode rounding, long micrometres) {
        assertThat(Length.roundedFromMillimetres(mm, rounding).micrometres())
                .isEqualTo(micrometres);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNotFiniteIsNoLength(double mm) {
        assertThatThrownBy(() -> Length.roundedFromMillimetres(mm, RoundingMode.CEILING))
                .isInstanceOf(NumberFormatException.class);
    }

    @ParameterizedTest
    @CsvSource({"0, 10, 0", "1, 10, 10", "10, 10, 10", "11, 10, 20", "-1, 10, 0", "-11, 10, -10"})
    void roundingUpGoesToTheNextStep(long length, long step, long expected) {
        assertThat(Length.ofMicrometres(length).ceilingTo(Length.ofMicrometres(step)))
                .isEqualTo(Length.ofMicrometres(expected));
    }

    @Test
    void aStepMustBePositive() {
        assertThatThrownBy(() -> ONE.ceilingTo(Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0 mm");
        assertThatThrownBy(() -> ONE.ceilingTo(Length.ofMicrometres(-1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void roundingUpGivesTheSmallestMultipleThatIsNotLess() {
        Random random = new Random(1);
        for (int i = 0; i < 1_000; i++) {
            Length length = Length.ofMicrometres(random.nextInt());
            Length step = Length.ofMicrometres(1 + random.nextInt(100_000));
            Length rounded = length.ceilingTo(step);

            assertThat(rounded.micrometres() % step.micrometres()).isZero();
            assertThat(length.isLongerThan(rounded)).isFalse();
            assertThat(length.isLongerThan(rounded.minus(step))).isTrue();
        }
    }

    @Test
    void sumsAreExactInAnyOrder() {
        Random random = new Random(2);
        List<Length> lengths =
                random.longs(500, -1_000_000_000, 1_000_000_000)
                        .mapToObj(Length::ofMicrometres)
                        .toList();

        assertThat(Length.sum(lengths)).isEqualTo(Length.sum(lengths.reversed()));
        assertThat(Length.sum(List.of())).isEqualTo(Length.ZERO);
        assertThat(lengths.stream().reduce(Length.sum(lengths), Length::minus))
                .isEqualTo(Length.ZERO);
    }

    @Test
    void aRatioScalesALengthWithOneRounding() {
        Ratio takeUp = Ratio.of(new BigDecimal("0.015"));

        assertThat(Length.ofMicrometres(1_001).times(takeUp, RoundingMode.CEILING))
                .isEqualTo(Length.ofMicrometres(16));
        assertThat(Length.ofMicrometres(1_001).times(takeUp, RoundingMode.DOWN))
                .isEqualTo(Length.ofMicrometres(15));
        assertThat(LONGEST.times(Ratio.ONE, RoundingMode.UNNECESSARY)).isEqualTo(LONGEST);
    }

    @Test
    void signsAndOrderAreTold() {
        assertThat(Length.ZERO.isPositive()).isFalse();
        assertThat(Length.ZERO.isNegative()).isFalse();
        assertThat(ONE.isPositive()).isTrue();
        assertThat(ONE.times(-1).isNegative()).isTrue();
        assertThat(ONE.times(-1).absolute()).isEqualTo(ONE);
        assertThat(Stream.of(LONGEST, ONE, SHORTEST, Length.ZERO).sorted())
                .containsExactly(SHORTEST, Length.ZERO, ONE, LONGEST);
    }

    @ParameterizedTest
    @CsvSource({"15000, 0.015", "1040000, 1.04", "0, 0", "-1, -0.000001", "100000000, 100"})
    void aRatioIsWrittenAsADecimalFraction(long millionths, String text) {
        assertThat(new Ratio(millionths)).hasToString(text);
        assertThat(Ratio.of(new BigDecimal(text))).isEqualTo(new Ratio(millionths));
    }

    @Test
    void aRatioOutOfACalculationIsRoundedToTheNearestMillionth() {
        assertThat(Ratio.rounded(0.0000005, RoundingMode.HALF_UP)).isEqualTo(new Ratio(1));
        assertThat(Ratio.rounded(-0.0000005, RoundingMode.HALF_UP)).isEqualTo(new Ratio(-1));
        assertThat(Ratio.rounded(0.00000049, RoundingMode.HALF_UP)).isEqualTo(Ratio.ZERO);
        assertThat(Ratio.rounded(1.0 / 3, RoundingMode.HALF_UP)).isEqualTo(new Ratio(333_333));
        assertThatThrownBy(() -> Ratio.rounded(Double.NaN, RoundingMode.HALF_UP))
                .isInstanceOf(NumberFormatException.class);
        assertThatThrownBy(() -> Ratio.of(new BigDecimal("0.0000001")))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test
    void electricalQuantitiesAreExactAndWrittenWithTheirUnit() {
        assertThat(Current.ofAmperes(new BigDecimal("9.170"))).hasToString("9.17 A");
        assertThat(Current.ofMilliamperes(-1)).hasToString("-0.001 A");
        assertThat(Voltage.ofMillivolts(12_000)).hasToString("12 V");
        assertThat(Voltage.ofMillivolts(100_000)).hasToString("100 V");
        assertThat(CrossSection.ofSquareMillimetres(new BigDecimal("0.9896")))
                .hasToString("0.9896 mm²")
                .isEqualTo(CrossSection.ofSquareMicrometres(989_600));
    }

    @Test
    void electricalQuantitiesTakeNoDigitThatTheyCannotKeep() {
        assertThatThrownBy(() -> Current.ofAmperes(new BigDecimal("0.0001")))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Voltage.ofVolts(new BigDecimal("0.0001")))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> CrossSection.ofSquareMillimetres(new BigDecimal("0.0000001")))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Current.ofAmperes(new BigDecimal("1E+20")))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test
    void electricalQuantitiesAreOrderedByTheirValue() {
        assertThat(Current.ofMilliamperes(-1)).isLessThan(Current.ofMilliamperes(0));
        assertThat(Voltage.ofMillivolts(6_000)).isLessThan(Voltage.ofMillivolts(12_000));
        assertThat(
                        Stream.of(
                                        CrossSection.ofSquareMicrometres(2),
                                        CrossSection.ofSquareMicrometres(1))
                                .min(Comparator.naturalOrder()))
                .hasValue(CrossSection.ofSquareMicrometres(1));
    }

    @Test
    void resistanceTemperatureAndPowerAreExactAndWrittenWithTheirUnit() {
        assertThat(Resistance.ofOhms(new BigDecimal("0.01890"))).hasToString("0.0189 Ω");
        assertThat(Resistance.ofNanoohms(-1)).hasToString("-0.000000001 Ω");
        assertThat(LinearResistance.ofMilliohmsPerMetre(new BigDecimal("18.90")))
                .hasToString("18.9 mΩ/m")
                .isEqualTo(new LinearResistance(18_900_000));
        assertThat(Temperature.ofCelsius(new BigDecimal("-5.50"))).hasToString("-5.5 °C");
        assertThat(Temperature.ofCelsius(100)).hasToString("100 °C");
        assertThat(Power.ofWatts(new BigDecimal("2.20"))).hasToString("2.2 W");
        assertThatThrownBy(() -> Resistance.ofOhms(new BigDecimal("0.0000000001")))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> LinearResistance.ofMilliohmsPerMetre(new BigDecimal("1E-7")))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Power.ofWatts(new BigDecimal("0.0001")))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Resistance.ofNanoohms(Long.MAX_VALUE).plus(new Resistance(1)))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test
    void nothingIsColderThanAbsoluteZero() {
        assertThat(new Temperature(-273_150)).hasToString("-273.15 °C");
        assertThatThrownBy(() -> new Temperature(-273_151))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-273.151");
    }

    @Test
    void ohmsLawTiesTheElectricalQuantitiesTogether() {
        Voltage twelve = Voltage.ofMillivolts(12_000);

        assertThat(Resistance.of(twelve, Current.ofMilliamperes(3_500)))
                .isEqualTo(Resistance.ofNanoohms(3_428_571_429L));
        assertThat(Power.of(twelve, Current.ofMilliamperes(3_500))).hasToString("42 W");
        assertThat(Power.ofWatts(new BigDecimal("55")).at(twelve)).hasToString("4.583 A");
        assertThat(new LinearResistance(18_900_000).times(Length.ofMillimetres(2_500)))
                .hasToString("0.04725 Ω");
        assertThatThrownBy(() -> Resistance.of(twelve, Current.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Power.ofWatts(BigDecimal.ONE).at(Voltage.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void electricalResultsAreRoundedOnceHalvesAwayFromZero() {
        assertThat(Voltage.roundedFromVolts(0.0005)).isEqualTo(Voltage.ofMillivolts(1));
        assertThat(Voltage.roundedFromVolts(-0.0005)).isEqualTo(Voltage.ofMillivolts(-1));
        assertThat(Current.roundedFromAmperes(0.00049)).isEqualTo(Current.ZERO);
        assertThat(Resistance.roundedFromOhms(1.0 / 3)).isEqualTo(new Resistance(333_333_333));
        assertThat(LinearResistance.roundedFromMilliohmsPerMetre(2.0 / 3))
                .isEqualTo(new LinearResistance(666_667));
        assertThatThrownBy(() -> Voltage.roundedFromVolts(Double.NaN))
                .isInstanceOf(NumberFormatException.class);
        assertThatThrownBy(() -> Current.roundedFromAmperes(Double.POSITIVE_INFINITY))
                .isInstanceOf(NumberFormatException.class);
        assertThatThrownBy(
                        () ->
                                Current.ofMilliamperes(Long.MAX_VALUE)
                                        .plus(Current.ofMilliamperes(1)))
                .isInstanceOf(ArithmeticException.class);
    }
}
