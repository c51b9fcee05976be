package org.loomwright.core.geometry.packing;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Prints how tight the packer is, from the reference files of the tests: against best known containers, own long runs, a
 * sorted front chain and the rule of thumb 1.2 sqrt(sum d^2). Arguments: the folder of the reference files, the effort.
 */
public final class PackingComparison {

    private final Path folder;
    private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);

    private PackingComparison(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] arguments) throws IOException {
        PackingComparison comparison = new PackingComparison(Path.of(arguments[0]));
        Effort effort = Effort.valueOf(arguments[1]);
        comparison.compareSeries(effort);
        comparison.compareMixes(effort);
        comparison.compareEqual(effort);
    }

    private List<String[]> rows(String name) throws IOException {
        return Files.readAllLines(folder.resolve(name)).stream()
                .filter(line -> !line.startsWith("#"))
                .skip(1)
                .map(line -> line.split(",", -1))
                .toList();
    }

    private void compareEqual(Effort effort) throws IOException {
        int[][] bands = {{1, 19}, {20, 61}, {62, 120}};
        for (int[] band : bands) {
            List<Double> gaps = new ArrayList<>();
            for (String[] row : rows("equal-circles.csv")) {
                int count = Integer.parseInt(row[0]);
                if (count >= band[0] && count <= band[1]) {
                    gaps.add(ratio(count, i -> 1, Double.parseDouble(row[1]), effort) - 1);
                }
            }
            report(effort + " equal " + band[0] + ".." + band[1], gaps);
        }
    }

    private void compareSeries(Effort effort) throws IOException {
        for (String series : List.of("ccir", "ccis", "ccib", "ccic")) {
            List<Double> gaps = new ArrayList<>();
            for (String[] row : rows("power-series.csv")) {
                if (row[0].equals(series)) {
                    double exponent = Double.parseDouble(row[1]) / Double.parseDouble(row[2]);
                    int count = Integer.parseInt(row[3]);
                    double best = Double.parseDouble(row[4]);
                    gaps.add(ratio(count, i -> Math.pow(i, exponent), best, effort) - 1);
                }
            }
            report(effort + " " + series, gaps);
        }
        List<Double> gaps = new ArrayList<>();
        for (String[] row : rows("radii-one-to-n.csv")) {
            gaps.add(
                    ratio(Integer.parseInt(row[0]), i -> i, Double.parseDouble(row[1]), effort)
                            - 1);
        }
        report(effort + " r = i", gaps);
    }

    private void compareMixes(Effort effort) throws IOException {
        List<Double> gaps = new ArrayList<>();
        List<Double> toFrontChain = new ArrayList<>();
        List<Double> toRule = new ArrayList<>();
        for (String[] row : rows("loom-mixes.csv")) {
            double[] radii = radiiOf(row[2]);
            double radius = CirclePacker.pack(radii, effort).radiusMm();
            gaps.add(radius / Double.parseDouble(row[3]) - 1);
            toFrontChain.add(radius / Double.parseDouble(row[4]));
            if (radii.length >= 12) {
                toRule.add(radius / (1.2 * Math.sqrt(Arrays.stream(radii).map(r -> r * r).sum())));
            }
        }
        report(effort + " loom mixes, gap to long runs", gaps);
        report(effort + " loom mixes, ratio to front chain", toFrontChain);
        report(effort + " loom mixes from 12 wires, ratio to 1.2 rule", toRule);
    }

    private static double[] radiiOf(String grouped) {
        return Arrays.stream(grouped.split(" "))
                .map(group -> group.split("x"))
                .flatMapToDouble(
                        group ->
                                IntStream.range(0, Integer.parseInt(group[0]))
                                        .mapToDouble(i -> Double.parseDouble(group[1]) / 2))
                .toArray();
    }

    private static double ratio(
            int count, java.util.function.IntToDoubleFunction rule, double best, Effort effort) {
        double[] radii = IntStream.rangeClosed(1, count).mapToDouble(rule).toArray();
        return CirclePacker.pack(radii, effort).radiusMm() / best;
    }

    private void report(String what, List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        double median = sorted.get(sorted.size() / 2);
        String text =
                String.format(
                        Locale.ROOT,
                        "%-55s cases %3d  min %+.3e  median %+.3e  max %+.3e",
                        what,
                        sorted.size(),
                        sorted.get(0),
                        median,
                        sorted.get(sorted.size() - 1));
        out.println(text);
    }
}
