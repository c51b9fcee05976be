package org.loomwright.core.electrical.network;

import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;

/** Voltages and currents of one solved network, rounded to the millivolt and the milliampere. Immutable and thread-safe. */
public final class NetworkSolution {

    private static final double EXACT = 1e-9;
    private static final double LEAST_SCALE_AMPERES = 1;

    private final Network network;
    private final double[] volts;
    private final double[] amperes;
    private final Set<String> undetermined;

    NetworkSolution(Network network, double[] volts) {
        this.network = network;
        this.volts = volts;
        this.amperes = new double[network.branches().size()];
        boolean hasIdeal = false;
        for (int i = 0; i < amperes.length; i++) {
            Branch branch = network.branches().get(i);
            if (branch.isIdeal()) {
                hasIdeal = true;
            } else {
                double across = network.across(i, volts) + branch.emf().toDoubleVolts();
                amperes[i] = across * network.siemens(i);
            }
        }
        undetermined = hasIdeal ? spreadIdeal() : Set.of();
    }

    private Set<String> spreadIdeal() {
        IdealCurrents ideal = new IdealCurrents(network, amperes);
        System.arraycopy(ideal.amperes(), 0, amperes, 0, amperes.length);
        return Set.copyOf(ideal.undetermined());
    }

    /**
     * @param node a node of the net
     * @return its voltage against the reference, empty where nothing connects the two or the net has no such node
     */
    public Optional<Voltage> findVoltage(String node) {
        return network.nodes().isGrounded(node)
                ? Optional.of(Voltage.roundedFromVolts(volts(node)))
                : Optional.empty();
    }

    /**
     * @param branch a branch of the net
     * @return V(from) - V(to), also where the branch floats
     */
    public Voltage across(Branch branch) {
        return Voltage.roundedFromVolts(network.across(index(branch.id()), volts));
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
        double[] sums = new double[network.nodes().count()];
        double greatest = LEAST_SCALE_AMPERES;
        for (int i = 0; i < amperes.length; i++) {
            sums[network.nodes().from(i)] -= amperes[i];
            sums[network.nodes().to(i)] += amperes[i];
            greatest = Math.max(greatest, Math.abs(amperes[i]));
        }
        double worst = Arrays.stream(sums).map(Math::abs).max().orElse(0);
        return worst / greatest;
    }

    double volts(String node) {
        int unknown = network.nodes().unknown(node);
        return unknown < 0 ? 0 : volts[unknown];
    }

    double amperes(String branch) {
        return amperes[index(branch)];
    }

    private int index(String branch) {
        Integer index = network.findIndex(branch);
        if (index == null) {
            throw new IllegalArgumentException("the net has no branch " + branch);
        }
        return index;
    }
}
