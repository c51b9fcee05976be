package org.loomwright.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Temperature;

import java.math.BigDecimal;
import java.time.Duration;

class HeatingTimeTest {

    private static final Temperature SEVENTY = Temperature.ofCelsius(70);
    private static final Temperature SPOILT = Temperature.ofCelsius(160);

    private static Duration time(String mm2, long amperes, Temperature from, Temperature to) {
        return HeatingTime.of(
                CrossSection.ofSquareMillimetres(new BigDecimal(mm2)),
                Current.ofMilliamperes(amperes * 1_000),
                from,
                to);
    }

    @Test
    void
            aSquareMillimetreFromSeventyToAHundredAndSixtyStandsAHundredAndEightyAmperesForTwoFifths() {
        // 1 mm2 = 1973.53 circular mils; 0.0297 log10(394 / 304) = 0.0033446; (180 / 1973.53)^2 =
        // 0.0083188; ratio 0.40206 s
        assertThat(time("1", 180, SEVENTY, SPOILT).toMillis()).isCloseTo(402, within(1L));
    }

    @ParameterizedTest
    @CsvSource({"1, 100", "2.5, 300", "6, 1000"})
    void toTheMeltingPointItIsOnderdonksTimeButForTheRoundingOfItsConstant(
            String mm2, long amperes) {
        CrossSection metal = CrossSection.ofSquareMillimetres(new BigDecimal(mm2));
        Temperature cold = Temperature.ofCelsius(25);
        Duration melts = time(mm2, amperes, cold, Temperature.ofCelsius(1_083));
        double onderdonk = FusingCurrent.onderdonk(metal, melts, cold).toDoubleAmperes();
        // 33 x 0.0297 = 0.9801, so Onderdonk's current for that time is 1.01 times this one's
        assertThat(onderdonk / amperes).isCloseTo(1 / Math.sqrt(33 * 0.0297), within(1e-3));
    }

    @Test
    void twiceTheCurrentTakesAQuarterOfTheTimeAndTwiceTheMetalFourTimesIt() {
        double once = time("1", 50, SEVENTY, SPOILT).toMillis();
        assertThat(time("1", 100, SEVENTY, SPOILT).toMillis())
                .isCloseTo((long) (once / 4), within(1L));
        assertThat(time("2", 50, SEVENTY, SPOILT).toMillis())
                .isCloseTo((long) (once * 4), within(4L));
    }

    @Test
    void nothingIsLeftWhereItIsHotAlreadyAndNoCurrentNeverHeats() {
        assertThat(time("1", 50, SPOILT, SEVENTY)).isEqualTo(Duration.ZERO);
        assertThat(time("1", 0, SEVENTY, SPOILT)).isEqualTo(Duration.ofSeconds(1_000_000));
    }
}
