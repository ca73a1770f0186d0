package dev.lapwing.jobs.domain.verdict;

import static dev.lapwing.jobs.domain.verdict.Findings.NOTHING_PRESSES;
import static dev.lapwing.jobs.domain.verdict.Findings.adhesion;
import static dev.lapwing.jobs.domain.verdict.Findings.any;
import static dev.lapwing.jobs.domain.verdict.Findings.attachment;
import static dev.lapwing.jobs.domain.verdict.Findings.crack;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import dev.lapwing.jobs.domain.finding.Depth;
import dev.lapwing.jobs.domain.finding.Extent;
import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.finding.FindingKind;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The facts of the trade. Common practice, no source. */
class TradeRulesTest {
    private static final boolean HOLD = true;
    private static final boolean NO_HOLD = false;

    static Stream<Arguments> factsOfTheTrade() {
        return Stream.of(
                arguments(List.of(), Verdict.FIT, NO_HOLD, List.of()),
                arguments(List.of(crack(Depth.SURFACE)), Verdict.FIT, NO_HOLD, List.of()),
                arguments(
                        List.of(crack(Depth.SURFACE), crack(Depth.SURFACE), crack(Depth.SURFACE)),
                        Verdict.FIT,
                        NO_HOLD,
                        List.of()),
                arguments(List.of(crack(Depth.DEEP)), Verdict.TOUCH_UP, NO_HOLD, List.of(Work.TOUCH_UP)),
                arguments(List.of(any(FindingKind.VOID)), Verdict.TOUCH_UP, NO_HOLD, List.of(Work.TOUCH_UP)),
                arguments(List.of(adhesion(Extent.HOLDS)), Verdict.FIT, NO_HOLD, List.of()),
                arguments(List.of(adhesion(Extent.LOOSE_HERE)), Verdict.TOUCH_UP, NO_HOLD, List.of(Work.TOUCH_UP)),
                arguments(List.of(adhesion(Extent.LOOSE_IN_SEVERAL)), Verdict.REWORK, NO_HOLD, List.of(Work.REWORK)),
                arguments(List.of(any(FindingKind.CHALKING)), Verdict.FIT, NO_HOLD, List.of(Work.SURFACE_TREATMENT)),
                arguments(List.of(any(FindingKind.TEAR)), Verdict.REWORK, HOLD, List.of(Work.MEMBRANE_REPAIR)),
                arguments(List.of(any(FindingKind.PUNCTURE)), Verdict.REWORK, HOLD, List.of(Work.MEMBRANE_REPAIR)),
                arguments(
                        List.of(any(FindingKind.SOFT_SPOT)),
                        Verdict.STOP_AND_REFER,
                        HOLD,
                        List.of(Work.WORKSHOP_REFERRAL)));
    }

    @ParameterizedTest
    @MethodSource("factsOfTheTrade")
    void leadFromFindingsToVerdict(List<Finding> findings, Verdict verdict, boolean hold, List<Work> works) {
        var outcome = RuleTable.ofTheTrade().judge(findings, NOTHING_PRESSES);

        assertThat(outcome.verdict()).isEqualTo(verdict);
        assertThat(outcome.hold()).isEqualTo(hold);
        assertThat(outcome.followUps()).extracting(FollowUp::work).containsExactlyElementsOf(works);
    }

    /** Project defaults beyond the facts of the trade. */
    static Stream<Arguments> projectDefaults() {
        return Stream.of(
                arguments(List.of(any(FindingKind.DIRT)), Verdict.FIT, NO_HOLD, List.of()),
                arguments(List.of(attachment(Extent.HOLDS)), Verdict.FIT, NO_HOLD, List.of()),
                arguments(List.of(attachment(Extent.ONE)), Verdict.TOUCH_UP, HOLD, List.of(Work.ATTACHMENT_REPAIR)),
                arguments(
                        List.of(adhesion(Extent.LOOSE_HERE, "front-left"), adhesion(Extent.LOOSE_HERE, "rear-left")),
                        Verdict.REWORK,
                        NO_HOLD,
                        List.of(Work.REWORK)),
                arguments(
                        List.of(
                                adhesion(Extent.LOOSE_IN_SEVERAL, "front-left"),
                                adhesion(Extent.LOOSE_IN_SEVERAL, "middle-left"),
                                adhesion(Extent.LOOSE_IN_SEVERAL, "rear-left")),
                        Verdict.REPLACE,
                        NO_HOLD,
                        List.of(Work.SEALANT_REPLACEMENT)));
    }

    @ParameterizedTest
    @MethodSource("projectDefaults")
    void addProjectDefaults(List<Finding> findings, Verdict verdict, boolean hold, List<Work> works) {
        leadFromFindingsToVerdict(findings, verdict, hold, works);
    }

    @Test
    void theWorstFindingRulesAndNothingElseIsLost() {
        var findings = List.of(crack(Depth.DEEP), any(FindingKind.SOFT_SPOT), any(FindingKind.TEAR));

        var outcome = RuleTable.ofTheTrade().judge(findings, NOTHING_PRESSES);

        assertThat(outcome.verdict()).isEqualTo(Verdict.STOP_AND_REFER);
        assertThat(outcome.reasons()).extracting(Reason::rule).containsExactly("soft-spot", "tear", "deep-crack");
        assertThat(outcome.followUps())
                .extracting(FollowUp::work)
                .containsExactly(Work.MEMBRANE_REPAIR, Work.WORKSHOP_REFERRAL, Work.TOUCH_UP);
        assertThat(outcome.followUp(Work.TOUCH_UP).orElseThrow().waitsFor()).containsExactly(Work.WORKSHOP_REFERRAL);
    }

    @Test
    void everyFindingIsNamedByTheReasons() {
        var findings = List.of(crack(Depth.DEEP), any(FindingKind.DIRT), adhesion(Extent.HOLDS));

        var outcome = RuleTable.ofTheTrade().judge(findings, NOTHING_PRESSES);

        assertThat(outcome.reasons().stream().flatMap(reason -> reason.findings().stream()))
                .containsExactlyInAnyOrderElementsOf(findings);
        assertThat(outcome.reasons().get(0).inWords())
                .isEqualTo("crack, deep, in rear-left, 12 cm: a deep crack is touched up (rule deep-crack)");
    }

    @Test
    void chalkingMakesSealantWorkWaitForTreatmentAndTest() {
        var findings = List.of(any(FindingKind.CHALKING), crack(Depth.DEEP));

        var outcome = RuleTable.ofTheTrade().judge(findings, NOTHING_PRESSES);

        assertThat(outcome.sealantWorkWaits()).isTrue();
        assertThat(outcome.followUp(Work.TOUCH_UP).orElseThrow().waitsFor()).containsExactly(Work.SURFACE_TREATMENT);
    }

    @Test
    void anUnconfirmedMembraneSystemIsConfirmedBeforeSealantWork() {
        var unconfirmed = new Situation(Findings.NOON, null, null, false);

        var outcome = RuleTable.ofTheTrade().judge(List.of(any(FindingKind.TEAR)), unconfirmed);

        assertThat(outcome.followUps())
                .extracting(FollowUp::work)
                .containsExactly(Work.CONFIRM_MEMBRANE, Work.MEMBRANE_REPAIR);
        assertThat(outcome.followUp(Work.MEMBRANE_REPAIR).orElseThrow().waitsFor())
                .containsExactly(Work.CONFIRM_MEMBRANE);
        assertThat(outcome.followUp(Work.CONFIRM_MEMBRANE).orElseThrow().urgency())
                .isEqualTo(Urgency.AT_ONCE);
    }

    @Test
    void aFitRoofNeedsNoConfirmedMembraneSystem() {
        var unconfirmed = new Situation(Findings.NOON, null, null, false);

        var outcome = RuleTable.ofTheTrade().judge(List.of(crack(Depth.SURFACE)), unconfirmed);

        assertThat(outcome.followUps()).isEmpty();
        assertThat(outcome.sealantWorkWaits()).isFalse();
    }
}
