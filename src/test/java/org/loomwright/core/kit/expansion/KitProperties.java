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
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Length;
import org.loomwright.testing.TestCatalogue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

/** Whatever is answered, a kit never breaks a loom. Fixed seeds. */
class KitProperties {

    private static final int ROUNDS = 150;

    /** A vehicle with what has been specified for it already. */
    private record Given(String name, Loom stock, List<Amendment> existing) {

        Loom loom() {
            return Kitted.amended(stock, existing);
        }
    }

    private static final List<Given> VEHICLES =
            List.of(
                    new Given("demonstration", Kitted.DEMO, List.of()),
                    new Given("amended demonstration", Kitted.DEMO, Kitted.ADDITIONS),
                    new Given(
                            "negative earth",
                            Kitted.demo(EarthPolarity.NEGATIVE, 12_000),
                            List.of()),
                    new Given("6 V", Kitted.demo(EarthPolarity.POSITIVE, 6_000), List.of()));

    @Test
    void randomAnswersNeverBreakALoomAndLeaveItsOwnPartsAlone() {
        Random random = new Random(20_311_125);
        int accepted = 0;
        for (int round = 0; round < ROUNDS; round++) {
            Given given = VEHICLES.get(random.nextInt(VEHICLES.size()));
            Recipe recipe = Kitted.KITS.all().get(random.nextInt(Kitted.KITS.all().size()));
            Loom before = given.loom();
            Map<String, Answer> answers = randomAnswers(recipe, before, random);
            String told =
                    "round %d, %s, %s with %s".formatted(round, given.name(), recipe.id(), answers);
            switch (Kitted.expand(given.stock(), given.existing(), recipe, answers)) {
                case Outcome.Accepted<KitPlan>(KitPlan plan) -> {
                    accepted++;
                    Loom loom =
                            Kitted.amended(
                                    given.stock(),
                                    Kitted.joined(given.existing(), plan.amendments()));
                    if (recipe.changes().isEmpty()) {
                        assertTheRestIsLeftAlone(before, loom, plan, told);
                    }
                }
                case Outcome.Rejected<KitPlan>(List<Finding> reasons) ->
                        assertThat(reasons)
                                .as(told)
                                .allMatch(it -> it.code().matches("(kit|amendment)\\..+"));
            }
        }
        assertThat(accepted).isGreaterThan(ROUNDS / 3);
    }

    /** Only wires that the kit says it renews differ, and those in size alone. */
    private static void assertTheRestIsLeftAlone(
            Loom before, Loom loom, KitPlan plan, String told) {
        Set<String> renewed =
                plan.notes().stream()
                        .filter(note -> note.rule().equals("renewed"))
                        .map(note -> note.about().id())
                        .collect(Collectors.toSet());
        for (Device device : before.devices().values()) {
            assertThat(loom.getDevice(device.id())).as(told).isEqualTo(device);
        }
        for (Wire wire : before.wires().values()) {
            Wire now = loom.getWire(wire.id());
            if (renewed.contains(wire.id())) {
                assertThat(now.colour()).as(told).isEqualTo(wire.colour());
                assertThat(now.a()).as(told).isEqualTo(wire.a());
                assertThat(now.b()).as(told).isEqualTo(wire.b());
            } else {
                assertThat(now).as(told).isEqualTo(wire);
            }
        }
    }

    private static Map<String, Answer> randomAnswers(Recipe recipe, Loom loom, Random random) {
        Map<String, Answer> answers = new LinkedHashMap<>();
        for (Question question :
                Kits.questionsFor(recipe, loom, TestCatalogue.get(), Kitted.BEHAVIOURS)) {
            if (question.kind().isAmount() || !question.choices().isEmpty()) {
                answers.put(question.id(), random(question, random));
            }
        }
        return answers;
    }

    private static Answer random(Question question, Random random) {
        if (question.kind().isAmount()) {
            int least = question.least() == null ? 1 : question.least().intValue();
            int most = question.most() == null ? 100 : question.most().intValue();
            return new Answer.Amount(
                    BigDecimal.valueOf(least + 1L + random.nextInt(Math.max(1, most - least))));
        }
        if (question.kind() == Question.Kind.NODE && random.nextInt(4) == 0) {
            List<String> segments = List.copyOf(Kitted.DEMO.segments().keySet());
            String segment = segments.get(random.nextInt(segments.size()));
            long length = (long) Kitted.DEMO.getSegment(segment).length().toDoubleMillimetres();
            return new Answer.NewEnd(
                    segment,
                    Length.ofMillimetres(1 + random.nextLong(length)),
                    Length.ofMillimetres(50 + random.nextInt(900)));
        }
        List<Question.Choice> choices = question.choices();
        return new Answer.Word(choices.get(random.nextInt(choices.size())).value());
    }

    @Test
    void theSameKitTwiceGivesOtherIdsOrIsRefused() {
        List<String> twice = new ArrayList<>();
        for (Recipe recipe : Kitted.KITS.all()) {
            if (recipe.id().equals("six-to-twelve")) {
                continue;
            }
            KitPlan first = Kitted.plan(Kitted.DEMO, recipe.id());
            Loom loom = Kitted.amended(Kitted.DEMO, first.amendments());
            Map<String, Answer> answers = Kitted.usual(recipe, loom);
            switch (Kitted.expand(Kitted.DEMO, first.amendments(), recipe, answers)) {
                case Outcome.Accepted<KitPlan>(KitPlan second) -> {
                    List<Amendment> all = Kitted.joined(first.amendments(), second.amendments());
                    Kitted.amended(Kitted.DEMO, all);
                    Set<String> ids = new HashSet<>();
                    assertThat(all).extracting(Amendment::id).allMatch(ids::add);
                    twice.add(recipe.id());
                }
                case Outcome.Rejected<KitPlan>(List<Finding> reasons) ->
                        assertThat(reasons)
                                .as(recipe.id())
                                .extracting(Finding::code)
                                .allMatch(code -> code.startsWith("kit."));
            }
        }
        assertThat(twice).contains("reversing-lamps", "fog-lamps", "radiator-fan");
    }

    @Test
    void theSameAnswersGiveTheSamePlan() {
        for (Recipe recipe : Kitted.KITS.all()) {
            if (!recipe.id().equals("six-to-twelve")) {
                assertThat(Kitted.plan(Kitted.DEMO, recipe.id()))
                        .isEqualTo(Kitted.plan(Kitted.DEMO, recipe.id()));
            }
        }
    }
}
