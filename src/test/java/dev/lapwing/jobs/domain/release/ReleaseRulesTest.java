package dev.lapwing.jobs.domain.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.finding.FindingKind;
import dev.lapwing.jobs.domain.verdict.Outcome;
import dev.lapwing.jobs.domain.verdict.RuleTable;
import dev.lapwing.jobs.domain.verdict.Situation;
import dev.lapwing.jobs.domain.verdict.Work;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The two grounds follow 49 CFR 396.11(a)(3), shared/checks/records.csv: repaired, or repair unnecessary. */
class ReleaseRulesTest {
    private static final Instant HELD = Instant.parse("2026-05-04T08:00:00Z");
    private static final Instant INSPECTED = HELD.plusSeconds(3_600);
    private static final Instant REPAIRED = HELD.plusSeconds(7_200);
    private static final Instant NOW = HELD.plusSeconds(10_800);
    private static final Hold STRIKE = new Hold(Hold.Cause.STRIKE, "s1", HELD, true);

    @Test
    void aFitRoofIsReleasedByTheTechWhoInspectedIt() {
        assertThat(decide(STRIKE, "tech1", "tech", List.of(inspection(INSPECTED, fit())), List.of()))
                .isEqualTo(new Release.Granted(Release.Ground.REPAIR_UNNECESSARY, "inspected by tech1, verdict fit"));
    }

    @Test
    void anUncoveredCauseKeepsTheHold() {
        assertThat(reasons(decide(STRIKE, "tech1", "tech", List.of(), List.of())))
                .singleElement()
                .asString()
                .contains("strike s1")
                .contains("not covered");
    }

    @Test
    void anInspectionFromBeforeTheHoldDoesNotCoverIt() {
        var before = inspection(HELD.minusSeconds(1), fit());

        assertThat(decide(STRIKE, "tech1", "tech", List.of(before), List.of())).isInstanceOf(Release.Refused.class);
    }

    @Test
    void anInspectionOfAnotherCauseDoesNotCoverIt() {
        var other = new SignedInspection(Set.of("s2"), "tech1", INSPECTED, fit());

        assertThat(decide(STRIKE, "tech1", "tech", List.of(other), List.of())).isInstanceOf(Release.Refused.class);
    }

    @Test
    void aTearKeepsTheHoldUntilItIsRepaired() {
        assertThat(reasons(decide(STRIKE, "coordinator", "coordinator", List.of(torn()), List.of())))
                .containsExactly("the verdict is rework: membrane repair is not yet done and signed");
    }

    @Test
    void aRepairIsReleasedByASecondPerson() {
        assertThat(decide(STRIKE, "coordinator", "coordinator", List.of(torn()), List.of(repair("tech1"))))
                .isEqualTo(new Release.Granted(
                        Release.Ground.REPAIRED, "inspected by tech1, verdict rework; membrane repair by tech1"));
    }

    @Test
    void whoRepairedDoesNotRelease() {
        assertThat(reasons(decide(STRIKE, "tech1", "tech", List.of(torn()), List.of(repair("tech1")))))
                .singleElement()
                .asString()
                .contains("second person");
    }

    @Test
    void inspectingAgainAfterwardsIsNoWayAroundTheSecondPerson() {
        var again = inspection(REPAIRED.plusSeconds(60), fit());

        assertThat(reasons(decide(STRIKE, "tech1", "tech", List.of(torn(), again), List.of(repair("tech1")))))
                .singleElement()
                .asString()
                .contains("second person");
    }

    @Test
    void aLaterFitSheetDoesNotForgetTheRepair() {
        var again = inspection(REPAIRED, fit());

        assertThat(reasons(decide(STRIKE, "coordinator", "coordinator", List.of(again, torn()), List.of())))
                .singleElement()
                .asString()
                .contains("membrane repair");
    }

    @Test
    void aRepairFromBeforeTheInspectionDoesNotCount() {
        var early = new SignedWork(Work.MEMBRANE_REPAIR, "tech1", INSPECTED.minusSeconds(1));

        assertThat(decide(STRIKE, "coordinator", "coordinator", List.of(torn()), List.of(early)))
                .isInstanceOf(Release.Refused.class);
    }

    @Test
    void aHouseMayDoWithoutTheSecondPerson() {
        var alone = new ReleaseRules(Set.of("tech"), false);

        assertThat(alone.decide(request(STRIKE, "tech1", "tech", List.of(torn()), List.of(repair("tech1")))))
                .isInstanceOf(Release.Granted.class);
    }

    @Test
    void anUnclearReadingEndsWithTheAnswerNoContact() {
        var hold = new Hold(Hold.Cause.UNCLEAR_READING, "r1", HELD, true);
        var answer = new NoContact("r1", "desk1", "the branch was on the ground", INSPECTED);

        assertThat(ReleaseRules.DEFAULTS.decide(new ReleaseRequest(
                        hold, signer("coordinator", "coordinator"), "ok", NOW, List.of(), List.of(), List.of(answer))))
                .isEqualTo(new Release.Granted(
                        Release.Ground.NO_CONTACT, "answered by desk1: the branch was on the ground"));
    }

    @Test
    void noAnswerEndsAStrike() {
        var answer = new NoContact("s1", "desk1", "never mind", INSPECTED);

        assertThat(ReleaseRules.DEFAULTS.decide(new ReleaseRequest(
                        STRIKE,
                        signer("coordinator", "coordinator"),
                        "ok",
                        NOW,
                        List.of(),
                        List.of(),
                        List.of(answer))))
                .isInstanceOf(Release.Refused.class);
    }

    @Test
    void everythingMissingIsNamedAtOnce() {
        var released = new Hold(Hold.Cause.STRIKE, "s1", HELD, false);
        var request = new ReleaseRequest(released, signer("desk1", "desk"), " ", NOW, List.of(), List.of(), List.of());

        assertThat(reasons(ReleaseRules.DEFAULTS.decide(request)))
                .satisfiesExactly(
                        reason -> assertThat(reason).contains("already released"),
                        reason -> assertThat(reason).contains("desk1 has no right"),
                        reason -> assertThat(reason).contains("statement"),
                        reason -> assertThat(reason).contains("not covered"));
    }

    @Test
    void whoHasLeftSignsNothing() {
        var left = new ReleaseRequest.Signer("tech1", List.of("tech"), false);
        var request = new ReleaseRequest(
                STRIKE, left, "ok", NOW, List.of(inspection(INSPECTED, fit())), List.of(), List.of());

        assertThat(reasons(ReleaseRules.DEFAULTS.decide(request)))
                .containsExactly("tech1 no longer has the right to sign");
    }

    @Test
    void somebodyMustHaveTheRight() {
        assertThatThrownBy(() -> new ReleaseRules(Set.of(), true)).hasMessageContaining("right to release");
    }

    private static Release decide(
            Hold hold, String signer, String role, List<SignedInspection> sheets, List<SignedWork> work) {
        return ReleaseRules.DEFAULTS.decide(request(hold, signer, role, sheets, work));
    }

    private static ReleaseRequest request(
            Hold hold, String signer, String role, List<SignedInspection> sheets, List<SignedWork> work) {
        return new ReleaseRequest(hold, signer(signer, role), "seen and sound", NOW, sheets, work, List.of());
    }

    private static ReleaseRequest.Signer signer(String id, String role) {
        return new ReleaseRequest.Signer(id, List.of(role), true);
    }

    private static SignedInspection inspection(Instant at, Outcome outcome) {
        return new SignedInspection(Set.of("s1"), "tech1", at, outcome);
    }

    private static SignedInspection torn() {
        return inspection(INSPECTED, judged(new Finding("front-left", FindingKind.TEAR, null, null, 8.0, "")));
    }

    private static SignedWork repair(String by) {
        return new SignedWork(Work.MEMBRANE_REPAIR, by, REPAIRED);
    }

    private static Outcome fit() {
        return judged();
    }

    private static Outcome judged(Finding... findings) {
        return RuleTable.ofTheTrade().judge(List.of(findings), new Situation(INSPECTED, null, null, true));
    }

    private static List<String> reasons(Release release) {
        return ((Release.Refused) release).reasons();
    }
}
