package dev.lapwing.alerts.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RetryRuleTest {
    private static final double NO_JITTER = 0.5;
    private final RetryRule rule =
            new RetryRule(Duration.ofSeconds(5), Duration.ofMinutes(30), Duration.ofMinutes(1), 20);

    @ParameterizedTest
    @CsvSource({"1,5", "2,10", "3,20", "4,40", "9,1280", "10,1800", "11,1800", "1000000,1800"})
    void pauseDoublesUpToTheLongest(int attempts, long seconds) {
        assertThat(rule.pause(Failure.PASSING, attempts, NO_JITTER)).hasSeconds(seconds);
    }

    @ParameterizedTest
    @CsvSource({"1,5", "4,40", "5,60", "500,60"})
    void pauseStaysShortWhileTheServerIsAway(int attempts, long seconds) {
        assertThat(rule.pause(Failure.UNREACHABLE, attempts, NO_JITTER)).hasSeconds(seconds);
    }

    @Test
    void jitterSpreadsThePauseByAQuarterEitherWay() {
        assertThat(rule.pause(Failure.PASSING, 4, 0)).isEqualTo(Duration.ofSeconds(30));
        assertThat(rule.pause(Failure.PASSING, 4, 1)).isEqualTo(Duration.ofSeconds(50));
    }

    @Test
    void aPermanentRefusalIsGivenUpAtOnce() {
        assertThat(rule.givesUp(Failure.PERMANENT, 1)).isTrue();
    }

    @Test
    void passingRefusalsAreGivenUpWhenThereWereTooMany() {
        assertThat(rule.givesUp(Failure.PASSING, 19)).isFalse();
        assertThat(rule.givesUp(Failure.PASSING, 20)).isTrue();
    }

    @Test
    void anUnreachableServerNeverMakesAMailGivenUp() {
        assertThat(rule.givesUp(Failure.UNREACHABLE, 0)).isFalse();
        assertThat(rule.givesUp(Failure.UNREACHABLE, 19)).isFalse();
    }
}
