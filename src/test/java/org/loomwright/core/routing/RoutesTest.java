package org.loomwright.core.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;
import org.loomwright.testing.TestLooms;

class RoutesTest {

    private final Loom loom = TestLooms.front();
    private final Routes routes = new Routes(loom);

    @Test
    void aRouteAcrossTwoLegsTurnsAtTheirBreakout() {
        assertThat(routes.between("N5", "N6")).extracting(Segment::id).containsExactly("S4", "S5");
        assertThat(routes.distance("N5", "N6")).isEqualTo(Length.ofMillimetres(1000));
        assertThat(routes.turningPoint("N5", "N6")).isEqualTo("N3");
    }

    @Test
    void aRouteIsListedInTheDirectionAsked() {
        assertThat(routes.between("N4", "N5"))
                .extracting(Segment::id)
                .containsExactly("S3", "S2", "S4");
        assertThat(routes.between("N5", "N4"))
                .extracting(Segment::id)
                .containsExactly("S4", "S2", "S3");
    }

    @Test
    void aNodeIsNoDistanceFromItself() {
        assertThat(routes.distance("N3", "N3")).isEqualTo(Length.ZERO);
        assertThat(routes.between("N3", "N3")).isEmpty();
        assertThat(routes.turningPoint("N3", "N3")).isEqualTo("N3");
    }

    @Test
    void distancesFromTheDatumAddUpTheSegments() {
        assertThat(routes.fromDatum("N1")).isEqualTo(Length.ZERO);
        assertThat(routes.fromDatum("N6")).isEqualTo(Length.ofMillimetres(2150));
    }

    @Test
    void anUnknownNodeIsNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> routes.distance("N1", "N99"))
                .withMessageContaining("N99");
    }
}
