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
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Wire;
import org.loomwright.testing.TestCatalogue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

    private static Loom amended() {
        return Amendments.apply(
                        DemoFiles.loom(DemoFiles.MAIN), DemoFiles.additions(), TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()))
                .loom();
    }

    @Test
    void everyDeviceSaysWhatItServesUnlessItServesSeveralThings() {
        Set<String> shared = Set.of("FUSE-BOX", "JOINT-GREEN", "JOINT-PURPLE");
        for (Loom loom : List.of(amended(), DemoFiles.loom(DemoFiles.ENGINE))) {
            assertThat(loom.document().devices())
                    .filteredOn(device -> device.kind() != DeviceKind.EARTH_POINT)
                    .allSatisfy(
                            device ->
                                    assertThat(device.particulars().serves() == null)
                                            .as(device.id())
                                            .isEqualTo(shared.contains(device.id())));
        }
    }

    @Test
    void noPointHasMoreWireEndsThanItTakes() {
        for (Loom loom : List.of(amended(), DemoFiles.loom(DemoFiles.ENGINE))) {
            Map<String, Long> ends =
                    loom.document().wires().stream()
                            .flatMap(wire -> Stream.of(wire.a().place(), wire.b().place()))
                            .collect(Collectors.groupingBy(place -> place, Collectors.counting()));
            int told = 0;
            for (Device device : loom.document().devices()) {
                for (Point point : device.points()) {
                    Integer takes = point.takes();
                    String place = device.id() + "/" + point.name();
                    if (takes != null) {
                        told++;
                        assertThat(ends.getOrDefault(place, 0L))
                                .as(place)
                                .isLessThanOrEqualTo(takes);
                    }
                }
            }
            assertThat(told).isPositive();
        }
    }

    @Test
    void everyFuseIsFittedAndMarkedAsItsNameSays() {
        Loom loom = amended();
        assertThat(loom.getDevice("FUSE-BOX").particulars().fuses())
                .extracting(fuse -> fuse.from() + fuse.to() + " " + fuse.marked())
                .containsExactly("A1A2 50 A", "A3A4 35 A");
        assertThat(loom.document().devices())
                .filteredOn(device -> device.kind() == DeviceKind.FUSE)
                .hasSize(4)
                .allSatisfy(
                        device ->
                                assertThat(device.particulars().fuses())
                                        .singleElement()
                                        .satisfies(
                                                fuse ->
                                                        assertThat(device.name())
                                                                .endsWith(", " + fuse.marked())));
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
        assertThat(analyse(amended()).findings())
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
