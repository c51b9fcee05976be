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

    private final Network network;
    private final LinearSolver.Factored factored;
    private final double[] volts;

    NodeShorts(Network network, LinearSolver.Factored factored, double[] volts) {
        this.network = network;
        this.factored = factored;
        this.volts = volts;
    }

    /**
     * @param node a node of the net
     * @return its voltage against the reference before any short: nothing where nothing connects the two, or where the net has no such node
     */
    public Voltage open(String node) {
        int unknown = unknown(node);
        return unknown < 0 ? Voltage.ZERO : Voltage.roundedFromVolts(volts[unknown]);
    }

    /** Negative where a short draws nothing. */
    private int unknown(String node) {
        return network.nodes().isGrounded(node) ? network.nodes().unknown(node) : -1;
    }

    /**
     * @param node a node of the net
     * @return what flows once it is joined to the reference: nothing where it is the reference, where nothing connects the two, or where
     *     the net has no such node
     */
    public NodeShort at(String node) {
        int unknown = unknown(node);
        if (unknown < 0) {
            return new NodeShort(0, 0, new double[volts.length]);
        }
        double[] response = new double[volts.length];
        response[unknown] = 1;
        response = factored.solve(response);
        double amperes = volts[unknown] / response[unknown];
        for (int i = 0; i < response.length; i++) {
            response[i] *= -amperes;
        }
        return new NodeShort(volts[unknown], amperes, response);
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
            for (int i = 0; i < network.branches().size(); i++) {
                double caused = network.across(i, change) * network.siemens(i);
                if (Math.abs(caused) >= least && !network.branches().get(i).isIdeal()) {
                    carrying.add(branchCurrent(i, caused));
                }
            }
            return carrying;
        }

        private BranchCurrent branchCurrent(int index, double caused) {
            Branch branch = network.branches().get(index);
            double across = network.across(index, volts) + branch.emf().toDoubleVolts();
            return new BranchCurrent(
                    branch.id(),
                    Current.roundedFromAmperes(across * network.siemens(index) + caused),
                    Current.roundedFromAmperes(caused));
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
