package org.loomwright.core.electrical.network;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Resistance;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A net of resistors and sources, solved for direct current.
 *
 * <p>Nodal analysis: conductance matrix times node voltages = currents that the sources drive in. Branches below {@link #LEAST}
 * count as ideal: their nodes become one, and their currents follow from the currents that enter. In a loop of ideal
 * branches the division is not determined; the branch that closes the loop is given no current and listed. A part without
 * connection to the reference is solved by itself, its voltages counted from one of its own nodes. One step of iterative
 * refinement follows the solution.
 *
 * <p>Cost: linear in the branches where the net without its reference is a tree, as looms nearly are. Immutable and thread-safe.
 *
 * <p>Source: C.-W. Ho, A. E. Ruehli, P. A. Brennan, "The modified nodal approach to network analysis", IEEE Transactions on Circuits
 * and Systems 22 (1975), section II, the plain nodal method; own treatment of ideal branches.
 */
public final class Network {

    /**
     * What resists less counts as nothing. At 12 V a double holds a voltage to about 2e-15 V, so a branch of 1 µΩ has its current to 2e-9 A,
     * 1e-10 of a car's load. The shortest battery strap has fifty times as much.
     */
    public static final Resistance LEAST = Resistance.ofNanoohms(1_000);

    private final List<Branch> branches;
    private final Map<String, Integer> indices = new HashMap<>();
    private final Nodes nodes;
    private final int[] from;
    private final int[] to;
    private final double[] siemens;

    /**
     * @param reference the node from which voltages count; need not be on a branch
     * @param branches the net, with unique ids
     * @throws IllegalArgumentException if an id stands twice
     */
    public Network(String reference, List<Branch> branches) {
        this.branches = List.copyOf(branches);
        for (Branch branch : branches) {
            if (indices.putIfAbsent(branch.id(), indices.size()) != null) {
                throw new IllegalArgumentException("two branches are called " + branch.id());
            }
        }
        this.nodes = new Nodes(reference, this.branches);
        this.from = nodes.unknownsFrom();
        this.to = nodes.unknownsTo();
        this.siemens = this.branches.stream().mapToDouble(Branch::siemens).toArray();
    }

    /**
     * @param solver does the linear algebra
     * @return voltages and currents
     */
    public NetworkSolution solve(LinearSolver solver) {
        SymmetricMatrix conductances = conductances();
        double[] volts = volts(conductances, factor(solver, conductances));
        return new NetworkSolution(this, volts);
    }

    /**
     * @param solver does the linear algebra
     * @return what would flow if a node were joined to the reference
     */
    public NodeShorts shorts(LinearSolver solver) {
        SymmetricMatrix conductances = conductances();
        LinearSolver.Factored factored = factor(solver, conductances);
        return new NodeShorts(this, factored, volts(conductances, factored));
    }

    private SymmetricMatrix conductances() {
        return Conductances.of(nodes.unknownCount(), from, to, siemens);
    }

    private static LinearSolver.Factored factor(LinearSolver solver, SymmetricMatrix conductances) {
        return conductances.size() == 0 ? right -> right.clone() : solver.factor(conductances);
    }

    private double[] volts(SymmetricMatrix conductances, LinearSolver.Factored factored) {
        double[] injected = injected();
        double[] volts = factored.solve(injected);
        double[] correction = factored.solve(conductances.residual(injected, volts));
        for (int i = 0; i < volts.length; i++) {
            volts[i] += correction[i];
        }
        return volts;
    }

    private double[] injected() {
        double[] injected = new double[nodes.unknownCount()];
        for (int i = 0; i < siemens.length; i++) {
            double volts = branches.get(i).emf().toDoubleVolts();
            if (volts != 0) {
                add(injected, from[i], -volts * siemens[i]);
                add(injected, to[i], volts * siemens[i]);
            }
        }
        return injected;
    }

    private static void add(double[] sums, int at, double amount) {
        if (at >= 0) {
            sums[at] += amount;
        }
    }

    /** @return the net, as it was given */
    public List<Branch> branches() {
        return branches;
    }

    /** @return the branch of that id, if the net has it */
    public Optional<Branch> findBranch(String id) {
        return Optional.ofNullable(indices.get(id)).map(branches::get);
    }

    Nodes nodes() {
        return nodes;
    }

    /** Number of the branch in {@link #branches}, or null where there is none. */
    @Nullable Integer findIndex(String branch) {
        return indices.get(branch);
    }

    /** V(from) - V(to) of a branch. */
    double across(int branch, double[] volts) {
        return (from[branch] < 0 ? 0 : volts[from[branch]])
                - (to[branch] < 0 ? 0 : volts[to[branch]]);
    }

    /** Infinite where a branch is ideal. */
    double siemens(int branch) {
        return siemens[branch];
    }

    @Override
    public String toString() {
        return "network of %d branches, %d unknowns"
                .formatted(branches.size(), nodes.unknownCount());
    }
}
