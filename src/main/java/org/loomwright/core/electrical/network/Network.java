package org.loomwright.core.electrical.network;

import org.loomwright.core.quantity.Resistance;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

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
    private final Nodes nodes;

    /**
     * @param reference the node from which voltages count; need not be on a branch
     * @param branches the net, with unique ids
     * @throws IllegalArgumentException if an id stands twice
     */
    public Network(String reference, List<Branch> branches) {
        this.branches = List.copyOf(branches);
        Set<String> ids = new HashSet<>();
        for (Branch branch : branches) {
            if (!ids.add(branch.id())) {
                throw new IllegalArgumentException("two branches are called " + branch.id());
            }
        }
        this.nodes = new Nodes(reference, this.branches);
    }

    /**
     * @param solver does the linear algebra
     * @return voltages and currents
     */
    public NetworkSolution solve(LinearSolver solver) {
        SymmetricMatrix conductances = conductances();
        return new NetworkSolution(
                branches, nodes, volts(conductances, factor(solver, conductances)));
    }

    /**
     * @param solver does the linear algebra
     * @return what would flow if a node were joined to the reference
     */
    public NodeShorts shorts(LinearSolver solver) {
        SymmetricMatrix conductances = conductances();
        LinearSolver.Factored factored = factor(solver, conductances);
        return new NodeShorts(branches, nodes, factored, volts(conductances, factored));
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
        for (Branch branch : branches) {
            if (!branch.isIdeal()) {
                double amperes = branch.emf().toDoubleVolts() * branch.siemens();
                add(injected, nodes.unknown(branch.from()), -amperes);
                add(injected, nodes.unknown(branch.to()), amperes);
            }
        }
        return injected;
    }

    private static void add(double[] sums, int at, double amount) {
        if (at >= 0) {
            sums[at] += amount;
        }
    }

    private SymmetricMatrix conductances() {
        List<TreeMap<Integer, Double>> columns = new ArrayList<>();
        for (int i = 0; i < nodes.unknownCount(); i++) {
            columns.add(new TreeMap<>());
        }
        for (Branch branch : branches) {
            int from = nodes.unknown(branch.from());
            int to = nodes.unknown(branch.to());
            boolean inside =
                    branch.isIdeal() || nodes.rootOf(branch.from()) == nodes.rootOf(branch.to());
            if (!inside) {
                stamp(columns, from, to, branch.siemens());
            }
        }
        return packed(columns);
    }

    private static void stamp(
            List<TreeMap<Integer, Double>> columns, int from, int to, double siemens) {
        if (from >= 0) {
            columns.get(from).merge(from, siemens, Double::sum);
        }
        if (to >= 0) {
            columns.get(to).merge(to, siemens, Double::sum);
        }
        if (from >= 0 && to >= 0) {
            columns.get(from).merge(to, -siemens, Double::sum);
            columns.get(to).merge(from, -siemens, Double::sum);
        }
    }

    private static SymmetricMatrix packed(List<TreeMap<Integer, Double>> columns) {
        int[] starts = new int[columns.size() + 1];
        for (int i = 0; i < columns.size(); i++) {
            starts[i + 1] = starts[i] + columns.get(i).size();
        }
        int[] rows = new int[starts[columns.size()]];
        double[] values = new double[rows.length];
        int at = 0;
        for (TreeMap<Integer, Double> column : columns) {
            for (var entry : column.entrySet()) {
                rows[at] = entry.getKey();
                values[at++] = entry.getValue();
            }
        }
        return new SymmetricMatrix(starts, rows, values);
    }

    @Override
    public String toString() {
        return "network of %d branches, %d unknowns"
                .formatted(branches.size(), nodes.unknownCount());
    }
}
