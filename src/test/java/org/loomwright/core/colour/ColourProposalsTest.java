package org.loomwright.core.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Origin;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.ColourBench.Way;
import org.loomwright.core.colour.ColourProposal.Choice;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Wire;
import org.loomwright.testing.DemoLooms;

import java.util.List;

class ColourProposalsTest {

    private static ColourProposals in(TracedLoom traced) {
        return new ColourProposals(traced, ColourBench.CODE);
    }

    private static ColourBench withWasher(String... neighbours) {
        ColourBench bench = new ColourBench();
        bench.circuit("X", "screen washer", DeviceKind.MOTOR, "FUSE-BOX/A4", Way.SWITCH, "G");
        for (String neighbour : neighbours) {
            String id = "N" + neighbour;
            bench.circuit(id, "radio", DeviceKind.RADIO, "FUSE-BOX/A4", Way.SWITCH, neighbour);
        }
        return bench;
    }

    @Test
    void aRememberedUseIsProposedAndSaysSo() {
        Choice best = in(withWasher().traced()).of("X-LEG").orElseThrow().best();

        assertThat(best.colour()).isEqualTo(WireColour.parse("LGB"));
        assertThat(best.provenance().status()).isEqualTo(Status.MEMORY);
        assertThat(best.reasonWithSource()).endsWith("(from memory)");
    }

    @Test
    void aCodeThatAnotherFunctionHasThereIsPassedOverWithTheReason() {
        ColourProposal proposal = in(withWasher("LGB").traced()).of("X-LEG").orElseThrow();

        assertThat(proposal.colour()).isNotEqualTo(WireColour.parse("LGB"));
        assertThat(proposal.colour().body()).isEqualTo("G");
        assertThat(proposal.best().reason())
                .contains("wire NLGB-LEG has that colour for circuit of NLGB-LEG")
                .contains("free at both ends");
        assertThat(proposal.alternatives()).hasSize(5).doesNotHaveDuplicates();
    }

    @Test
    void theNextTracerIsNoPublishedUseAndNotTakenForANeighbour() {
        WireColour next = in(withWasher("LGB", "GO").traced()).of("X-LEG").orElseThrow().colour();

        assertThat(ColourBench.CODE.functionsOf(next)).noneMatch(use -> use.isPublished());
        String tracer = next.tracer();
        assertThat(tracer).isNotNull().isNotEqualTo("O");
        assertThat(ColourBench.CODE.between(String.valueOf(tracer), "O")).isEmpty();
    }

    @Test
    void theSameCodeForTheSameFunctionIsKept() {
        ColourBench bench = new ColourBench();
        bench.circuit("X", "stop lamp", DeviceKind.LAMP, "FUSE-BOX/A4", Way.SWITCH, "GP");
        bench.circuit("Y", "stop lamp", DeviceKind.LAMP, "FUSE-BOX/A4", Way.SWITCH, "GP");

        assertThat(in(bench.traced()).of("X-LEG").orElseThrow().colour())
                .isEqualTo(WireColour.parse("GP"));
    }

    @Test
    void whatNobodyKnowsGetsTheBodyOfItsSupplyAndAFreeTracer() {
        ColourBench bench = new ColourBench();
        bench.circuit("X", "thing", DeviceKind.MOTOR, "FUSE-BOX/A2", Way.SWITCH, "P");

        Choice best = in(bench.traced()).of("X-LEG").orElseThrow().best();

        assertThat(best.colour().body()).isEqualTo("P");
        assertThat(best.colour().tracer()).isNotNull();
        assertThat(best.reason())
                .contains("P is the body colour of what is fed from battery fused");
    }

    @Test
    void aLegSwitchedOnTheEarthSideGetsABlackTracer() {
        ColourBench bench = new ColourBench();
        bench.circuit("X", "thing", DeviceKind.LAMP, "FUSE-BOX/A2", Way.EARTH_SWITCH, "P");

        Choice best = in(bench.traced()).of("X-LEG").orElseThrow().best();

        assertThat(best.colour()).isEqualTo(WireColour.parse("PB"));
        assertThat(best.provenance().source()).isEqualTo("C10;C12");
    }

    @Test
    void feedsAndEarthsOfTheBenchAreProposedAsTheyAre() {
        TracedLoom traced = new ColourBench().traced();
        for (Wire wire : traced.loom().wires().values()) {
            assertThat(in(traced).of(wire.id()).orElseThrow().isRight(wire.colour()))
                    .as(wire.id())
                    .isTrue();
        }
    }

    @Test
    void aLooseWireHasNoProposal() {
        ColourBench bench = new ColourBench();
        bench.sketch()
                .device(ColourBench.device("L1", "stop lamp", DeviceKind.LAMP, "N3", "FEED"))
                .device(ColourBench.device("J1", "joint", DeviceKind.JOINT, "N2", "JOINT"))
                .device(ColourBench.device("J2", "joint", DeviceKind.JOINT, "N3", "JOINT"))
                .wire("X", "GP", "J1/JOINT", "J2/JOINT");

        assertThat(in(bench.traced()).of("X")).isEmpty();
    }

    @Test
    void aWireThatIsNotInTheLoomYetIsProposedFromItsTrace() {
        ColourBench bench = new ColourBench();
        bench.circuit("X", "reversing lamp", DeviceKind.LAMP, "FUSE-BOX/A4", Way.SWITCH, "G");
        TracedLoom traced = bench.traced();
        Wire there = traced.loom().getWire("X-LEG");

        assertThat(in(traced).of(traced.trace(there), there.b(), there.a()))
                .isEqualTo(in(traced).of("X-LEG"));
    }

    @Test
    void newWiresInAnotherColourAreWarnedOf() {
        ColourBench bench = new ColourBench();
        bench.circuit("X", "reversing lamp", DeviceKind.LAMP, "FUSE-BOX/A4", Way.SWITCH, "GP");

        assertThat(in(bench.traced()).differing(List.of("X-LEG", "X-FEED")))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("colour.new-differs");
                            assertThat(finding.severity()).isEqualTo(Severity.WARNING);
                            assertThat(finding.subject().id()).isEqualTo("X-LEG");
                            assertThat(finding.text())
                                    .contains("GP (green with purple tracer)")
                                    .contains("GN (green with brown tracer)")
                                    .contains("(published, C5)");
                        });
    }

    @Test
    void aWireThatIsWrongItselfHoldsNoCode() {
        ColourBench bench = new ColourBench();
        bench.circuit("X", "reversing lamp", DeviceKind.LAMP, "FUSE-BOX/A4", Way.SWITCH, "GN");
        bench.circuit("Y", "stop lamp", DeviceKind.LAMP, "FUSE-BOX/A4", Way.SWITCH, "GN");

        assertThat(in(bench.traced()).of("X-LEG").orElseThrow().colour())
                .isEqualTo(WireColour.parse("GN"));
        assertThat(ColourClash.in(bench.traced()))
                .as("the two are still told apart by hand")
                .contains(new ColourClash("N3", WireColour.parse("GN"), List.of("X-LEG", "Y-LEG")));
    }

    @Test
    void theNewWiresOfTheDemonstrationAreAllRightAlsoBesideAWrongWire() {
        AmendedLoom amended = DemoLooms.amended();
        List<String> added =
                amended.loom().wires().keySet().stream()
                        .filter(wire -> amended.origin(ThingKind.WIRE, wire) != Origin.STOCK)
                        .toList();
        TracedLoom traced = ColourBench.traced(amended.loom());

        assertThat(added).hasSizeGreaterThan(25).contains("W118", "W119");
        assertThat(in(traced).differing(added)).isEmpty();
        assertThat(List.of("W118", "W119"))
                .allSatisfy(
                        id ->
                                assertThat(in(traced).of(id).orElseThrow().colour())
                                        .isEqualTo(WireColour.parse("GN"))
                                        .isEqualTo(traced.loom().getWire(id).colour()));
        assertThat(ColourAudit.outsideCode(traced, ColourBench.CODE, added)).isEmpty();
    }
}
