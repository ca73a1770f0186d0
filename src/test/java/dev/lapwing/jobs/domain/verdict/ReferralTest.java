package dev.lapwing.jobs.domain.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.jobs.domain.finding.Depth;
import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.finding.FindingKind;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** In doubt a roof is handed over, whatever was found until then. Common practice, no source. */
class ReferralTest {
    private static final Instant NOW = Instant.parse("2026-05-04T12:00:00Z");
    private static final Situation SITUATION = new Situation(NOW, null, null, true);

    @Test
    void aRoofWithoutAFindingIsReferredAtOnceAndHeld() {
        Outcome outcome = RuleTable.ofTheTrade().refer("it creaks", List.of(), SITUATION);

        assertThat(outcome.verdict()).isEqualTo(Verdict.STOP_AND_REFER);
        assertThat(outcome.hold()).isTrue();
        assertThat(outcome.holdingWork()).isEqualTo(Set.of(Work.WORKSHOP_REFERRAL));
        assertThat(outcome.followUp(Work.WORKSHOP_REFERRAL).orElseThrow().due()).isEqualTo(NOW);
        assertThat(outcome.reasons()).extracting(Reason::inWords).containsExactly("it creaks (rule stop-and-refer)");
    }

    @Test
    void whatWasFoundIsKeptAndWaitsForTheWorkshop() {
        var crack = new Finding("rear-left", FindingKind.CRACK, Depth.DEEP, null, null, "");

        Outcome outcome = RuleTable.ofTheTrade().refer("it creaks", List.of(crack), SITUATION);

        assertThat(outcome.verdict()).isEqualTo(Verdict.STOP_AND_REFER);
        assertThat(outcome.followUp(Work.TOUCH_UP).orElseThrow().waitsFor()).containsExactly(Work.WORKSHOP_REFERRAL);
    }
}
