package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Prints the speed of reading, by JMH and in processor time:
 * {@code mvn -o test -Dtest=ReadingSpeedTest -Dgroups=bench -Dexcluded.tags=evaluate}.
 */
@Tag("bench")
class ReadingSpeedTest {
    @Test
    void printsElapsedTimeAndAllocation() throws RunnerException {
        var results = new Runner(new OptionsBuilder()
                        .include(ReadingBenchmark.class.getSimpleName())
                        .addProfiler("gc")
                        .build())
                .run();
        assertThat(results).extracting(RunResult::getPrimaryResult).isNotEmpty();
    }

    @Test
    void printsProcessorTime() throws IOException {
        assertThat(ReadingCpuTime.print()).isPositive();
    }
}
