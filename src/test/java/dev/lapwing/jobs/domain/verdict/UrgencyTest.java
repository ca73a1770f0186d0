package dev.lapwing.jobs.domain.verdict;

import static dev.lapwing.jobs.domain.verdict.Findings.NOON;
import static dev.lapwing.jobs.domain.verdict.Findings.any;
import static dev.lapwing.jobs.domain.verdict.Findings.crack;
import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.jobs.domain.finding.Depth;
import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.finding.FindingKind;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A void is urgent when rain is near or the unit goes out. Common practice, no source; hours are project defaults. */
class UrgencyTest {
    private static final List<Finding> A_VOID = List.of(any(FindingKind.VOID));

    @Test
    void aVoidIsRoutineWhileNothingPresses() {
        assertThat(touchUp(A_VOID, null, null).urgency()).isEqualTo(Urgency.ROUTINE);
        assertThat(touchUp(A_VOID, null, null).due()).isEqualTo(NOON.plus(Duration.ofDays(14)));
    }

    @Test
    void aVoidIsUrgentAndDueBeforeNearRain() {
        assertThat(touchUp(A_VOID, 6.0, null).urgency()).isEqualTo(Urgency.URGENT);
        assertThat(touchUp(A_VOID, 6.0, null).due()).isEqualTo(NOON.plus(Duration.ofHours(6)));
    }

    @Test
    void rainBeyondTwoDaysDoesNotPress() {
        assertThat(touchUp(A_VOID, 48.0, null).urgency()).isEqualTo(Urgency.URGENT);
        assertThat(touchUp(A_VOID, 48.1, null).urgency()).isEqualTo(Urgency.ROUTINE);
    }

    @Test
    void aVoidIsUrgentAndDueBeforeTheUnitGoesOut() {
        Instant tomorrow = NOON.plus(Duration.ofHours(20));

        assertThat(touchUp(A_VOID, 30.0, tomorrow).urgency()).isEqualTo(Urgency.URGENT);
        assertThat(touchUp(A_VOID, 30.0, tomorrow).due()).isEqualTo(tomorrow);
    }

    @Test
    void urgentWorkIsDueWithinThreeDaysEvenWhenTheDepartureIsLater() {
        Instant nextWeek = NOON.plus(Duration.ofDays(7));

        assertThat(touchUp(A_VOID, null, nextWeek).due()).isEqualTo(NOON.plus(Duration.ofHours(72)));
    }

    @Test
    void aDepartureInThePastMakesItDueNow() {
        assertThat(touchUp(A_VOID, null, NOON.minusSeconds(60)).due()).isEqualTo(NOON);
    }

    @Test
    void aDeepCrackStaysRoutineBeforeRain() {
        assertThat(touchUp(List.of(crack(Depth.DEEP)), 1.0, null).urgency()).isEqualTo(Urgency.ROUTINE);
    }

    @Test
    void coveredFindingsPassTheirUrgencyToTheWorkThatCoversThem() {
        var findings = List.of(any(FindingKind.VOID), crack(Depth.DEEP));

        assertThat(touchUp(findings, 1.0, null).urgency()).isEqualTo(Urgency.URGENT);
        assertThat(touchUp(findings, 1.0, null).rules()).containsExactlyInAnyOrder("void", "deep-crack");
    }

    private static FollowUp touchUp(List<Finding> findings, Double rainHours, Instant goesOutAt) {
        var situation = new Situation(NOON, rainHours, goesOutAt, true);
        return RuleTable.ofTheTrade()
                .judge(findings, situation)
                .followUp(Work.TOUCH_UP)
                .orElseThrow();
    }
}
