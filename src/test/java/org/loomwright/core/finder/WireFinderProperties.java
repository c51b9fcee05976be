package org.loomwright.core.finder;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.colour.code.ColourWords;
import org.loomwright.exchange.ColourFiles;
import org.loomwright.testing.TestCatalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Over every pair of colours. */
class WireFinderProperties {

    private static final Catalogue CATALOGUE = TestCatalogue.get();
    private static final ColourCode CODE = ColourFiles.load(CATALOGUE);
    private final ColourReader reader = new ColourReader(CATALOGUE);

    private static List<WireColour> everyColour() {
        List<WireColour> colours = new ArrayList<>();
        for (BaseColour body : CATALOGUE.colours()) {
            colours.add(new WireColour(body.letters(), null));
            for (BaseColour tracer : CATALOGUE.colours()) {
                if (!tracer.equals(body)) {
                    colours.add(new WireColour(body.letters(), tracer.letters()));
                }
            }
        }
        return colours;
    }

    private SeenColour read(String text) {
        return reader.read(text)
                .orElseThrow(reasons -> new IllegalStateException(text + ": " + reasons));
    }

    @Test
    void lettersAndWordsAreReadBackAsTheColourThatTheyWereMadeOf() {
        for (WireColour colour : everyColour()) {
            assertThat(read(colour.letters())).isEqualTo(SeenColour.exactly(colour));
            assertThat(read(colour.letters().toLowerCase(Locale.ROOT)))
                    .isEqualTo(SeenColour.exactly(colour));
            String words = ColourWords.of(colour, CATALOGUE);
            String plain = colour.tracer() == null ? "plain " + words : words;
            assertThat(read(plain)).isEqualTo(SeenColour.exactly(colour));
        }
    }

    @Test
    void nothingFitsBetterThanTheColourItself() {
        for (WireColour seen : everyColour()) {
            SeenColour exactly = SeenColour.exactly(seen);
            for (WireColour actual : everyColour()) {
                int share = exactly.fit(actual, false, CODE).map(Fit::share).orElse(0);
                assertThat(share == 1_000)
                        .as("%s for %s", actual, seen)
                        .isEqualTo(seen.equals(actual));
            }
        }
    }

    @Test
    void theMoreIsKnownTheBetterTheRightWireFits() {
        for (WireColour colour : everyColour()) {
            String tracer = colour.tracer();
            if (tracer != null) {
                String body = colour.body();
                int unsaid = share(body + " with unknown", colour);
                int either = share(body + " with " + tracer + " or " + other(colour), colour);
                int exact = share(colour.letters(), colour);
                assertThat(unsaid).isLessThan(either);
                assertThat(either).isLessThan(exact);
            }
        }
    }

    private static String other(WireColour colour) {
        return CATALOGUE.colours().stream()
                .map(BaseColour::letters)
                .filter(it -> !it.equals(colour.tracer()) && !it.equals(colour.body()))
                .findFirst()
                .orElseThrow();
    }

    private int share(String text, WireColour colour) {
        return read(text).fit(colour, false, CODE).map(Fit::share).orElse(0);
    }

    @Test
    void whetherOneLooksLikeTheOtherDoesNotDependOnWhichWasSeen() {
        for (WireColour one : everyColour()) {
            for (WireColour other : everyColour()) {
                boolean there = SeenColour.exactly(one).fit(other, false, CODE).isPresent();
                boolean back = SeenColour.exactly(other).fit(one, false, CODE).isPresent();
                boolean bothHaveTracers = one.tracer() != null && other.tracer() != null;
                if (bothHaveTracers) {
                    assertThat(there).as("%s and %s", one, other).isEqualTo(back);
                }
            }
        }
    }
}
