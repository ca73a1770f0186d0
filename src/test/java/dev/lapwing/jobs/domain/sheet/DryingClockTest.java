package dev.lapwing.jobs.domain.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** Wash, let dry, then inspect. Common practice, no source; four hours are the project's default. */
class DryingClockTest {
    private static final Instant WASHED = Instant.parse("2026-05-04T08:00:00Z");
    private static final Instant DRY = WASHED.plus(Duration.ofHours(4));
    private final DryingClock clock = new DryingClock(Duration.ofHours(4));

    @Test
    void theInspectionBeginsWhenTheRoofIsDry() {
        assertThat(clock.start(WASHED, false, DRY, null)).isEqualTo(new InspectionStart.Ready(DRY));
    }

    @Test
    void oneSecondBeforeIsTooEarly() {
        assertThat(clock.start(WASHED, false, DRY.minusSeconds(1), " "))
                .isEqualTo(new InspectionStart.TooEarly(DRY, Duration.ofSeconds(1)));
    }

    @Test
    void anEarlyStartNeedsAReasonAndKeepsIt() {
        assertThat(clock.start(WASHED, false, DRY.minusSeconds(3_600), " rain in an hour "))
                .isEqualTo(new InspectionStart.Early("rain in an hour", Duration.ofHours(1)));
    }

    @Test
    void aRoofTooDirtyToSeeIsWashedFirstWhateverTheReason() {
        assertThat(clock.start(WASHED, true, DRY, "in a hurry")).isInstanceOf(InspectionStart.WashFirst.class);
    }

    @Test
    void withoutAWashThereIsNoInspection() {
        assertThat(clock.start(null, false, DRY, "in a hurry")).isInstanceOf(InspectionStart.WashFirst.class);
    }

    @Test
    void aWashInTheFutureDoesNotCount() {
        assertThat(clock.start(DRY.plusSeconds(1), false, DRY, "in a hurry"))
                .isInstanceOf(InspectionStart.WashFirst.class);
    }

    @Test
    void refusesANegativeDryingTime() {
        assertThatThrownBy(() -> new DryingClock(Duration.ofHours(-1))).hasMessageContaining("not negative");
    }
}
