package org.loomwright.core.electrical.network;

import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Voltages and currents of one solved network, rounded to the millivolt and the milliampere. Immutable and thread-safe. */
public final class NetworkSolution {

    private static final double EXACT = 1e-9;
    private static final double LEAST_SCALE_AMPERES = 1;

    private final List<Branch> branches;
    private final Nodes nodes;
    private final double[] volts;
    private final Map<String, Double> amperes = new HashMap<>();
    private final Set<String> undetermined;

    NetworkSolution(List<Branch> branches, Nodes nodes, double[] volts) {
        this.branches = branches;
        this.nodes = nodes;
        this.volts = volts;
        for (Branch branch : branches) {
            if (!branch.isIdeal()) {
                double across =
                        volts(branch.from()) - volts(branch.to()) + branch.emf().toDoubleVolts();
                amperes.put(branch.id(), across * branch.siemens());
            }
        }
        IdealCurrents ideal = new IdealCurrents(branches, amperes);
        amperes.putAll(ideal.amperes());
        undetermined = Set.copyOf(ideal.undetermined());
    }

    /**
     * @param node a node of the net
     * @return its voltage against the reference, empty where nothing connects the two or the net has no such node
     */
    public Optional<Voltage> findVoltage(String node) {
        return nodes.knows(node) && nodes.isGrounded(node)
                ? Optional.of(Voltage.roundedFromVolts(volts(node)))
                : Optional.empty();
    }

    /**
     * @param branch a branch of the net
     * @return V(from) - V(to), also where the branch floats
     */
    public Voltage across(Branch branch) {
        return Voltage.roundedFromVolts(volts(branch.from()) - volts(branch.to()));
    }

    /**
     * @param branch id of a branch of the net
     * @return its current, counted from its first node to its second
     * @throws IllegalArgumentException if the net has no such branch
     */
    public Current current(String branch) {
        return Current.roundedFromAmperes(amperes(branch));
    }

    /** @return ids of ideal branches that close a loop of such: how the current divides there is not determined */
    public Set<String> undetermined() {
        return undetermined;
    }

    /**
     * @return whether Kirchhoff's current law holds at every node to 1e-9 of the greatest current, or of one ampere where less flows: a
     *     branch of 10 µΩ tells nothing finer than 2e-10 A at 12 V
     */
    public boolean isExact() {
        return relativeResidual() < EXACT;
    }

    double relativeResidual() {
        Map<String, Double> sums = new HashMap<>();
        double greatest = LEAST_SCALE_AMPERES;
        for (Branch branch : branches) {
            double current = amperes(branch.id());
            sums.merge(branch.from(), -current, Double::sum);
            sums.merge(branch.to(), current, Double::sum);
            greatest = Math.max(greatest, Math.abs(current));
        }
        double worst = sums.values().stream().mapToDouble(Math::abs).max().orElse(0);
        return worst / greatest;
    }

    double volts(String node) {
        int unknown = nodes.unknown(node);
        return unknown < 0 ? 0 : volts[unknown];
    }

    double amperes(String branch) {
        Double current = amperes.get(branch);
        if (current == null) {
            throw new IllegalArgumentException("the net has no branch " + branch);
        }
        return current;
    }
}
