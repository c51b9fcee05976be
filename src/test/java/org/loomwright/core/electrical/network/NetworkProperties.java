package org.loomwright.core.electrical.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.solver.SparseCholesky;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;

/** Kirchhoff's and Ohm's laws, superposition and reciprocity on random nets with loops, ideal branches and floating parts. */
class NetworkProperties {

    private static final int BRANCHES = 120;

    /** Where less than an ampere flows, residuals are counted against one: 10 µΩ tells nothing finer than 2e-10 A at 12 V. */
    private static final double LEAST_SCALE_AMPERES = 1;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    /** Mostly a tree, as a loom is; resistances from 10 µΩ to 1 kΩ; every tenth branch ideal, every tenth a source. */
    private static List<Branch> randomNet(Random random) {
        List<Branch> branches = new ArrayList<>();
        for (int i = 0; i < BRANCHES; i++) {
            String to = "n" + (i + 1);
            String from = random.nextInt(20) == 0 ? "f" + i : "n" + random.nextInt(i + 1);
            if (random.nextInt(5) == 0) {
                to = "n" + random.nextInt(i + 1);
            }
            int kind = random.nextInt(10);
            Resistance resistance =
                    Resistance.roundedFromOhms(
                            Math.pow(10, random.nextInt(9) - 5) * (1 + random.nextDouble()));
            Voltage emf = Voltage.ofMillivolts(kind == 1 ? random.nextInt(15_000) : 0);
            branches.add(
                    kind == 0
                            ? Branch.ideal("b" + i, from, to)
                            : new Branch("b" + i, from, to, resistance, emf));
        }
        return branches;
    }

    private static NetworkSolution solve(List<Branch> branches) {
        return new Network("n0", branches).solve(new SparseCholesky());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void kirchhoffsCurrentLawHoldsAtEveryNode(long seed) {
        List<Branch> branches = randomNet(new Random(seed));
        NetworkSolution solution = solve(branches);
        Map<String, Double> sums = new HashMap<>();
        double greatest = LEAST_SCALE_AMPERES;
        for (Branch branch : branches) {
            double current = solution.amperes(branch.id());
            sums.merge(branch.from(), current, Double::sum);
            sums.merge(branch.to(), -current, Double::sum);
            greatest = Math.max(greatest, Math.abs(current));
        }
        double allowed = 1e-9 * greatest;
        assertThat(sums.values())
                .allSatisfy(sum -> assertThat(Math.abs(sum)).isLessThanOrEqualTo(allowed));
        assertThat(solution.isExact()).isTrue();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void ohmsLawHoldsInEveryBranch(long seed) {
        List<Branch> branches = randomNet(new Random(seed));
        NetworkSolution solution = solve(branches);
        assertThat(branches)
                .allSatisfy(
                        branch -> {
                            double across =
                                    solution.volts(branch.from()) - solution.volts(branch.to());
                            double ohmic =
                                    solution.amperes(branch.id())
                                            * branch.resistance().toDoubleOhms();
                            assertThat(across + branch.emf().toDoubleVolts())
                                    .isCloseTo(ohmic, within(1e-9));
                        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void sourcesSuperpose(long seed) {
        List<Branch> branches = randomNet(new Random(seed));
        Map<String, Double> sums = new HashMap<>();
        double scale = LEAST_SCALE_AMPERES;
        for (Branch source : branches) {
            if (!source.emf().equals(Voltage.ZERO)) {
                NetworkSolution alone =
                        solve(
                                branches.stream()
                                        .map(b -> b.id().equals(source.id()) ? b : quiet(b))
                                        .toList());
                for (Branch branch : branches) {
                    sums.merge(branch.id(), alone.amperes(branch.id()), Double::sum);
                    scale = Math.max(scale, Math.abs(alone.amperes(branch.id())));
                }
            }
        }
        NetworkSolution together = solve(branches);
        double allowed = 1e-8 * scale;
        assertThat(branches)
                .allSatisfy(
                        branch ->
                                assertThat(together.amperes(branch.id()))
                                        .isCloseTo(
                                                sums.getOrDefault(branch.id(), 0.0),
                                                within(allowed)));
    }

    private static Branch quiet(Branch branch) {
        return new Branch(
                branch.id(), branch.from(), branch.to(), branch.resistance(), Voltage.ZERO);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aSourceGivesTheSameCurrentThereAsItsTwinGivesHere(long seed) {
        Random random = new Random(seed);
        List<Branch> passive = randomNet(random).stream().map(NetworkProperties::quiet).toList();
        List<Branch> resistors = passive.stream().filter(branch -> !branch.isIdeal()).toList();
        Branch here = resistors.get(random.nextInt(resistors.size()));
        Branch there = resistors.get(random.nextInt(resistors.size()));

        NetworkSolution fromHere = solve(withTwelveVolts(passive, here));
        NetworkSolution fromThere = solve(withTwelveVolts(passive, there));
        double scale =
                Math.abs(fromHere.amperes(here.id())) + Math.abs(fromThere.amperes(there.id()));

        assertThat(fromHere.amperes(there.id()))
                .isCloseTo(fromThere.amperes(here.id()), within(1e-9 * (1 + scale)));
    }

    private static List<Branch> withTwelveVolts(List<Branch> branches, Branch source) {
        return branches.stream()
                .map(
                        branch ->
                                branch.equals(source)
                                        ? new Branch(
                                                branch.id(),
                                                branch.from(),
                                                branch.to(),
                                                branch.resistance(),
                                                Voltage.ofMillivolts(12_000))
                                        : branch)
                .toList();
    }
}
