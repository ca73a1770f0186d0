package dev.lapwing.reading;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;

/**
 * Prints processor time, not elapsed time, of reading and of tokenising: what to use on a machine that others load too.
 * Runs from the project folder.
 */
public final class ReadingCpuTime {
    private static final int CHARACTERS = 16_000_000;
    private static final int LEAST_RUNS = 60;

    private ReadingCpuTime() {}

    public static void main(String[] arguments) throws IOException {
        print();
    }

    /** Prints a line for each length; returns the greatest ratio of reading to tokenising. */
    static double print() throws IOException {
        double greatest = 0;
        System.out.println("characters   read us   tokenise us   ratio");
        for (int length : new int[] {80, 80, 100, 1000, 2000, 10_000, 100_000}) {
            ReadingBenchmark benchmark = new ReadingBenchmark();
            benchmark.length = length;
            benchmark.prepare();
            int runs = Math.max(LEAST_RUNS, CHARACTERS / length);
            measure(benchmark, runs);
            double[] times = measure(benchmark, runs);
            greatest = Math.max(greatest, times[0] / times[1]);
            System.out.printf(
                    Locale.ROOT, "%10d %9.1f %13.1f %7.1f%n", length, times[0], times[1], times[0] / times[1]);
        }
        return greatest;
    }

    private static double[] measure(ReadingBenchmark benchmark, int runs) throws IOException {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long start = threads.getCurrentThreadCpuTime();
        long pieces = 0;
        for (int i = 0; i < runs; i++) {
            pieces += benchmark.read().evidence().size();
        }
        long middle = threads.getCurrentThreadCpuTime();
        for (int i = 0; i < runs; i++) {
            pieces += benchmark.tokenise();
        }
        long end = threads.getCurrentThreadCpuTime();
        if (pieces == 0) {
            throw new IllegalStateException("nothing was read");
        }
        return new double[] {(middle - start) / 1e3 / runs, (end - middle) / 1e3 / runs};
    }
}
