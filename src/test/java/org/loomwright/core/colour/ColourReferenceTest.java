package org.loomwright.core.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.ColourBench.Way;
import org.loomwright.core.colour.ColourProposal.Choice;
import org.loomwright.core.colour.code.ColourFunction;
import org.loomwright.core.colour.code.ColourWords;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.testing.ReferenceTable;
import org.loomwright.testing.TestCatalogue;

import java.util.List;

/** Published uses of colours; the case files say where each row comes from. */
class ColourReferenceTest {

    private static final Catalogue CATALOGUE = TestCatalogue.get();

    private record Use(String code, String body, String tracer, String source) {}

    private record Circuit(
            String device, DeviceKind kind, String feed, Way way, String code, String source) {

        TracedLoom wiredIn(String colour) {
            return new ColourBench().circuit("X", device, kind, feed, way, colour).traced();
        }
    }

    private record Trap(String name, String code, String function) {}

    private final List<Use> uses =
            ReferenceTable.rows(
                    "colour/published-uses.csv",
                    row ->
                            new Use(
                                    row.get("code"),
                                    row.get("body"),
                                    row.get("tracer"),
                                    row.get("source")));

    private final List<Circuit> circuits =
            ReferenceTable.rows(
                    "colour/circuits.csv",
                    row ->
                            new Circuit(
                                    row.get("device"),
                                    DeviceKind.valueOf(row.get("kind")),
                                    row.get("feed"),
                                    Way.valueOf(row.get("way")),
                                    row.get("code"),
                                    row.get("source")));

    private final List<Trap> traps =
            ReferenceTable.rows(
                    "colour/traps.csv",
                    row -> new Trap(row.get("trap"), row.get("code"), row.get("function")));

    @Test
    void everyPublishedUseStandsInTheTableWithItsSource() {
        assertThat(uses)
                .hasSize(60)
                .allSatisfy(
                        use ->
                                assertThat(ColourBench.CODE.functionsOf(WireColour.parse(use.code)))
                                        .filteredOn(ColourFunction::isPublished)
                                        .extracting(row -> row.provenance().source())
                                        .contains(use.source));
    }

    @Test
    void nothingIsCalledPublishedThatIsNot() {
        List<String> published = uses.stream().map(Use::code).toList();
        assertThat(ColourBench.CODE.functions())
                .filteredOn(ColourFunction::isPublished)
                .allSatisfy(row -> assertThat(published).contains(row.colour().letters()));
    }

    @Test
    void everyPublishedCodeReadsAsItsWords() {
        assertThat(uses)
                .allSatisfy(
                        use -> {
                            String words =
                                    use.tracer.isEmpty()
                                            ? use.body
                                            : use.body + " with " + use.tracer + " tracer";
                            assertThat(ColourWords.of(WireColour.parse(use.code), CATALOGUE))
                                    .isEqualTo(words);
                        });
    }

    @Test
    void everyCircuitIsProposedItsPublishedColour() {
        assertThat(circuits)
                .hasSize(20)
                .allSatisfy(
                        circuit -> {
                            Choice best = proposal(circuit.wiredIn(circuit.code)).best();
                            assertThat(best.colour().letters()).isEqualTo(circuit.code);
                            assertThat(best.provenance().source()).isEqualTo(circuit.source);
                        });
    }

    @Test
    void noCircuitInItsPublishedColourIsCalledWrong() {
        assertThat(circuits)
                .allSatisfy(circuit -> assertThat(audit(circuit, circuit.code)).isEmpty());
    }

    @Test
    void theSwapOfStopAndReversingLampsIsFoundAndNotFollowed() {
        assertThat(traps)
                .filteredOn(trap -> trap.name.equals("swap"))
                .hasSize(2)
                .allSatisfy(
                        trap -> {
                            Circuit circuit = lamps(trap.function);
                            assertThat(audit(circuit, trap.code))
                                    .extracting(Finding::code)
                                    .containsExactly("colour.contradicts-function");
                            assertThat(proposal(circuit.wiredIn(trap.code)).colour())
                                    .isNotEqualTo(WireColour.parse(trap.code));
                        });
    }

    private Circuit lamps(String function) {
        String device = function.substring(0, function.length() - 1);
        return circuits.stream().filter(it -> it.device.equals(device)).findFirst().orElseThrow();
    }

    @Test
    void aBlackTracerTellsNoSideOfAHeadlamp() {
        assertThat(traps)
                .filteredOn(trap -> trap.name.equals("side"))
                .hasSize(2)
                .allSatisfy(
                        trap ->
                                assertThat(
                                                ColourBench.CODE.functionsOf(
                                                        WireColour.parse(trap.code)))
                                        .noneMatch(row -> row.services().contains("headlamps")));
        for (Way way : List.of(Way.MAIN, Way.DIP)) {
            assertThat(circuits)
                    .filteredOn(circuit -> circuit.way == way)
                    .hasSize(2)
                    .extracting(circuit -> proposal(circuit.wiredIn("UW")).colour())
                    .allMatch(colour -> !"B".equals(colour.tracer()))
                    .containsOnly(WireColour.parse(way == Way.MAIN ? "UW" : "UR"));
        }
    }

    private static ColourProposal proposal(TracedLoom traced) {
        return new ColourProposals(traced, ColourBench.CODE).of("X-LEG").orElseThrow();
    }

    private static List<Finding> audit(Circuit circuit, String colour) {
        return ColourAudit.of(circuit.wiredIn(colour), ColourBench.CODE);
    }
}
