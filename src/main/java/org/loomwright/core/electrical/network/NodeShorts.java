package org.loomwright.core.electrical.network;

import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Voltage;

import java.util.ArrayList;
import java.util.List;

/**
 * What would flow if a node of a net were joined to the reference without resistance, for any number of nodes one after the other. The
 * net is solved once; every node then costs one back-substitution, and every question one pass over the branches.
 *
 * <p>Source: Thévenin's theorem, as in every textbook of circuit theory: seen from node n the net is a source of the voltage V(n) behind the
 * resistance Z(n, n), where Z is the inverse of the conductance matrix. The short draws V(n) / Z(n, n), and the voltage of node m falls
 * by Z(m, n) times that current.
 *
 * <p>Exact for the net as it stands: nothing that would move because of the short (a relay that lets go) moves. Not thread-safe, because
 * the factored matrix is not.
 */
public final class NodeShorts {

    private final List<Branch> branches;
    private final Nodes nodes;
    private final LinearSolver.Factored factored;
    private final double[] volts;
    private final int[] from;
    private final int[] to;

    NodeShorts(List<Branch> branches, Nodes nodes, LinearSolver.Factored factored, double[] volts) {
        this.branches = branches;
        this.nodes = nodes;
        this.factored = factored;
        this.volts = volts;
        from = branches.stream().mapToInt(branch -> nodes.unknown(branch.from())).toArray();
        to = branches.stream().mapToInt(branch -> nodes.unknown(branch.to())).toArray();
    }

    /**
     * @param node a node of the net
     * @return what flows once it is joined to the reference: nothing where it is the reference, where nothing connects the two, or where
     *     the net has no such node
     */
    public NodeShort at(String node) {
        if (!nodes.knows(node) || !nodes.isGrounded(node) || nodes.unknown(node) < 0) {
            return new NodeShort(0, 0, new double[volts.length]);
        }
        int unknown = nodes.unknown(node);
        double[] response = new double[volts.length];
        response[unknown] = 1;
        response = factored.solve(response);
        double amperes = volts[unknown] / response[unknown];
        for (int i = 0; i < response.length; i++) {
            response[i] *= -amperes;
        }
        return new NodeShort(volts[unknown], amperes, response);
    }

    private static double across(int from, int to, double[] volts) {
        return (from < 0 ? 0 : volts[from]) - (to < 0 ? 0 : volts[to]);
    }

    /** One node joined to the reference. */
    public final class NodeShort {

        private final double openVolts;
        private final double amperes;
        private final double[] change;

        private NodeShort(double openVolts, double amperes, double[] change) {
            this.openVolts = openVolts;
            this.amperes = amperes;
            this.change = change;
        }

        /** @return the node's voltage before the short */
        public Voltage open() {
            return Voltage.roundedFromVolts(openVolts);
        }

        /** @return what flows from the node to the reference through the short */
        public Current current() {
            return Current.roundedFromAmperes(amperes);
        }

        /**
         * Where the current of the short comes from.
         *
         * @param share of the current of the short, not negative
         * @return the branches with a resistance in which it causes at least that share, in the order of the net
         */
        public List<BranchCurrent> carrying(Ratio share) {
            double least = Math.abs(amperes) * share.toDouble();
            List<BranchCurrent> carrying = new ArrayList<>();
            for (int i = 0; i < from.length; i++) {
                Branch branch = branches.get(i);
                if (!branch.isIdeal()) {
                    double caused = across(from[i], to[i], change) * branch.siemens();
                    if (Math.abs(caused) >= least) {
                        double before =
                                (across(from[i], to[i], volts) + branch.emf().toDoubleVolts())
                                        * branch.siemens();
                        carrying.add(
                                new BranchCurrent(
                                        branch.id(),
                                        Current.roundedFromAmperes(before + caused),
                                        Current.roundedFromAmperes(caused)));
                    }
                }
            }
            return carrying;
        }
    }

    /**
     * A branch during a short.
     *
     * @param branch its id
     * @param current what flows, from its first node to its second
     * @param caused how much of that the short causes
     */
    public record BranchCurrent(String branch, Current current, Current caused) {}
}
