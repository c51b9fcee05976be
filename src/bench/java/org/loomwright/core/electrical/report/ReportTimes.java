package org.loomwright.core.electrical.report;

import org.loomwright.core.electrical.report.ElectricalReports.Changes;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * The work of {@link ReportBenchmark} by the thread's own processor time, in which waiting for a busy machine does not count. Prints mean,
 * median and best of each in milliseconds, and the median of wall-clock time. Arguments: seconds to warm up, seconds to measure, looms.
 */
public final class ReportTimes {

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final double NANOS_PER_MILLI = 1e6;

    private ReportTimes() {}

    public static void main(String[] arguments) {
        long warm = Long.parseLong(arguments[0]);
        long measured = Long.parseLong(arguments[1]);
        System.out.printf(
                "%-28s %6s %8s %8s %8s %8s%n", "", "runs", "mean", "median", "best", "wall");
        for (String loom : Arrays.asList(arguments).subList(2, arguments.length)) {
            works(ReportCase.of(loom), loom.equals("demo"))
                    .forEach((name, work) -> time(loom + " " + name, work, warm, measured));
        }
    }

    private static Map<String, Supplier<?>> works(ReportCase one, boolean withChanges) {
        Map<String, Supplier<?>> works = new TreeMap<>();
        works.put("every check", () -> one.report(Changes.LEFT_OUT));
        works.put("colours", one::colours);
        works.put("simulation alone", one::simulated);
        if (withChanges) {
            works.put("with changes sought", () -> one.report(Changes.SOUGHT));
        }
        return works;
    }

    private static void time(String name, Supplier<?> work, long warm, long measured) {
        run(work, warm);
        long[][] times = run(work, measured);
        System.out.printf(
                Locale.ROOT,
                "%-28s %6d %8.2f %8.2f %8.2f %8.2f%n",
                name,
                times[0].length,
                Arrays.stream(times[0]).average().orElseThrow() / NANOS_PER_MILLI,
                median(times[0]),
                Arrays.stream(times[0]).min().orElseThrow() / NANOS_PER_MILLI,
                median(times[1]));
    }

    private static double median(long[] times) {
        return Arrays.stream(times).sorted().toArray()[times.length / 2] / NANOS_PER_MILLI;
    }

    /** Processor time and wall-clock time of each run. */
    private static long[][] run(Supplier<?> work, long seconds) {
        long[][] times = new long[2][1_000_000];
        int runs = 0;
        for (long end = System.nanoTime() + seconds * 1_000_000_000;
                System.nanoTime() < end;
                runs++) {
            long wall = System.nanoTime();
            long processor = THREADS.getCurrentThreadCpuTime();
            if (work.get() == null) {
                throw new IllegalStateException("nothing came out");
            }
            times[0][runs] = THREADS.getCurrentThreadCpuTime() - processor;
            times[1][runs] = System.nanoTime() - wall;
        }
        return new long[][] {Arrays.copyOf(times[0], runs), Arrays.copyOf(times[1], runs)};
    }
}
