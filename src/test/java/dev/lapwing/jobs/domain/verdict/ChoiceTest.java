package dev.lapwing.jobs.domain.verdict;

import static dev.lapwing.jobs.domain.verdict.Findings.NOTHING_PRESSES;
import static dev.lapwing.jobs.domain.verdict.Findings.adhesion;
import static dev.lapwing.jobs.domain.verdict.Findings.any;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.lapwing.jobs.domain.finding.Extent;
import dev.lapwing.jobs.domain.finding.FindingKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sealant loose in several places: rework or replacement, the coordinator decides. Common practice, no source. */
class ChoiceTest {
    private final Outcome outcome = RuleTable.ofTheTrade()
            .judge(List.of(adhesion(Extent.LOOSE_IN_SEVERAL), any(FindingKind.VOID)), NOTHING_PRESSES);

    @Test
    void offersBothWithReasons() {
        var options = outcome.toDecide().orElseThrow().options();

        assertThat(options).extracting(Choice.Option::work).containsExactly(Work.REWORK, Work.SEALANT_REPLACEMENT);
        assertThat(options.get(1).speaksFor()).contains("the old sealant also fails otherwise: void, in front-left");
    }

    @Test
    void replacementRaisesTheVerdictAndTakesTheWorksPlace() {
        var decided = outcome.decided(Work.SEALANT_REPLACEMENT);

        assertThat(decided.verdict()).isEqualTo(Verdict.REPLACE);
        assertThat(decided.followUps()).extracting(FollowUp::work).containsExactly(Work.SEALANT_REPLACEMENT);
        assertThat(decided.toDecide()).isEmpty();
    }

    @Test
    void reworkKeepsTheVerdict() {
        assertThat(outcome.decided(Work.REWORK).verdict()).isEqualTo(Verdict.REWORK);
    }

    @Test
    void nothingElseCanBeChosen() {
        assertThatThrownBy(() -> outcome.decided(Work.TOUCH_UP)).hasMessageContaining("touch-up");
    }
}
