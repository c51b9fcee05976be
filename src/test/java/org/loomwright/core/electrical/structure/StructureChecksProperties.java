package org.loomwright.core.electrical.structure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Wire;
import org.loomwright.testing.Bench;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.RandomLooms;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;

/** What holds for the checks of any loom. */
class StructureChecksProperties {

    private static final Set<String> SAID_OF_THE_DEVICE =
            Set.of("electrical.polarity", "electrical.system-voltage");

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    private static LoomDocument shuffled(LoomDocument old, Random random) {
        List<Device> devices = new ArrayList<>(old.devices());
        List<Wire> wires = new ArrayList<>(old.wires());
        Collections.shuffle(devices, random);
        Collections.shuffle(wires, random);
        return new LoomDocument(
                old.name(),
                old.vehicle(),
                old.datum(),
                old.nodes(),
                old.segments(),
                devices,
                wires,
                old.checks());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theOrderOfADocumentChangesNothing(long seed) {
        LoomDocument document = RandomLooms.documentOf(seed, RandomLooms.Size.CAR);
        Loom loom = Bench.proven(document);
        Loom other = Bench.proven(shuffled(document, new Random(seed)));
        assertThat(StructureChecksTest.findings(other, other))
                .isEqualTo(StructureChecksTest.findings(loom, loom));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void eachThingIsNamedOnceForARuleAndNothingRecordedIsAFault(long seed) {
        Loom loom = RandomLooms.of(seed, RandomLooms.Size.CAR);
        List<ElectricalFinding> findings = StructureChecksTest.findings(loom, loom);
        assertThat(findings)
                .extracting(it -> it.finding().code() + " " + it.finding().subject().words())
                .doesNotHaveDuplicates();
        assertThat(findings)
                .filteredOn(it -> !SAID_OF_THE_DEVICE.contains(it.finding().code()))
                .noneMatch(it -> it.finding().severity() == Severity.FAULT);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whereEverythingIsNewNothingIsExcusedAsRecorded(long seed) {
        Loom loom = RandomLooms.of(seed, RandomLooms.Size.CAR);
        Loom empty = new LoomSketch("N1").segment("S1", "N1", "N2", 1_000).loom();
        assertThat(StructureChecksTest.findings(loom, empty))
                .noneMatch(it -> it.finding().text().contains("recorded so"));
    }
}
