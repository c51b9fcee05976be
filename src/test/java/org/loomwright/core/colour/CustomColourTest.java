package org.loomwright.core.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.ColourBench.Way;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.CustomColour;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.testing.TestCatalogue;

import java.util.List;

/** What is said of wires in a colour that only their loom has. */
class CustomColourTest {

    private static final List<CustomColour> OWN =
            List.of(
                    new CustomColour("XD", "gold", "#c9a227"),
                    new CustomColour("T", "tan", "#c8a06a"));

    private static TracedLoom stopLampIn(String colour) {
        ColourBench bench = new ColourBench();
        bench.circuit("X", "stop lamp", DeviceKind.LAMP, "FUSE-BOX/A4", Way.SWITCH, colour);
        return ColourBench.traced(
                LoomChecker.check(
                                bench.sketch().document().withCustomColours(OWN),
                                TestCatalogue.get())
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString())));
    }

    @ParameterizedTest
    @CsvSource({
        "XD, XD (gold): XD (gold) is this",
        "XDR, XDR (gold with red tracer)",
        "GXD, GXD (green with gold tracer)",
        "XDT, XD (gold) and T (tan)",
    })
    void aColourOfTheLoomIsAWarningAndNothingElse(String colour, String words) {
        TracedLoom traced = stopLampIn(colour);
        List<Finding> recorded = ColourAudit.of(traced, ColourBench.CODE);

        assertThat(recorded)
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("colour.custom");
                            assertThat(finding.severity()).isEqualTo(Severity.WARNING);
                            assertThat(finding.subject().id()).isEqualTo("X-LEG");
                            assertThat(finding.text())
                                    .contains(words)
                                    .contains("no published code has", "Say it in words");
                        });
        assertThat(ColourAudit.outsideCode(traced, ColourBench.CODE, List.of("X-LEG")))
                .isEqualTo(recorded);
    }

    @Test
    void aBodyOfTheCodeWithATracerOfTheLoomStillTellsItsFeed() {
        assertThat(ColourAudit.of(stopLampIn("RXD"), ColourBench.CODE))
                .extracting(Finding::code)
                .containsExactlyInAnyOrder("colour.custom", "colour.contradicts-feed");
    }

    @Test
    void aColourOfTheLoomIsNeverProposedButDiffers() {
        TracedLoom traced = stopLampIn("XD");
        ColourProposals proposals = new ColourProposals(traced, ColourBench.CODE);
        ColourProposal proposal = proposals.of("X-LEG").orElseThrow();

        assertThat(proposal.colour()).isEqualTo(WireColour.parse("GP"));
        assertThat(proposal.alternatives())
                .noneMatch(choice -> choice.colour().letters().contains("X"));
        assertThat(proposals.differing(List.of("X-LEG")))
                .singleElement()
                .satisfies(it -> assertThat(it.text()).contains("XD (gold)"));
    }

    @Test
    void besideAColourOfTheLoomAFreeTracerCanStillBeFound() {
        ColourBench bench = new ColourBench();
        bench.circuit("X", "thing", DeviceKind.MOTOR, "FUSE-BOX/A2", Way.SWITCH, "P");
        bench.circuit("Y", "other thing", DeviceKind.MOTOR, "FUSE-BOX/A2", Way.SWITCH, "PXD");
        TracedLoom traced =
                ColourBench.traced(
                        LoomChecker.check(
                                        bench.sketch().document().withCustomColours(OWN),
                                        TestCatalogue.get())
                                .orElseThrow(
                                        reasons -> new IllegalStateException(reasons.toString())));
        assertThat(new ColourProposals(traced, ColourBench.CODE).of("X-LEG"))
                .get()
                .satisfies(it -> assertThat(it.colour().body()).isEqualTo("P"));
    }
}
