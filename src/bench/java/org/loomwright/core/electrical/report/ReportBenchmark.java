package org.loomwright.core.electrical.report;

import org.loomwright.core.colour.ColourReport;
import org.loomwright.core.electrical.report.ElectricalReports.Changes;
import org.loomwright.core.electrical.simulation.Readings;
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

/** Every electrical check and the colours of a vehicle-like loom, and of the demonstration with its additions, beside the simulation alone. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
@State(Scope.Benchmark)
public class ReportBenchmark {

    @Param({"100", "200", "400", "800", "demo"})
    private String loom = "100";

    private ReportCase measured = ReportCase.of("100");

    @Setup
    public void draw() {
        measured = ReportCase.of(loom);
    }

    @Benchmark
    public ElectricalReport everyCheck() {
        return measured.report(Changes.LEFT_OUT);
    }

    @Benchmark
    public ColourReport colours() {
        return measured.colours();
    }

    @Benchmark
    public List<Readings> simulationAlone() {
        return measured.simulated();
    }
}
