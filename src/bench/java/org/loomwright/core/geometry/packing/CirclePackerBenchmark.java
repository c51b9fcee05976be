package org.loomwright.core.geometry.packing;

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

import java.util.Arrays;
import java.util.concurrent.TimeUnit;

/** How long a packing takes on one core once warm; one shot is one packing of another mix. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 3, time = 4)
@Fork(1)
public class CirclePackerBenchmark {

    private static final int MIXES = 20;

    @Param({"30", "120", "1000"})
    private int wires;

    @Param({"mixed", "equal"})
    private String kind = "mixed";

    private double[][] mixes = {};
    private int next;

    @Setup
    public void chooseMixes() {
        mixes = new double[MIXES][];
        for (int k = 0; k < MIXES; k++) {
            mixes[k] = "equal".equals(kind) ? equal() : LoomMixes.radiiMm(wires, 500L + k);
        }
    }

    private double[] equal() {
        double[] radii = new double[wires];
        Arrays.fill(radii, 1);
        return radii;
    }

    @Benchmark
    public PackedCircles normal() {
        next = (next + 1) % MIXES;
        return CirclePacker.pack(mixes[next], Effort.NORMAL);
    }
}
