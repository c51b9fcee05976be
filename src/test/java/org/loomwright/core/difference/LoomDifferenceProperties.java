package org.loomwright.core.difference;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.difference.LoomDifference.Change;
import org.loomwright.core.difference.LoomDifference.Entry;
import org.loomwright.core.difference.LoomDifference.FieldChange;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.testing.RandomLooms;
import org.loomwright.testing.RandomLooms.Size;
import org.loomwright.testing.TestCatalogue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** What is true of the difference of any two looms. */
class LoomDifferenceProperties {

    private static final int PAIRS = 40;

    @Test
    void aLoomDoesNotDifferFromItselfInAnotherOrder() {
        for (long seed = 0; seed < PAIRS; seed++) {
            LoomDocument document = RandomLooms.documentOf(seed, Size.CAR);
            Random random = new Random(seed);
            LoomDocument disordered =
                    new LoomDocument(
                            document.name(),
                            document.vehicle(),
                            document.datum(),
                            shuffled(document.nodes(), random),
                            shuffled(document.segments(), random),
                            shuffled(document.devices(), random),
                            shuffled(document.wires(), random),
                            shuffled(document.checks(), random));

            assertThat(LoomDifference.between(proven(document), proven(disordered)).isEmpty())
                    .isTrue();
        }
    }

    @Test
    void itIsEmptyExactlyWhenTheLoomsAreEqual() {
        for (long seed = 0; seed < PAIRS; seed++) {
            Loom one = RandomLooms.of(seed / 2, Size.SMALL);
            Loom other = RandomLooms.of((seed + 1) / 2, Size.SMALL);

            assertThat(LoomDifference.between(one, other).isEmpty()).isEqualTo(one.equals(other));
        }
    }

    @Test
    void theDifferenceBackwardsIsTheMirrorOfTheDifferenceForwards() {
        for (long seed = 0; seed < PAIRS; seed++) {
            Loom one = RandomLooms.of(seed, Size.SMALL);
            Loom other = RandomLooms.of(seed + 1, Size.CAR);
            List<Entry> mirrored =
                    LoomDifference.between(other, one).entries().stream()
                            .map(LoomDifferenceProperties::mirror)
                            .toList();
            List<Entry> entries = LoomDifference.between(one, other).entries();

            assertThat(mirrored).isEqualTo(entries);
        }
    }

    @Test
    void theSameTwoLoomsAlwaysGiveTheSameLines() {
        for (long seed = 0; seed < PAIRS; seed++) {
            Loom one = RandomLooms.of(seed, Size.SMALL);
            Loom other = RandomLooms.of(seed + 1, Size.SMALL);

            assertThat(LoomDifference.between(one, other))
                    .isEqualTo(LoomDifference.between(one, other));
            assertThat(LoomDifference.between(one, other).entries())
                    .extracting(entry -> entry.thing().kind())
                    .isSorted();
        }
    }

    private static Entry mirror(Entry entry) {
        Change change =
                switch (entry.change()) {
                    case ADDED -> Change.REMOVED;
                    case REMOVED -> Change.ADDED;
                    case CHANGED -> Change.CHANGED;
                };
        List<FieldChange> fields =
                entry.fields().stream()
                        .map(f -> new FieldChange(f.field(), f.after(), f.before()))
                        .toList();
        return new Entry(entry.thing(), change, fields);
    }

    private static <T> List<T> shuffled(List<T> parts, Random random) {
        List<T> copy = new ArrayList<>(parts);
        Collections.shuffle(copy, random);
        return copy;
    }

    private static Loom proven(LoomDocument document) {
        return LoomChecker.check(document, TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }
}
