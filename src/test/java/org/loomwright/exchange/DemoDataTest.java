package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.analysis.LoomAnalysis;
import org.loomwright.core.bundle.BundlePacker;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.testing.TestCatalogue;

import java.util.HashSet;
import java.util.Set;

/** The demonstration looms are proven looms whose only findings are brittle wires; the additions apply and add exactly the one that they are to show. */
class DemoDataTest {

    @ParameterizedTest
    @ValueSource(strings = {DemoFiles.MAIN, DemoFiles.ENGINE})
    void everyDemoLoomPassesItsOpeningsAndItsMeasurementsClose(String resource) {
        assertThat(analyse(DemoFiles.loom(resource)).findings())
                .filteredOn(finding -> finding.subject().kind() != ThingKind.WIRE)
                .isEmpty();
    }

    @Test
    void exactlyTheWiresThatWereFoundBrittleAreWarnedOf() {
        Loom loom = DemoFiles.loom(DemoFiles.MAIN);
        assertThat(analyse(loom).findings())
                .isNotEmpty()
                .allMatch(finding -> finding.code().equals("wire.brittle"))
                .extracting(finding -> finding.subject().id())
                .containsExactlyElementsOf(
                        loom.wires().values().stream()
                                .filter(wire -> wire.condition() == Condition.BRITTLE)
                                .map(Wire::id)
                                .toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {DemoFiles.MAIN, DemoFiles.ENGINE})
    void everyPointOfADemoLoomHasAWire(String resource) {
        Loom loom = DemoFiles.loom(resource);
        Set<String> wired = new HashSet<>();
        for (Wire wire : loom.document().wires()) {
            wired.add(wire.a().place());
            wired.add(wire.b().place());
        }
        Set<String> points = new HashSet<>();
        for (Device device : loom.document().devices()) {
            device.points().forEach(point -> points.add(device.id() + "/" + point.name()));
        }
        assertThat(wired).isEqualTo(points);
    }

    @Test
    void theMainLoomIsAsLargeAsASaloonNeeds() {
        Loom loom = DemoFiles.loom(DemoFiles.MAIN);
        assertThat(loom.document().wires()).hasSizeGreaterThanOrEqualTo(60);
        assertThat(loom.document().segments()).hasSizeGreaterThanOrEqualTo(40);
        assertThat(loom.document().devices()).hasSizeGreaterThanOrEqualTo(35);
    }

    @Test
    void afterTheAdditionsOnlyTheBootGrommetIsTooSmall() {
        Loom amended =
                Amendments.apply(
                                DemoFiles.loom(DemoFiles.MAIN),
                                DemoFiles.additions(),
                                TestCatalogue.get())
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()))
                        .loom();
        assertThat(analyse(amended).findings())
                .filteredOn(finding -> finding.subject().kind() != ThingKind.WIRE)
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("opening.too-small");
                            assertThat(finding.subject().id()).isEqualTo("O26");
                        });
    }

    private static LoomAnalysis analyse(Loom loom) {
        return LoomAnalysis.of(
                loom, AnalysisSettings.USUAL, TestCatalogue.get(), new BundlePacker(100));
    }
}
