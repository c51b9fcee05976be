package org.loomwright.core.electrical.structure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.catalogue.TerminalType;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.CrossSection;
import org.loomwright.testing.Bench;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.util.List;

/** Terminals against the table's bounds, whatever they are: the bounds are usual ones, not read anywhere. */
class TerminalSizesTest {

    private static final String BLADE = "blade-6.3";

    private static LoomSketch bench() {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 600)
                .device(Bench.device("BATTERY", DeviceKind.BATTERY, null, "LIVE"))
                .device(Bench.device("L", DeviceKind.LAMP, Bench.mA(1_000), "FEED"));
    }

    private static Loom wired(String size, String terminal) {
        Wire plain = LoomSketch.plainWire("W1", "N", "BATTERY/LIVE", "L/FEED");
        return bench().wire(
                        new Wire(
                                plain.id(),
                                plain.circuit(),
                                plain.colour(),
                                size,
                                LoomSketch.end("BATTERY/LIVE", terminal),
                                LoomSketch.end("L/FEED", "screw-end"),
                                plain.condition()))
                .loom();
    }

    private static List<ElectricalFinding> found(Loom loom, Loom recorded) {
        return StructureChecksTest.findings(loom, recorded).stream()
                .filter(it -> it.finding().code().equals("electrical.terminal-size"))
                .toList();
    }

    private static TerminalType terminal(String code) {
        return TestCatalogue.get().getTerminal(code);
    }

    @ParameterizedTest
    @ValueSource(strings = {"9/0.30", "14/0.30", "28/0.30", "44/0.30", "65/0.30", "37/0.90"})
    void exactlyWhatTheTableDoesNotTakeIsFound(String size) {
        CrossSection metal = TestCatalogue.get().getSize(size).metal();
        for (TerminalType terminal : TestCatalogue.get().terminals()) {
            assertThat(found(wired(size, terminal.code()), bench().loom()))
                    .as(terminal.code())
                    .hasSize(terminal.takes(metal) ? 0 : 1);
        }
    }

    @Test
    void aNewWireIsWarnedOfWithTheBoundAndWhereItComesFrom() {
        assertThat(found(wired("65/0.30", BLADE), bench().loom()))
                .singleElement()
                .satisfies(
                        it -> {
                            Finding finding = it.finding();
                            assertThat(finding.severity()).isEqualTo(Severity.WARNING);
                            assertThat(finding.subject().id()).isEqualTo("W1");
                            assertThat(finding.text())
                                    .contains("End A of wire W1 at BATTERY/LIVE")
                                    .contains(String.valueOf(terminal(BLADE).mostConductor()))
                                    .contains("from memory");
                            assertThat(it.source()).isEqualTo(terminal(BLADE).provenance());
                            assertThat(it.margin())
                                    .get()
                                    .satisfies(
                                            margin ->
                                                    assertThat(margin.value().signum())
                                                            .isNegative());
                            assertThat(it.remedy()).contains("thicker wire");
                        });
    }

    @Test
    void aTerminalTooLargeForItsWireHasNoMarginButIsFoundToo() {
        assertThat(found(wired("14/0.30", "ring-10"), bench().loom()))
                .singleElement()
                .satisfies(
                        it -> {
                            assertThat(it.margin()).isEmpty();
                            assertThat(it.finding().text())
                                    .contains(String.valueOf(terminal("ring-10").leastConductor()));
                            assertThat(it.remedy()).contains("thinner wire");
                        });
    }

    @Test
    void whatWasRecordedSoIsANote() {
        Loom loom = wired("65/0.30", BLADE);
        assertThat(found(loom, loom))
                .singleElement()
                .satisfies(
                        it -> {
                            assertThat(it.finding().severity()).isEqualTo(Severity.NOTE);
                            assertThat(it.finding().text()).contains("recorded so");
                            assertThat(it.remedy()).isEmpty();
                        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"size", "terminal"})
    void aThickerWireOrAnotherTerminalInItsPlaceIsNew(String changed) {
        Loom recorded =
                changed.equals("size") ? wired("14/0.30", BLADE) : wired("65/0.30", "solder");
        assertThat(found(wired("65/0.30", BLADE), recorded))
                .extracting(it -> it.finding().severity())
                .containsExactly(Severity.WARNING);
    }

    @Test
    void whereNobodySaidABoundNothingIsFound() {
        assertThat(terminal("solder").leastConductor()).isNull();
        assertThat(found(wired("37/0.90", "solder"), bench().loom())).isEmpty();
        assertThat(wired("37/0.90", "solder").getWire("W1").end(Side.A).terminal())
                .isEqualTo("solder");
    }
}
