package dev.lapwing.jobs.domain.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TimeEstimateTest {
    private static final Duration DEFAULT = Duration.ofMinutes(90);

    @Test
    void theDefaultStandsUntilThereAreTenJobs() {
        var estimate = TimeEstimate.of(jobs(9), DEFAULT);

        assertThat(estimate).isEqualTo(new TimeEstimate(DEFAULT, DEFAULT, DEFAULT, 9, false));
        assertThat(estimate.inWords()).isEqualTo("about 90 min (default until there are 10 jobs, 9 so far)");
    }

    /** Type 7 of Hyndman and Fan 1996 on 1 to 10: 3.25, 5.5, 7.75; the definition is from memory, worked by hand. */
    @Test
    void tenJobsGiveTheirMedianAndQuartiles() {
        var estimate = TimeEstimate.of(jobs(10), DEFAULT);

        assertThat(estimate.lowerQuartile()).isEqualTo(Duration.ofMinutes(32).plusSeconds(30));
        assertThat(estimate.median()).isEqualTo(Duration.ofMinutes(55));
        assertThat(estimate.upperQuartile()).isEqualTo(Duration.ofMinutes(77).plusSeconds(30));
        assertThat(estimate.inWords()).isEqualTo("about 55 min; half of 10 jobs took 33 to 78 min");
    }

    @Test
    void oneVeryLongJobDoesNotMoveTheMiddle() {
        var withOutlier = new ArrayList<>(jobs(10));
        withOutlier.set(0, Duration.ofDays(3));

        assertThat(TimeEstimate.of(withOutlier, DEFAULT).median()).isEqualTo(Duration.ofMinutes(55));
    }

    @Test
    void refusesNegativeTimes() {
        assertThatThrownBy(() -> TimeEstimate.of(List.of(Duration.ofMinutes(-1)), DEFAULT))
                .hasMessageContaining("no time");
    }

    /** Jobs of 10, 20, 30 ... minutes, longest first. */
    private static List<Duration> jobs(int count) {
        return IntStream.iterate(count, i -> i >= 1, i -> i - 1)
                .mapToObj(i -> Duration.ofMinutes(10L * i))
                .toList();
    }
}
