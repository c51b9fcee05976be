package org.loomwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.loom.Loom;
import org.loomwright.testing.RandomLooms.Size;

class RandomLoomsTest {

    @Test
    void theSameSeedGivesTheSameLoomAndAnotherSeedAnother() {
        Loom loom = RandomLooms.of(7, Size.CAR);

        assertThat(RandomLooms.of(7, Size.CAR)).isEqualTo(loom);
        assertThat(RandomLooms.of(8, Size.CAR)).isNotEqualTo(loom);
    }

    @Test
    void everySeedGivesAProvenLoomOfTheSizeAskedFor() {
        for (long seed = 0; seed < 200; seed++) {
            Loom loom = RandomLooms.of(seed, new Size(1 + (int) seed % 9, 3, 5, 2));

            assertThat(loom.segments()).hasSize(1 + (int) seed % 9);
            assertThat(loom.walk()).hasSameSizeAs(loom.segments().values());
        }
    }

    @Test
    void theLargestLoomThatIsTakenCanBeDrawn() {
        Loom loom = RandomLooms.of(1, new Size(4_000, 4_000, 20_000, 4_000));

        assertThat(loom.wires()).hasSize(20_000);
    }

    @Test
    void theHandDrawnLoomsAreLooms() {
        assertThat(TestLooms.front().segments()).hasSize(5);
        assertThat(TestLooms.oneSegment().wires()).hasSize(1);
    }
}
