package org.loomwright.core.kit.expansion;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.kit.Answer;
import org.loomwright.core.kit.Kits;
import org.loomwright.core.kit.Question;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Length;
import org.loomwright.testing.TestCatalogue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a kit asks of a loom, and what it says to answers and looms that will not do. */
class KitAnswersTest {

    private static final Recipe REVERSING = Kitted.recipe("reversing-lamps");

    private static List<Finding> reasons(Loom loom, Recipe recipe, Map<String, Answer> answers) {
        return switch (Kitted.expand(loom, List.of(), recipe, answers)) {
            case Outcome.Accepted<KitPlan>(KitPlan plan) -> List.of();
            case Outcome.Rejected<KitPlan>(List<Finding> reasons) -> reasons;
        };
    }

    private static List<Finding> reasons(String question, Answer answer) {
        Map<String, Answer> answers = Kitted.usual(REVERSING, Kitted.DEMO);
        answers.put(question, answer);
        return reasons(Kitted.DEMO, REVERSING, answers);
    }

    @Test
    void questionsOfferTheNodesOfThisLoomTheLikeliestFirst() {
        List<Question> questions =
                Kits.questionsFor(REVERSING, Kitted.DEMO, TestCatalogue.get(), Kitted.BEHAVIOURS);
        Question lampAt =
                questions.stream()
                        .filter(it -> it.id().equals("lamp-at"))
                        .findFirst()
                        .orElseThrow();
        assertThat(lampAt.usual()).isEqualTo("N42");
        assertThat(lampAt.choices())
                .extracting(Question.Choice::value)
                .startsWith("N42", "N46")
                .containsAll(Kitted.DEMO.nodes().keySet())
                .doesNotHaveDuplicates();
    }

    @Test
    void anUnknownKitIsTold() {
        assertThat(Kitted.KITS.find("ejector-seat"))
                .isInstanceOfSatisfying(
                        Outcome.Rejected.class,
                        rejected ->
                                assertThat(rejected.reasons().toString()).contains("kit.unknown"));
    }

    @Test
    void everyMissingAnswerIsToldWithItsQuestion() {
        assertThat(reasons(Kitted.DEMO, REVERSING, Map.of()))
                .allMatch(it -> it.code().equals("kit.answer-missing"))
                .extracting(it -> it.subject().id())
                .contains("lamps", "watts", "lamp-at", "switch", "switch-at", "own-earth")
                .doesNotContain("second-lamp-at", "tell-tale-at");
    }

    @Test
    void answersThatThisLoomDoesNotOfferAreTold() {
        List<Answer> wrong =
                List.of(
                        new Answer.Word("N999"),
                        new Answer.Amount(BigDecimal.ONE),
                        new Answer.NewEnd("N999", null, Length.ofMillimetres(100)),
                        new Answer.NewEnd(
                                "S99", Length.ofMillimetres(10), Length.ofMillimetres(100)),
                        new Answer.NewEnd("N10", null, Length.ZERO));
        for (Answer answer : wrong) {
            assertThat(reasons("lamp-at", answer))
                    .as(answer.toString())
                    .singleElement()
                    .satisfies(
                            it -> {
                                assertThat(it.code()).isEqualTo("kit.answer-impossible");
                                assertThat(it.subject().id()).isEqualTo("lamp-at");
                                assertThat(it.subject().pointer()).isEqualTo("/answers/lamp-at");
                            });
        }
        assertThat(reasons("watts", new Answer.Amount(new BigDecimal("5000"))))
                .extracting(Finding::code)
                .containsExactly("kit.answer-impossible");
        assertThat(reasons("colour-of-carpet", new Answer.Word("red")))
                .extracting(Finding::code)
                .containsExactly("kit.answer-unknown");
    }

    @Test
    void aNewEndBecomesABranchOfItsOwn() {
        Map<String, Answer> answers = Kitted.usual(REVERSING, Kitted.DEMO);
        answers.put(
                "switch-at",
                new Answer.NewEnd("S36", Length.ofMillimetres(210), Length.ofMillimetres(640)));
        answers.put("lamp-at", new Answer.NewEnd("N43", null, Length.ofMillimetres(150)));
        KitPlan plan =
                Kitted.expand(Kitted.DEMO, List.of(), REVERSING, answers)
                        .orElseThrow(Kitted::refusal);
        assertThat(plan.amendments()).hasAtLeastOneElementOfType(Amendment.BreakOutBranch.class);
        assertThat(plan.amendments()).hasAtLeastOneElementOfType(Amendment.ExtendBranch.class);
        Loom loom = Kitted.amended(Kitted.DEMO, plan.amendments());
        String node = loom.getDevice("REVERSE-SWITCH").points().getFirst().node();
        assertThat(Kitted.DEMO.nodes()).doesNotContainKey(node);
        assertThat(loom.findArriving(node).orElseThrow().length())
                .isEqualTo(Length.ofMillimetres(640));
    }

    @Test
    void aBreakoutBeyondTheSegmentIsRefusedAsAWhole() {
        assertThat(
                        reasons(
                                "switch-at",
                                new Answer.NewEnd(
                                        "S36",
                                        Length.ofMillimetres(9_000),
                                        Length.ofMillimetres(100))))
                .extracting(Finding::code)
                .contains("amendment.breakout-off-segment");
    }

    @Test
    void withoutTheWantedFeedTheKitSaysWhatItLookedFor() {
        Loom dark = without(Kitted.DEMO, Set.of("LIGHT-SWITCH"));
        Recipe fog = Kitted.recipe("fog-lamps");
        assertThat(reasons(dark, fog, Kitted.usual(fog, dark)))
                .singleElement()
                .satisfies(
                        it -> {
                            assertThat(it.code()).isEqualTo("kit.no-feed");
                            assertThat(it.text()).contains("fog lamp switch", "side lamps");
                        });
    }

    @Test
    void whereEveryPointIsTakenTheKitNamesThem() {
        Recipe fog = Kitted.recipe("fog-lamps");
        Loom full = full(Kitted.DEMO);
        assertThat(reasons(full, fog, Kitted.usual(fog, full)))
                .extracting(Finding::code)
                .contains("kit.no-feed");
        assertThat(reasons(full, fog, Kitted.usual(fog, full)).getFirst().text())
                .contains("SOLENOID/BATT has", "places taken");
    }

    @Test
    void whatALoomDoesNotHaveIsNamed() {
        Recipe relays = Kitted.recipe("headlamp-relays");
        Loom noDip = without(Kitted.DEMO, Set.of("DIP-SWITCH"));
        assertThat(reasons(noDip, relays, Kitted.usual(relays, noDip)))
                .extracting(Finding::code)
                .contains("kit.not-found");
        Recipe change = Kitted.recipe("polarity-change");
        Map<String, Answer> same = new HashMap<>(Map.of("earth", new Answer.Word("positive")));
        assertThat(reasons(Kitted.DEMO, change, same))
                .extracting(Finding::code)
                .containsExactly("kit.not-suited");
    }

    @Test
    void aRadioForTheOtherEarthIsRefused() {
        Recipe radio = Kitted.recipe("radio");
        Map<String, Answer> answers = Kitted.usual(radio, Kitted.DEMO);
        answers.put("made-for", new Answer.Word("negative"));
        assertThat(reasons(Kitted.DEMO, radio, answers))
                .extracting(Finding::code)
                .containsExactly("kit.not-suited");
        assertThat(reasons(Kitted.demo(EarthPolarity.NEGATIVE, 12_000), radio, answers)).isEmpty();
    }

    @Test
    void whatIsSkippedTakesItsUsualAnswer() {
        Recipe box = Kitted.recipe("fuse-box");
        Map<String, Answer> answers = Kitted.usual(box, Kitted.DEMO);
        answers.remove("second-circuit");
        assertThat(reasons(Kitted.DEMO, box, answers)).isEmpty();
    }

    private static Loom without(Loom loom, Set<String> devices) {
        LoomDocument old = loom.document();
        List<Wire> wires =
                old.wires().stream()
                        .filter(
                                wire ->
                                        !devices.contains(wire.a().device())
                                                && !devices.contains(wire.b().device()))
                        .toList();
        List<Device> left =
                old.devices().stream().filter(device -> !devices.contains(device.id())).toList();
        return Kitted.checked(
                new LoomDocument(
                        old.name(),
                        old.vehicle(),
                        old.datum(),
                        old.nodes(),
                        old.segments(),
                        left,
                        wires,
                        old.checks()));
    }

    /** The loom with no more room on any point that wires branch from. */
    private static Loom full(Loom loom) {
        LoomDocument old = loom.document();
        Map<String, Integer> ends = new HashMap<>();
        for (Wire wire : old.wires()) {
            ends.merge(wire.a().place(), 1, Integer::sum);
            ends.merge(wire.b().place(), 1, Integer::sum);
        }
        List<Device> devices = new ArrayList<>();
        for (Device device : old.devices()) {
            List<Point> points = new ArrayList<>();
            for (Point point : device.points()) {
                int taken = Math.max(1, ends.getOrDefault(device.id() + "/" + point.name(), 0));
                boolean earth = device.kind() == DeviceKind.EARTH_POINT;
                points.add(
                        new Point(point.name(), point.node(), point.tail(), earth ? null : taken));
            }
            devices.add(
                    new Device(
                            device.id(),
                            device.name(),
                            device.kind(),
                            device.load(),
                            device.particulars(),
                            points));
        }
        assertThat(new HashSet<>(devices)).hasSameSizeAs(old.devices());
        return Kitted.checked(
                new LoomDocument(
                        old.name(),
                        old.vehicle(),
                        old.datum(),
                        old.nodes(),
                        old.segments(),
                        devices,
                        old.wires(),
                        old.checks()));
    }
}
