package org.loomwright.core.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.testing.TestCatalogue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Letters of a body and a tracer can be read in one way only, whichever colours there are. */
class WireColourTest {

    /** Everything of one or two capitals that may stand for a basic colour. */
    private static List<String> basics() {
        List<String> all = new ArrayList<>();
        for (char first = 'A'; first <= 'Z'; first++) {
            all.add(String.valueOf(first));
            for (char second = 'A'; second <= 'Z'; second++) {
                all.add("" + first + second);
            }
        }
        return all.stream().filter(WireColour::isBasic).toList();
    }

    @Test
    void everyPairOfBasicColoursIsReadBackAndNoTwoAreWrittenAlike() {
        Set<String> written = new HashSet<>();
        for (String body : basics()) {
            assertThat(WireColour.parse(body)).isEqualTo(new WireColour(body, null));
            assertThat(written.add(body)).as(body).isTrue();
            for (String tracer : basics()) {
                if (!tracer.equals(body)) {
                    WireColour pair = new WireColour(body, tracer);
                    assertThat(WireColour.parse(pair.letters())).isEqualTo(pair);
                    assertThat(written.add(pair.letters())).as(pair.letters()).isTrue();
                }
            }
        }
        assertThat(basics()).hasSize(24 + 1 + 26);
    }

    @Test
    void everyColourOfTheCodeIsBasicAndNoneHasAnX() {
        assertThat(TestCatalogue.get().colours())
                .extracting(BaseColour::letters)
                .allMatch(WireColour::isBasic)
                .noneMatch(letters -> letters.startsWith("X"));
    }

    @ParameterizedTest
    @CsvSource({"XD, XD,", "GXD, G, XD", "XDG, XD, G", "XGG, XG, G", "XLG, XL, G", "LGXL, LG, XL"})
    void aDeclaredColourIsBodyOrTracer(String letters, String body, String tracer) {
        assertThat(WireColour.parse(letters)).isEqualTo(new WireColour(body, tracer));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "X", "L", "GX", "GL", "XDXD", "GGG", "gn", "G N", "X1"})
    void whatIsNoPairIsRefused(String letters) {
        assertThat(WireColour.isWellFormed(letters)).isFalse();
        assertThatThrownBy(() -> WireColour.parse(letters))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
