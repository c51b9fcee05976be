package org.loomwright.core.electrical.check.current;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.current.CurrentChecks.Recorded;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.loom.Loom;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.TestCatalogue;

import java.util.List;

/** The demonstration's main loom with its additions, in the standard scenarios. */
class DemoCurrentsTest {

    private static final AmendedLoom AMENDED = DemoLooms.amended();
    private static final Loom RECORDED = DemoLooms.main();
    private static final List<Scenario> SCENARIOS = scenarios(AMENDED.loom());
    private static final List<CheckedFinding> FOUND = found();

    private static List<Scenario> scenarios(Loom loom) {
        return ElectricalFiles.scenarios().of(loom, TestCatalogue.get());
    }

    private static List<CheckedFinding> found() {
        Loom loom = AMENDED.loom();
        List<Readings> readings = Checked.readings(loom, SCENARIOS);
        List<Readings> recorded = Checked.readings(RECORDED, scenarios(RECORDED));
        return Checked.checks(loom)
                .findWithChanges(
                        readings,
                        new Recorded(RECORDED, recorded),
                        Checked.additions(AMENDED),
                        Checked::simulation);
    }

    private static List<ElectricalFinding> found(String code) {
        return Checked.of(FOUND.stream().map(CheckedFinding::finding).toList(), code);
    }

    private static ElectricalFinding found(String code, String subject) {
        return found(code).stream()
                .filter(one -> one.finding().subject().id().equals(subject))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " " + subject + " in " + FOUND));
    }

    @Test
    void aNewWireBehindTheOldGlassFuseIsAFault() {
        // Voltmeter wire W125, 14/0.30 (8.75 A), behind a glass fuse marked 35 A that carries 17.5
        // A.
        ElectricalFinding finding = found("electrical.fuse-over-wire", "FUSE-BOX");
        assertThat(finding.finding().severity()).isEqualTo(Severity.FAULT);
        assertThat(finding.finding().text()).contains("wire W125 (14/0.30)", "17.5 A");
    }

    @Test
    void theOldFuseOverItsOldWiresIsToldAsOriginal() {
        assertThat(found("electrical.fuse-over-wire"))
                .filteredOn(one -> one.finding().text().contains("from A1 to A2"))
                .singleElement()
                .satisfies(
                        one -> {
                            assertThat(one.finding().severity()).isEqualTo(Severity.WARNING);
                            assertThat(one.finding().text()).contains("as original");
                        });
        assertThat(found("electrical.fuse-marking")).hasSize(2);
    }

    @Test
    void aSoundNewFuseIsNoFaultForBeingInAFullBundle() {
        // 15 A before 44/0.30 (25.5 A): too much only where half of that is left among ten loaded
        // wires.
        ElectricalFinding finding = found("electrical.fuse-over-wire", "FAN-FUSE");
        assertThat(finding.finding().severity()).isEqualTo(Severity.WARNING);
        assertThat(finding.finding().text()).contains("By itself it might carry");
    }

    @Test
    void threeFusesInARowLieFartherAndFartherFromTheirStud() {
        // 110 + 90 mm to the first, then 90 + 90 mm each.
        assertThat(found("electrical.fuse-far-from-source"))
                .extracting(one -> one.finding().subject().id() + " " + one.figure())
                .contains("W101 200 mm", "W107 380 mm", "W122 560 mm");
    }

    @Test
    void newWiresOnTheUnfusedSideLampCircuitAreToldAndOldOnesSummedUp() {
        assertThat(found("electrical.unfused-new"))
                .extracting(one -> one.finding().subject().id())
                .containsExactly("W109", "W110", "W127");
        assertThat(found("electrical.unfused-original"))
                .allSatisfy(one -> assertThat(one.finding().severity()).isEqualTo(Severity.NOTE))
                .extracting(one -> one.finding().text())
                .anySatisfy(text -> assertThat(text).contains("'headlamps'", "as original"));
    }

    @Test
    void theFeedsThatTheOwnerAlreadyThickenedAreStillTooThinWithEverythingOn() {
        for (String wire : List.of("W010", "W012")) {
            ElectricalFinding finding = found("electrical.current-over-rating", wire);
            assertThat(finding.scenario()).isEqualTo("everything at once");
            assertThat(finding.finding().severity()).isEqualTo(Severity.FAULT);
        }
    }

    @Test
    void nothingRecordedIsBlamedWhereItsOwnCurrentIsAsItWas() {
        assertThat(found("electrical.current-over-rating"))
                .filteredOn(one -> !AMENDED.loom().getWire(id(one)).equals(wasWire(one)))
                .extracting(DemoCurrentsTest::id)
                .contains("W010", "W012", "W108");
        assertThat(found("electrical.current-over-rating"))
                .filteredOn(one -> AMENDED.loom().getWire(id(one)).equals(wasWire(one)))
                .isNotEmpty()
                .allSatisfy(
                        one -> assertThat(one.finding().severity()).isEqualTo(Severity.WARNING));
    }

    private static String id(ElectricalFinding finding) {
        return finding.finding().subject().id();
    }

    private static Object wasWire(ElectricalFinding finding) {
        return RECORDED.wires().getOrDefault(id(finding), AMENDED.loom().getWire("W001"));
    }

    @Test
    void everyProposedChangePutsItsFindingRightInAllScenarios() {
        List<CheckedFinding> proposed =
                FOUND.stream().filter(one -> one.change().isPresent()).toList();
        assertThat(proposed).hasSizeGreaterThan(5);
        for (CheckedFinding one : proposed) {
            Loom changed = Checked.with(AMENDED.loom(), one.change().orElseThrow());
            List<Readings> readings = Checked.readings(changed, SCENARIOS);
            assertThat(readings).hasSameSizeAs(SCENARIOS);
            String code = one.finding().finding().code();
            Subject subject = one.finding().finding().subject();
            assertThat(
                            Checked.of(
                                    Checked.checks(changed).find(readings, null, Additions.NONE),
                                    code))
                    .filteredOn(after -> after.finding().subject().equals(subject))
                    .filteredOn(after -> after.finding().severity() != Severity.NOTE)
                    .as("%s of %s after: %s", code, subject.id(), one.finding().remedy())
                    .isEmpty();
        }
    }

    @Test
    void whatRestsOnMemorySaysSo() {
        // The rating of 65/.012 was never read anywhere.
        assertThat(found("electrical.current-over-rating", "W005").finding().text())
                .contains("rated 35 A (from memory)");
    }
}
