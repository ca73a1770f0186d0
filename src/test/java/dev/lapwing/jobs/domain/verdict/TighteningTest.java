package dev.lapwing.jobs.domain.verdict;

import static dev.lapwing.jobs.domain.verdict.Findings.NOON;
import static dev.lapwing.jobs.domain.verdict.Findings.NOTHING_PRESSES;
import static dev.lapwing.jobs.domain.verdict.Findings.any;
import static dev.lapwing.jobs.domain.verdict.Findings.crack;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.lapwing.jobs.domain.FieldError;
import dev.lapwing.jobs.domain.finding.Depth;
import dev.lapwing.jobs.domain.finding.FindingKind;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TighteningTest {
    @Test
    void aWorseVerdictBringsItsWork() {
        var outcome = RuleTable.tightened(Map.of("deep-crack.verdict", "rework"))
                .judge(List.of(crack(Depth.DEEP)), NOTHING_PRESSES);

        assertThat(outcome.verdict()).isEqualTo(Verdict.REWORK);
        assertThat(outcome.followUps()).extracting(FollowUp::work).containsExactly(Work.REWORK);
    }

    @Test
    void referralBringsTheHold() {
        var outcome = RuleTable.tightened(Map.of("tear.verdict", "stop-and-refer"))
                .judge(List.of(any(FindingKind.TEAR)), NOTHING_PRESSES);

        assertThat(outcome.hold()).isTrue();
        assertThat(outcome.followUps()).extracting(FollowUp::work).containsExactly(Work.WORKSHOP_REFERRAL);
    }

    @Test
    void aHoldAndAnUrgencyMayBeAddedOnceTheRuleLeadsToWork() {
        var settings = Map.of(
                "surface-crack.hold", "true", "surface-crack.urgency", "urgent", "surface-crack.verdict", "touch-up");

        var outcome = RuleTable.tightened(settings).judge(List.of(crack(Depth.SURFACE)), NOTHING_PRESSES);

        assertThat(outcome.hold()).isTrue();
        assertThat(outcome.urgency()).isEqualTo(Urgency.URGENT);
    }

    @Test
    void unknownRainMayCountAsNear() {
        var outcome = RuleTable.tightened(Map.of("unknown-rain-is-near", "true"))
                .judge(List.of(any(FindingKind.VOID)), new Situation(NOON, null, null, true));

        assertThat(outcome.urgency()).isEqualTo(Urgency.URGENT);
    }

    @ParameterizedTest
    @CsvSource({
        "deep-crack.verdict, fit, milder than the default",
        "soft-spot.verdict, replace, milder than the default",
        "tear.hold, false, cannot be loosened",
        "tear.urgency, routine, milder than the default",
        "void.urgency, none, milder than the default",
        "rain-near-hours, 47, not loosened",
        "goes-out-near-hours, 335, not loosened",
        "replace-from-zones, 4, not loosened",
        "routine-within-hours, 337, not loosened",
        "urgent-within-hours, 73, not loosened",
    })
    void refusesToLoosen(String key, String value, String why) {
        assertThat(refused(Map.of(key, value))).singleElement().satisfies(error -> {
            assertThat(error.field()).isEqualTo(key);
            assertThat(error.message()).contains(why);
        });
    }

    @ParameterizedTest
    @CsvSource({
        "deep-crack.verdict, awful, not known",
        "deep-crack.colour, red, cannot be set",
        "rust.verdict, rework, no rule of this name",
        "rain-hours, 72, no such setting",
        "rain-near-hours, soon, not a whole number",
        "rain-near-hours, -72, not a whole number",
        "void.hold, maybe, neither true nor false",
        "unknown-rain-is-near, perhaps, neither true nor false",
        "surface-crack.hold, true, set its verdict first",
        "surface-crack.urgency, urgent, set its verdict first",
    })
    void refusesWhatItCannotUse(String key, String value, String why) {
        assertThat(refused(Map.of(key, value))).singleElement().satisfies(error -> {
            assertThat(error.field()).isEqualTo(key);
            assertThat(error.message()).contains(why);
        });
    }

    @Test
    void namesEveryRefusedSetting() {
        assertThat(refused(Map.of("rain-near-hours", "1", "tear.hold", "false", "rust.hold", "true")))
                .extracting(FieldError::field)
                .containsExactlyInAnyOrder("rain-near-hours", "tear.hold", "rust.hold");
    }

    @Test
    void noSettingsAreTheRulesOfTheTrade() {
        assertThat(RuleTable.tightened(Map.of()).lines())
                .isEqualTo(RuleTable.ofTheTrade().lines());
    }

    private static List<FieldError> refused(Map<String, String> settings) {
        return catchThrowableOfType(RefusedSettings.class, () -> RuleTable.tightened(settings))
                .errors();
    }
}
