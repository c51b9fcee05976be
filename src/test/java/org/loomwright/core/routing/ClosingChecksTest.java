package org.loomwright.core.routing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Loom;
import org.loomwright.testing.LoomSketch;

import java.util.List;

class ClosingChecksTest {

    private static LoomSketch line() {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 600)
                .segment("S2", "N2", "N3", 1000)
                .segment("S3", "N3", "N4", 400);
    }

    private static List<Finding> findings(LoomSketch sketch) {
        Loom loom = sketch.loom();
        return new ClosingChecks(loom, new Routes(loom)).findings();
    }

    @Test
    void measurementsWithinTenMillimetresClose() {
        assertThat(findings(line().check("C1", "N1", "N3", 1610))).isEmpty();
    }

    @Test
    void onePerCentIsAllowedOnALongRun() {
        assertThat(findings(line().check("C1", "N1", "N4", 2020))).isEmpty();
        assertThat(findings(line().check("C1", "N1", "N4", 2021))).hasSize(1);
    }

    @Test
    void theSegmentThatAllOpenMeasurementsShareIsNamed() {
        List<Finding> findings =
                findings(
                        line().check("C1", "N1", "N3", 1650)
                                .check("C2", "N2", "N4", 1450)
                                .check("C3", "N1", "N2", 601)
                                .check("C4", "N3", "N4", 399));

        assertThat(findings).hasSize(2);
        assertThat(findings)
                .allSatisfy(
                        finding ->
                                assertThat(finding.text())
                                        .contains("Segment S2 is the likeliest slip"));
    }

    @Test
    void segmentsThatCannotBeToldApartAreAllNamed() {
        assertThat(findings(line().check("C1", "N1", "N3", 1650)))
                .singleElement()
                .satisfies(
                        finding ->
                                assertThat(finding.text())
                                        .contains("cannot tell which of segments S1, S2"));
    }

    @Test
    void aReadingFarFromTheLengthInUseIsNamed() {
        assertThat(findings(line().readings("S2", 1002, 998, 1060)))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("measure.reading-off");
                            assertThat(finding.subject().id()).isEqualTo("S2");
                            assertThat(finding.text()).contains("1060 mm", "60 mm apart");
                        });
    }

    /** Two measurements say that S2 is 200 mm off; that alone does not explain a third one that is 50 mm off. */
    @Test
    void aSegmentIsNotBlamedForAnErrorThatItDoesNotExplain() {
        LoomSketch sketch =
                line().segment("S4", "N3", "N5", 500)
                        .check("C1", "N1", "N3", 1650)
                        .check("C2", "N2", "N4", 1600)
                        .check("C3", "N2", "N5", 1700);
        assertThat(findings(sketch))
                .filteredOn(finding -> finding.subject().id().equals("C1"))
                .singleElement()
                .satisfies(
                        finding ->
                                assertThat(finding.text())
                                        .contains("cannot tell which of segments S1, S2"));
    }

    @Test
    void wrongLengthsThatNoOneSegmentExplainsAreCalledSo() {
        LoomSketch sketch =
                line().check("C1", "N1", "N3", 1700)
                        .check("C2", "N1", "N2", 600)
                        .check("C3", "N2", "N3", 1000);
        assertThat(findings(sketch))
                .singleElement()
                .satisfies(
                        finding ->
                                assertThat(finding.text()).contains("No single segment explains"));
    }
}
