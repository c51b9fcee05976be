package org.loomwright.core.geometry.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Looks for a tight arrangement of four or more circles: several starts, then hops from the best, then settling.
 */
final class Search {

    private static final int ELITES = 3;

    private final double[] radii;
    private final int count;
    private final OverlapEnergy energy;
    private final Relaxation relaxation;
    private final SeededRandom random;
    private final Moves moves;
    private final boolean uniform;
    private final long budget;
    private final List<Arrangement> elites = new ArrayList<>();

    Search(CanonicalRadii canonical, Effort effort) {
        this.radii = canonical.scaled();
        this.count = radii.length;
        this.uniform = canonical.isUniform();
        this.energy = new OverlapEnergy(radii);
        this.relaxation = new Relaxation(energy);
        this.random = new SeededRandom(canonical.seed());
        this.moves = new Moves(radii, energy.wallScale(), random);
        this.budget = effort.share() * normalWork(count);
    }

    static long normalWork(int count) {
        return (long)
                (Double.parseDouble(System.getProperty("work", "2.5e6"))
                        * Math.pow(Math.max(1, count / 30.0), 1.5));
    }

    /** Centres in units, abscissae then ordinates, in the order of the canonical radii. */
    double[] run() {
        for (double[] start : starts()) {
            keep(relaxation.relax(start, 400, Double.POSITIVE_INFINITY));
        }
        hop();
        if (Boolean.getBoolean("dbg")) {
            System.out.println("hops " + hops + " work " + energy.work());
            for (Arrangement e : elites)
                System.out.println(
                        e.radius()
                                + " -> "
                                + relaxation.settle(e, 300).radius()
                                + " "
                                + relaxation.settle(e, 3000).radius());
        }
        Arrangement best =
                elites.stream()
                        .map(elite -> relaxation.settle(elite, 300))
                        .min(Comparator.comparingDouble(Arrangement::radius))
                        .orElseThrow();
        return best.vector();
    }

    private List<double[]> starts() {
        List<double[]> starts = new ArrayList<>();
        starts.add(walled(CornerPlacement.arrange(radii, 0, 0)));
        starts.add(walled(CornerPlacement.arrange(radii, 1, 0)));
        starts.add(walled(CornerPlacement.arrange(radii, 1, 1 / Math.sqrt(3))));
        if (uniform) {
            starts.add(walled(CurvedRings.arrange(count)));
        }
        return starts;
    }

    private double[] walled(double[] centres) {
        double wall = 0;
        for (int i = 0; i < count; i++) {
            double x = centres[i];
            double y = centres[count + i];
            wall = Math.max(wall, Math.sqrt(x * x + y * y) + radii[i]);
        }
        double[] vector = java.util.Arrays.copyOf(centres, 2 * count + 1);
        vector[2 * count] = wall / energy.wallScale();
        return vector;
    }

    private void keep(Arrangement candidate) {
        for (Arrangement elite : elites) {
            if (Math.abs(elite.radius() - candidate.radius()) < 1e-7 * candidate.radius()) {
                return;
            }
        }
        elites.add(candidate);
        elites.sort(Comparator.comparingDouble(Arrangement::radius));
        if (elites.size() > ELITES) {
            elites.removeLast();
        }
    }

    static final double HEAT = Double.parseDouble(System.getProperty("heat", "0"));
    static final double SWAPS = Double.parseDouble(System.getProperty("swaps", "0.6"));
    int hops;

    private void hop() {
        Arrangement current = elites.getFirst();
        int failures = 0;
        int patience = Integer.getInteger("patience", 3 * count);
        while (energy.work() < budget) {
            hops++;
            Arrangement next = neighbour(current);
            if (HEAT > 0
                    && next.enthalpy < current.enthalpy * (1 + HEAT * random.fraction())
                    && Math.abs(next.enthalpy - current.enthalpy) > 1e-6 * current.enthalpy) {
                if (next.enthalpy > current.enthalpy) failures++;
                else failures = 0;
                current = next;
                keep(next);
            } else if (next.enthalpy < current.enthalpy * (1 - 1e-9)) {
                current = next;
                keep(next);
                failures = 0;
            } else if (++failures > patience) {
                current = relaxation.relax(moves.scatter(), 400, Double.POSITIVE_INFINITY);
                keep(current);
                failures = 0;
            }
        }
    }

    private Arrangement neighbour(Arrangement from) {
        double[] vector = from.vector();
        double choice = random.fraction();
        if (!uniform && choice < SWAPS) {
            moves.swap(vector);
        } else if (choice < 0.95) {
            moves.reinsert(vector);
        } else {
            moves.shake(vector, 0.4);
        }
        return relaxation.relax(vector, 150, from.enthalpy * (1 + HEAT));
    }
}
