package org.loomwright.core.electrical.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.core.electrical.network.NodeShorts.NodeShort;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.solver.SparseCholesky;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;

/** What a short draws is what a net with the short in it has. */
class NodeShortsProperties {

    private static final int BRANCHES = 80;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    private static List<Branch> randomNet(Random random) {
        List<Branch> branches = new ArrayList<>();
        for (int i = 0; i < BRANCHES; i++) {
            String from = "n" + random.nextInt(i + 1);
            String to = random.nextInt(6) == 0 ? "n" + random.nextInt(i + 1) : "n" + (i + 1);
            Resistance resistance =
                    Resistance.roundedFromOhms(
                            Math.pow(10, random.nextInt(5) - 3) * (1 + random.nextDouble()));
            boolean source = random.nextInt(8) == 0;
            Voltage emf = Voltage.ofMillivolts(source ? random.nextInt(15_000) : 0);
            branches.add(new Branch("b" + i, from, to, resistance, emf));
        }
        return branches;
    }

    private static NetworkSolution with(List<Branch> branches, String node) {
        List<Branch> shorted = new ArrayList<>(branches);
        shorted.add(Branch.ideal("short", node, "n0"));
        return new Network("n0", shorted).solve(new SparseCholesky());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyShortEqualsANetThatIsSolvedWithIt(long seed) {
        List<Branch> branches = randomNet(new Random(seed));
        NodeShorts shorts = new Network("n0", branches).shorts(new SparseCholesky());
        for (int i = 1; i <= BRANCHES; i++) {
            String node = "n" + i;
            NetworkSolution whole = with(branches, node);
            NodeShort shorted = shorts.at(node);
            assertThat(shorted.current().toDoubleAmperes())
                    .isCloseTo(whole.amperes("short"), within(1e-3));
            assertThat(shorted.carrying(Ratio.ZERO))
                    .hasSameSizeAs(branches)
                    .allSatisfy(
                            branch ->
                                    assertThat(branch.current().toDoubleAmperes())
                                            .isCloseTo(
                                                    whole.amperes(branch.branch()), within(1e-3)));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatTheShortCausesAddsUpToItsCurrentAtTheNode(long seed) {
        List<Branch> branches = randomNet(new Random(seed));
        NodeShorts shorts = new Network("n0", branches).shorts(new SparseCholesky());
        for (int i = 1; i <= BRANCHES; i += 7) {
            String node = "n" + i;
            NodeShort shorted = shorts.at(node);
            Current into =
                    shorted.carrying(Ratio.ZERO).stream()
                            .map(branch -> into(node, branches, branch))
                            .reduce(Current.ZERO, Current::plus);
            assertThat(into.milliamperes())
                    .isCloseTo(shorted.current().milliamperes(), within((long) BRANCHES));
        }
    }

    private static Current into(
            String node, List<Branch> branches, NodeShorts.BranchCurrent current) {
        Branch branch = branches.get(Integer.parseInt(current.branch().substring(1)));
        long milliamperes = current.caused().milliamperes();
        long out = branch.from().equals(node) ? milliamperes : 0;
        long in = branch.to().equals(node) ? milliamperes : 0;
        return Current.ofMilliamperes(in - out);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theReferenceAndUnknownNodesDrawNothing(long seed) {
        List<Branch> branches = randomNet(new Random(seed));
        branches.add(
                new Branch(
                        "apart",
                        "x1",
                        "x2",
                        Resistance.ofNanoohms(1_000_000),
                        Voltage.ofMillivolts(12_000)));
        NodeShorts shorts = new Network("n0", branches).shorts(new SparseCholesky());
        assertThat(List.of("n0", "x1", "x2", "nowhere"))
                .allSatisfy(node -> assertThat(shorts.at(node).current()).isEqualTo(Current.ZERO));
    }
}
