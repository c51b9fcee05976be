package org.loomwright.core.electrical.simulation;

import org.loomwright.core.loom.Loom;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.solver.SparseCholesky;
import org.loomwright.testing.TestCatalogue;
import org.loomwright.testing.VehicleLooms;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import java.util.List;
import java.util.concurrent.TimeUnit;

/** A vehicle-like loom in the first twelve standard scenarios, with everything that depends on the loom alone made anew. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 1)
@Fork(1)
@State(Scope.Benchmark)
public class SimulationBenchmark {

    private static final int SCENARIOS = 12;

    @Param({"100", "200", "400", "800"})
    private int wires;

    private Loom loom = VehicleLooms.of(1, 20);
    private List<Scenario> scenarios = List.of();
    private final Behaviours behaviours = ElectricalFiles.behaviours();

    @Setup
    public void draw() {
        loom = VehicleLooms.of(1, wires);
        scenarios = ElectricalFiles.scenarios().of(loom, TestCatalogue.get()).subList(0, SCENARIOS);
    }

    @Benchmark
    public List<Readings> twelveScenarios() {
        Simulation simulation =
                new Simulation(
                        loom,
                        TestCatalogue.get(),
                        TestCatalogue.electrical(),
                        behaviours,
                        ElectricalSettings.USUAL,
                        new SparseCholesky());
        return scenarios.stream()
                .map(simulation::run)
                .map(
                        outcome ->
                                outcome.orElseThrow(
                                        reasons -> new IllegalStateException(reasons.toString())))
                .toList();
    }
}
