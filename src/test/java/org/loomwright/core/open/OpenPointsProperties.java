package org.loomwright.core.open;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.loom.Evidence;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.open.OpenReport.Score;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.RandomAdditions;
import org.loomwright.testing.RandomLooms;
import org.loomwright.testing.TestCatalogue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** What holds for every loom, whatever is added to it. */
class OpenPointsProperties {

    private static final List<String> SERVICES =
            TestCatalogue.get().services().stream().map(Service::code).toList();

    /** A random loom for 6 V with gaps in its finishes, and circuits added to it. */
    private static Answers random(long seed) {
        LoomDocument document = RandomLooms.documentOf(seed, RandomLooms.Size.SMALL);
        VehicleSheet vehicle = document.vehicle();
        Random random = new Random(seed);
        LoomDocument gappy =
                new LoomDocument(
                        document.name(),
                        new VehicleSheet(
                                vehicle.name(),
                                vehicle.year(),
                                vehicle.hand(),
                                vehicle.earth(),
                                Voltage.ofMillivolts(6_000),
                                List.of()),
                        document.datum(),
                        document.nodes(),
                        document.segments().stream().map(it -> gappy(it, random)).toList(),
                        document.devices(),
                        document.wires(),
                        document.checks());
        Answers nothing = new Answers(gappy, List.of());
        return new Answers(gappy, RandomAdditions.circuits(nothing.stock(), seed, 8));
    }

    private static Segment gappy(Segment segment, Random random) {
        Integer picks = random.nextBoolean() ? Integer.valueOf(10) : null;
        EvidenceKind kind = random.nextBoolean() ? EvidenceKind.ASSUMED : EvidenceKind.MEASURED;
        Evidence evidence = new Evidence(kind, "");
        return segment.withFinish(
                new Finish("cotton-braid", "B", List.of(), picks, random.nextInt(2), evidence));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void sayingAFactClosesItsPointAndNeverLowersAScore(long seed) {
        Answers answers = random(seed);
        Random random = new Random(seed);
        OpenReport before = answers.report();
        for (List<OpenPoint> left = sayable(before); !left.isEmpty(); left = sayable(before)) {
            OpenPoint point = left.get(random.nextInt(left.size()));
            String service = SERVICES.get(random.nextInt(SERVICES.size()));
            answers = answers.say(point, service);
            OpenReport after = answers.report();
            assertThat(after.points())
                    .noneMatch(
                            it ->
                                    it.rule() == point.rule()
                                            && it.subject().equals(point.subject()));
            assertNotLower(before, after, point + " with " + service);
            before = after;
        }
        assertThat(before.points()).allMatch(it -> Answers.NEED_PARTS.contains(it.rule()));
    }

    private static List<OpenPoint> sayable(OpenReport report) {
        return report.points().stream()
                .filter(point -> !Answers.NEED_PARTS.contains(point.rule()))
                .toList();
    }

    private static void assertNotLower(OpenReport before, OpenReport after, String what) {
        assertNotLower(before.price(), after.price(), "price: " + what);
        assertNotLower(before.build(), after.build(), "build: " + what);
        assertNotLower(before.total(), after.total(), "total: " + what);
    }

    private static void assertNotLower(Score before, Score after, String what) {
        assertThat(after.said() * before.asked())
                .as("%s: %s, then %s", what, before, after)
                .isGreaterThanOrEqualTo(before.said() * after.asked());
        assertThat(after.percent()).isGreaterThanOrEqualTo(before.percent());
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
    void everyPointIsAboutAPartThatThereIs(long seed) {
        Loom stock = RandomLooms.of(seed, RandomLooms.Size.SMALL);
        List<Amendment> amendments = RandomAdditions.of(stock, seed, 10);
        Loom loom =
                Amendments.apply(stock, amendments, TestCatalogue.get())
                        .map(AmendedLoom::loom)
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
        OpenReport report = Opened.report(stock, amendments);
        assertThat(report.points()).isNotEmpty();
        for (OpenPoint point : report.points()) {
            assertThat(exists(loom, point.subject())).as(point.text()).isTrue();
            assertThat(point.weight()).isPositive();
            assertThat(point.text()).endsWith(".").contains(point.subject().id());
            assertThat(point.question()).contains("?");
        }
    }

    private static boolean exists(Loom loom, Subject subject) {
        String id = subject.id();
        return switch (subject.kind()) {
            case VEHICLE -> id.isEmpty();
            case NODE -> loom.nodes().containsKey(id);
            case SEGMENT -> loom.segments().containsKey(id);
            case DEVICE -> loom.devices().containsKey(id);
            case WIRE -> loom.wires().containsKey(id);
            case POINT ->
                    loom.devices().values().stream()
                            .anyMatch(
                                    device ->
                                            device.points().stream()
                                                    .anyMatch(
                                                            point ->
                                                                    id.equals(
                                                                            device.id()
                                                                                    + "/"
                                                                                    + point
                                                                                            .name())));
            case OPENING ->
                    loom.segments().values().stream()
                            .flatMap(segment -> segment.openings().stream())
                            .anyMatch(opening -> opening.id().equals(id));
            case LOOM, CHECK, AMENDMENT, REQUEST, SPECIFICATION, SETTINGS, WORK_ORDER -> false;
        };
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34})
    void theHeaviestComesFirstAndTheScoreAddsUp(long seed) {
        OpenReport report = random(seed).report();
        List<Integer> weights = report.points().stream().map(OpenPoint::weight).toList();
        List<Integer> sorted = new ArrayList<>(weights);
        sorted.sort(Collections.reverseOrder());
        assertThat(weights).isEqualTo(sorted);
        assertThat(report.next()).contains(report.points().getFirst());
        long open = weights.stream().mapToLong(Integer::longValue).sum();
        assertThat(report.total().asked() - report.total().said()).isEqualTo(open);
        assertThat(report.total().asked())
                .isGreaterThanOrEqualTo(Math.max(report.price().asked(), report.build().asked()));
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42})
    void theOrderOfTheRecordDoesNotMatter(long seed) {
        Answers answers = random(seed);
        LoomDocument document = answers.document();
        LoomDocument reversed =
                new LoomDocument(
                        document.name(),
                        document.vehicle(),
                        document.datum(),
                        document.nodes().reversed(),
                        document.segments().reversed(),
                        document.devices().reversed(),
                        document.wires().reversed(),
                        document.checks());
        assertThat(new Answers(reversed, answers.amendments()).report())
                .isEqualTo(answers.report());
    }
}
