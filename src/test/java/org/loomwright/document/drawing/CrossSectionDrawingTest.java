package org.loomwright.document.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.analysis.SegmentChange;
import org.loomwright.document.scene.Scene;
import org.loomwright.document.scene.Shape;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.testing.TestCatalogue;

class CrossSectionDrawingTest {

    @Test
    void everyWireCarriesItsLettersBeforeAndAfter() {
        ChangeAnalysis change = DemoAnalyses.additions();
        for (SegmentChange segment : change.segments()) {
            Scene scene = CrossSectionDrawing.of(segment, TestCatalogue.get());
            segment.after()
                    .counts()
                    .byColour()
                    .forEach(
                            (letters, count) ->
                                    assertThat(count(scene, letters))
                                            .as(segment.segment() + " " + letters)
                                            .isEqualTo(
                                                    count
                                                            + segment.countsBefore()
                                                                    .byColour()
                                                                    .getOrDefault(letters, 0)));
        }
    }

    @Test
    void lettersAreWhiteOnDarkBodiesAndBlackOnLightOnes() {
        assertThat(BundleCut.isDark(new Ink("#1a1a1a"))).isTrue();
        assertThat(BundleCut.isDark(new Ink("#1f4fa3"))).isTrue();
        assertThat(BundleCut.isDark(new Ink("#ffffff"))).isFalse();
        assertThat(BundleCut.isDark(new Ink("#f2c92e"))).isFalse();
        assertThat(BundleCut.isDark(new Ink("#8fcf5a"))).isFalse();
    }

    private static long count(Scene scene, String text) {
        return scene.shapes().stream()
                .filter(shape -> shape instanceof Shape.Label label && label.text().equals(text))
                .count();
    }
}
