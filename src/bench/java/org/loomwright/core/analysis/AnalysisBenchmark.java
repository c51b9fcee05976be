package org.loomwright.core.analysis;

import org.loomwright.core.bundle.BundlePacker;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.routing.Allowances;
import org.loomwright.core.routing.CutLength;
import org.loomwright.core.routing.CutLengths;
import org.loomwright.core.routing.Routes;
import org.loomwright.exchange.LoomReader;
import org.loomwright.exchange.StrictJson;
import org.loomwright.testing.RandomLooms;
import org.loomwright.testing.TestCatalogue;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;

/**
 * Routing of a loom far larger than any vehicle's, beside the plain way of climbing to the datum from both ends of each wire; and
 * the whole analysis of the demonstration's main loom, with everything still to be packed and with everything packed before.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
@State(Scope.Benchmark)
public class AnalysisBenchmark {

    private final Loom large = RandomLooms.of(1, new RandomLooms.Size(2_000, 2_000, 10_000, 0));
    private final Loom demo = demo();
    private final BundlePacker warm = new BundlePacker(10_000);

    private static Loom demo() {
        try (InputStream stream =
                AnalysisBenchmark.class.getResourceAsStream(
                        "/demo-data/averley-saloon-main.json")) {
            return StrictJson.parse(Objects.requireNonNull(stream).readAllBytes())
                    .then(LoomReader::read)
                    .then(document -> LoomChecker.check(document, TestCatalogue.get()))
                    .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Benchmark
    public List<CutLength> routeTenThousandWires() {
        Routes routes = new Routes(large);
        return new CutLengths(large, routes, TestCatalogue.get(), Allowances.USUAL, Map.of()).all();
    }

    @Benchmark
    public List<Length> climbForTenThousandWires() {
        return large.wires().values().stream().map(this::climbed).toList();
    }

    private Length climbed(Wire wire) {
        Map<String, Length> way = new HashMap<>();
        climb(large.getPoint(wire.a()).node()).forEach(s -> way.put(s.id(), s.length()));
        for (Segment segment : climb(large.getPoint(wire.b()).node())) {
            if (way.remove(segment.id()) == null) {
                way.put(segment.id(), segment.length());
            }
        }
        return Length.sum(way.values());
    }

    private List<Segment> climb(String from) {
        List<Segment> segments = new ArrayList<>();
        String node = from;
        while (large.findArriving(node).isPresent()) {
            Segment segment = large.findArriving(node).orElseThrow();
            segments.add(segment);
            node = segment.from();
        }
        return segments;
    }

    @Benchmark
    public LoomAnalysis analyseDemoWithEverythingToPack() {
        return analyse(new BundlePacker(10_000));
    }

    @Benchmark
    public LoomAnalysis analyseDemoWithEverythingPacked() {
        return analyse(warm);
    }

    private LoomAnalysis analyse(BundlePacker packer) {
        return LoomAnalysis.of(demo, AnalysisSettings.USUAL, TestCatalogue.get(), packer);
    }
}
