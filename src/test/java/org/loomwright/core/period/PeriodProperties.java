package org.loomwright.core.period;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.difference.LoomDifference;
import org.loomwright.core.difference.LoomDifference.Change;
import org.loomwright.core.difference.LoomDifference.Entry;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.exchange.PeriodFiles;
import org.loomwright.testing.RandomAdditions;
import org.loomwright.testing.RandomLooms;
import org.loomwright.testing.TestCatalogue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What holds for every loom, whatever is added to it. */
class PeriodProperties {

    private static final PeriodCheck CHECK =
            new PeriodCheck(
                    TestCatalogue.get(),
                    ElectricalFiles.behaviours(),
                    PeriodFiles.load(TestCatalogue.get()));

    private static AmendedLoom amended(Loom stock, long seed) {
        return Amendments.apply(stock, RandomAdditions.of(stock, seed, 12), TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void theWayBackHasAStepForEveryPartThatDiffers(long seed) {
        Loom stock = RandomLooms.of(seed, RandomLooms.Size.SMALL);
        AmendedLoom amended = amended(stock, seed);
        Set<Subject> steps =
                CHECK.of(stock, amended, List.of()).wayBack().stream()
                        .map(BackStep::subject)
                        .collect(Collectors.toSet());
        List<Subject> differing =
                LoomDifference.between(stock, amended.loom()).entries().stream()
                        .filter(PeriodProperties::needsAStep)
                        .map(Entry::thing)
                        .toList();
        assertThat(differing).isNotEmpty();
        assertThat(steps).containsExactlyInAnyOrderElementsOf(differing);
    }

    /** Nodes and points come back with what they belong to; a segment that only has a new opening is as it was. */
    private static boolean needsAStep(Entry entry) {
        return switch (entry.thing().kind()) {
            case WIRE, DEVICE, OPENING -> true;
            case SEGMENT -> entry.change() != Change.CHANGED;
            case LOOM,
                    VEHICLE,
                    NODE,
                    POINT,
                    CHECK,
                    AMENDMENT,
                    REQUEST,
                    SPECIFICATION,
                    SETTINGS,
                    WORK_ORDER ->
                    false;
        };
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void everyAdditionIsJudgedAndNothingElse(long seed) {
        Loom stock = RandomLooms.of(seed, RandomLooms.Size.SMALL);
        AmendedLoom amended = amended(stock, seed);
        PeriodReport report = CHECK.of(stock, amended, List.of());
        Set<Subject> judged =
                report.items().stream().map(PeriodItem::subject).collect(Collectors.toSet());
        Set<Subject> changed =
                LoomDifference.between(stock, amended.loom()).entries().stream()
                        .filter(entry -> entry.change() != Change.REMOVED)
                        .filter(PeriodProperties::needsAStep)
                        .map(Entry::thing)
                        .collect(Collectors.toSet());
        assertThat(judged).isEqualTo(changed);
        assertThat(report.counts().values().stream().mapToInt(Integer::intValue).sum())
                .isEqualTo(report.items().size());
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void judgementsSayWhyAndHowItIsUndone(long seed) {
        Loom stock = RandomLooms.of(seed, RandomLooms.Size.SMALL);
        for (PeriodItem item : CHECK.of(stock, amended(stock, seed), List.of()).items()) {
            assertThat(item.why()).as(item.toString()).endsWith(".");
            assertThat(item.wayBack()).as(item.toString()).endsWith(".");
            assertThat(item.subject().kind()).isNotEqualTo(ThingKind.NODE);
        }
    }
}
