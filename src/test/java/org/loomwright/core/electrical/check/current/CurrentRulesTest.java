package org.loomwright.core.electrical.check.current;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.catalogue.Service.CircuitKind;
import org.loomwright.core.quantity.Ratio;

import java.util.List;
import java.util.Map;

/** The limits as they stand in the tables. */
class CurrentRulesTest {

    private static final Provenance OWN = new Provenance(Status.COMPUTED, "test");

    private static DropLimit limit(long percent, long aimPercent) {
        return new DropLimit(
                CircuitKind.GENERAL,
                new Sourced<>(new Ratio(percent * 10_000), OWN),
                new Sourced<>(new Ratio(aimPercent * 10_000), OWN));
    }

    @Test
    void everyKindOfCircuitHasALimitThatIsNotFromMemory() {
        for (CircuitKind kind : CircuitKind.values()) {
            assertThat(Checked.RULES.drop(kind).limit().provenance().status())
                    .as(kind.name())
                    .isNotEqualTo(Status.MEMORY);
        }
    }

    @Test
    void theLimitIsTheWidestPublishedOneAndTheAimAStricterOne() {
        DropLimit lighting = Checked.RULES.drop(CircuitKind.LIGHTING);
        assertThat(lighting.limit().value()).isEqualTo(new Ratio(100_000));
        assertThat(lighting.limit().provenance().source()).contains("V1");
        assertThat(lighting.aim().value()).isEqualTo(new Ratio(30_000));
        assertThat(lighting.aim().provenance().source()).contains("V4");
    }

    @Test
    void anAimBeyondItsLimitIsRefused() {
        assertThatThrownBy(() -> limit(5, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> limit(0, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aKindThatStandsTwiceOrNowhereIsRefused() {
        List<DropLimit> twice = List.of(limit(10, 5), limit(10, 3));
        assertThatThrownBy(() -> CurrentRules.byKind(twice))
                .isInstanceOf(IllegalArgumentException.class);
        CurrentRules rules = Checked.RULES;
        assertThatThrownBy(
                        () ->
                                new CurrentRules(
                                        Map.of(CircuitKind.GENERAL, limit(10, 5)),
                                        rules.insulation(),
                                        rules.loadedFrom(),
                                        rules.fuseLoad(),
                                        rules.fuseWithinBare(),
                                        rules.fuseWithinCovered(),
                                        rules.fuseWithinBattery(),
                                        rules.contactGrowth()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
