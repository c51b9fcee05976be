package org.loomwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;

/** The quick way beside the decimal one, everywhere and near halves above all. */
class ThousandthsProperties {

    private static final int DRAWS = 20_000;

    private final Random random = new Random(17);

    private static long asDecimal(double units) {
        return BigDecimal.valueOf(units)
                .movePointRight(3)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    private static void assertSame(double units) {
        assertThat(Thousandths.rounded(units)).as("%s", units).isEqualTo(asDecimal(units));
    }

    @Test
    void anyNumberIsRoundedAsItsDecimalForm() {
        for (int i = 0; i < DRAWS; i++) {
            double scale = Math.pow(10, random.nextInt(22) - 9);
            assertSame(scale * (random.nextDouble() - 0.5));
        }
    }

    @Test
    void halvesAndTheirNeighboursAreRoundedAsTheirDecimalForm() {
        for (int i = 0; i < DRAWS; i++) {
            double half = (random.nextInt(2_000_000) - 1_000_000 + 0.5) / 1e3;
            assertSame(half);
            assertSame(Math.nextUp(half));
            assertSame(Math.nextDown(half));
        }
    }

    @Test
    void whatIsNotFiniteIsRefused() {
        assertThatThrownBy(() -> Thousandths.rounded(Double.NaN))
                .isInstanceOf(NumberFormatException.class);
        assertThatThrownBy(() -> Thousandths.rounded(Double.POSITIVE_INFINITY))
                .isInstanceOf(NumberFormatException.class);
    }
}
