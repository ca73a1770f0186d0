package dev.lapwing.alerts.domain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.lapwing.care.domain.TaskState;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** The rungs and their times are the project's own defaults. */
class LadderTest {
    private static final Instant REPORT = Instant.parse("2026-11-25T09:00:00Z");
    private static final LadderPace PACE = new LadderPace(
            Duration.ofMinutes(15),
            Duration.ofMinutes(45),
            Duration.ofMinutes(120),
            Duration.ofMinutes(60),
            Duration.ofMinutes(90));

    @Test
    void aStrikeThatNobodyAcceptsClimbsRungByRungAndThenHourly() {
        List<Ladder.Step> taken = new ArrayList<>();
        List<String> told = new ArrayList<>();
        for (int minute = 0; minute <= 300; minute++) {
            Instant now = minute(minute);
            for (Ladder.Step step : Ladder.due(unaccepted(), taken, PACE, now)) {
                taken.add(new Ladder.Step(step.rung(), step.turn(), now));
                told.add(minute + " " + step.rung().word());
            }
        }
        assertThat(told)
                .containsExactly(
                        "0 tech and coordinators",
                        "15 next on duty and desk",
                        "45 every coordinator",
                        "120 escalation address",
                        "180 escalation address",
                        "240 escalation address",
                        "300 escalation address");
    }

    @Test
    void whatWasMissedIsTakenOnceEachAndRepeatsAreMerged() {
        List<Ladder.Step> due = Ladder.due(unaccepted(), List.of(), PACE, minute(600));

        assertThat(due).extracting(Ladder.Step::rung).containsExactly(Rung.values());
        List<Ladder.Step> taken = due.stream()
                .map(step -> new Ladder.Step(step.rung(), step.turn(), minute(600)))
                .toList();
        assertThat(Ladder.due(unaccepted(), taken, PACE, minute(659))).isEmpty();
        assertThat(Ladder.due(unaccepted(), taken, PACE, minute(660)))
                .containsExactly(new Ladder.Step(Rung.LAST_RESORT, 1, minute(660)));
    }

    /** Looks at any times, in any number and however late, take no step twice and none before its time. */
    @Property
    void noStepIsTakenTwiceOrEarly(@ForAll @Size(min = 1, max = 60) List<@IntRange(min = 0, max = 90) Integer> waits) {
        List<Ladder.Step> taken = new ArrayList<>();
        int minute = 0;
        for (int wait : waits) {
            minute += wait;
            for (Ladder.Step step : Ladder.due(unaccepted(), taken, PACE, minute(minute))) {
                assertThat(step.at()).isBeforeOrEqualTo(minute(minute));
                taken.add(new Ladder.Step(step.rung(), step.turn(), minute(minute)));
            }
        }
        assertThat(taken.stream().map(step -> step.rung() + " " + step.turn()).collect(Collectors.toSet()))
                .hasSameSizeAs(taken);
        // Nobody is called more than the ladder allows: three rungs, and the last at most once in each hour.
        assertThat(taken).hasSizeLessThanOrEqualTo(4 + Math.max(0, (minute - 120) / 60));
    }

    @Test
    void acceptanceEndsTheClimbUntilTheStartIsOverdue() {
        var log = List.of(
                new Climb.Moment(0, REPORT, TaskState.ASSIGNED), new Climb.Moment(1, minute(20), TaskState.ACCEPTED));

        Climb climb = Climb.of(log, PACE).orElseThrow();

        assertThat(climb).isEqualTo(new Climb(1, Climb.Reason.NOT_STARTED, minute(20), minute(110)));
        assertThat(Ladder.due(climb, List.of(), PACE, minute(109))).isEmpty();
        assertThat(Ladder.due(climb, List.of(), PACE, minute(110)))
                .extracting(Ladder.Step::rung)
                .containsExactly(Rung.TOLD);
    }

    @Test
    void someoneAtWorkEndsItForGood() {
        var log = List.of(
                new Climb.Moment(0, REPORT, TaskState.ASSIGNED),
                new Climb.Moment(1, minute(5), TaskState.ACCEPTED),
                new Climb.Moment(2, minute(9), TaskState.UNDER_WAY));

        assertThat(Climb.of(log, PACE)).isEmpty();
    }

    @Test
    void passingItFromTechToTechDoesNotStopTheClockAndTakingItBackBeginsAnew() {
        var passedOn = List.of(
                new Climb.Moment(0, REPORT, TaskState.ASSIGNED), new Climb.Moment(1, minute(14), TaskState.ASSIGNED));
        assertThat(Climb.of(passedOn, PACE).orElseThrow())
                .isEqualTo(new Climb(0, Climb.Reason.NOT_ACCEPTED, REPORT, REPORT));

        var takenBack = List.of(
                new Climb.Moment(0, REPORT, TaskState.ASSIGNED),
                new Climb.Moment(1, minute(14), TaskState.ACCEPTED),
                new Climb.Moment(2, minute(30), TaskState.ASSIGNED));
        assertThat(Climb.of(takenBack, PACE).orElseThrow())
                .isEqualTo(new Climb(2, Climb.Reason.NOT_ACCEPTED, minute(30), minute(30)));
    }

    @Test
    void nearRainHalvesTheWaits() {
        LadderPace quick = PACE.times(0.5);

        assertThat(Ladder.ahead(unaccepted(), List.of(), quick))
                .extracting(step -> Duration.between(REPORT, step.at()).toSeconds())
                .containsExactly(0L, 450L, 1350L, 3600L);
        assertThat(PACE.times(0.001).again()).isEqualTo(Duration.ofMinutes(1));
    }

    @Test
    void rungsOutOfOrderAreRefused() {
        assertThatThrownBy(() -> new LadderPace(
                        Duration.ofMinutes(50),
                        Duration.ofMinutes(45),
                        Duration.ofMinutes(120),
                        Duration.ofMinutes(60),
                        Duration.ofMinutes(90)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no earlier than the one before");
    }

    private static Climb unaccepted() {
        return new Climb(0, Climb.Reason.NOT_ACCEPTED, REPORT, REPORT);
    }

    private static Instant minute(int minute) {
        return REPORT.plus(Duration.ofMinutes(minute));
    }
}
