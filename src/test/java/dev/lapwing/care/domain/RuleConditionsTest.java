package dev.lapwing.care.domain;

import static dev.lapwing.care.domain.CareFixture.RULES;
import static dev.lapwing.care.domain.CareFixture.SURFACES;
import static dev.lapwing.care.domain.CareFixture.date;
import static dev.lapwing.care.domain.CareFixture.fullTimeUnit;
import static dev.lapwing.care.domain.CareFixture.rulesJson;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Which of several rules counts, and what adopting other rules would do. */
class RuleConditionsTest {
    @Test
    void unitUnderTreesHasTheShorterInterval() {
        var unit = fullTimeUnit().inspected("2026-08-12");
        unit.roof = new Roof("epdm", "walkable", null, false, true);

        assertThat(unit.plan("2026-08-12").next().why())
                .isEqualTo("wash with inspection: full-time, last done 12 Aug 2026, 75 days,"
                        + " rule full-time-under-trees v1");
    }

    @Test
    void ageRuleCountsFromTheDayTheRoofIsOldEnough() {
        LocalDate tenYearsOldOn = date("2026-11-04");
        var unit = fullTimeUnit().inspected("2026-08-12");
        unit.roof = new Roof("epdm", "walkable", tenYearsOldOn.minusYears(10), true, false);

        NextDue next = unit.plan("2026-08-12").next();

        assertThat(next.window().due()).isEqualTo(tenYearsOldOn);
        assertThat(next.why()).contains("full-time-outside-old-roof");
    }

    @Test
    void roofOfUnknownAgeStoredOutsideCountsAsOld() {
        var unit = fullTimeUnit().inspected("2026-08-12");
        unit.roof = new Roof("epdm", "walkable", null, true, false);

        assertThat(unit.plan("2026-08-12").next().window().due()).isEqualTo(date("2026-10-26"));
    }

    @Test
    void washRuleHasItsOwnPlaceAndAnInspectionServesIt() {
        CareRules rules = with("""
                {"id": "full-time-wash", "version": 1, "type": "interval", "kind": "wash", "pattern": "full-time",
                 "every": "45 days", "opensBefore": "7 days", "lateAfter": "7 days", "source": "none"},""");
        var unit = fullTimeUnit().inspected("2026-08-12");

        unit.sweep(new DueEngine(rules), date("2026-08-12"));

        assertThat(unit.open).extracting(OpenTask::kind).containsExactly(TaskKind.INSPECTION, TaskKind.WASH);
        unit.signOff(TaskKind.INSPECTION, "2026-09-20").sweep(new DueEngine(rules), date("2026-09-20"));
        assertThat(unit.open)
                .extracting(task -> task.window().due())
                .containsExactly(date("2026-12-20"), date("2026-11-04"));
    }

    @Test
    void monthRuleKeepsTheMonthEnd() {
        CareRules rules = RuleFile.read(rulesJson().replaceFirst("\"91 days\"", "\"3 months\""), SURFACES);
        var unit =
                fullTimeUnit().inspected("2026-08-31").inspected("2026-11-30").inspected("2027-02-28");

        assertThat(new DueEngine(rules)
                        .plan(unit.facts(), date("2027-02-28"))
                        .next()
                        .window()
                        .due())
                .isEqualTo(date("2027-05-31"));
    }

    @Test
    void trialListsWhatWouldChangeAndStoresNothing() {
        CareRules tried = RuleFile.read(rulesJson().replaceFirst("\"91 days\"", "\"85 days\""), SURFACES);
        var fullTime = fullTimeUnit().inspected("2026-08-12");
        fullTime.sweep("2026-08-12");
        var seasonal = CareFixture.seasonalUnit().inspected("2026-03-30");
        seasonal.sweep("2026-03-30");
        var trial = new RuleTrial(RULES, tried);

        var changed = trial.unit(fullTime.facts(), date("2026-09-01"));
        var unchanged = trial.unit(seasonal.facts(), date("2026-09-01"));
        var neverSwept =
                trial.unit(CareFixture.seasonalUnit().inspected("2026-03-30").facts(), date("2026-09-01"));

        assertThat(changed).hasValueSatisfying(difference -> {
            assertThat(difference.now().next().window().due()).isEqualTo(date("2026-11-11"));
            assertThat(difference.tried().next().window().due()).isEqualTo(date("2026-11-05"));
        });
        assertThat(unchanged).isEmpty();
        assertThat(neverSwept).isEmpty();
        assertThat(trial.totals()).isEqualTo(new RuleTrial.Totals(3, 1, 1, 0, 1, 1));
    }

    @Test
    void newVersionWithTheSameDatesChangesNothing() {
        CareRules tried = RuleFile.read(rulesJson().replaceFirst("\"version\": 1", "\"version\": 2"), SURFACES);
        var unit = fullTimeUnit().inspected("2026-08-12");
        unit.sweep("2026-08-12");

        assertThat(new RuleTrial(RULES, tried).unit(unit.facts(), date("2026-09-01")))
                .isEmpty();
    }

    @Test
    void laterDatesOfNewRulesDoNotExcuseWorkAlreadyDue() {
        CareRules slower = RuleFile.read(rulesJson().replaceFirst("\"91 days\"", "\"105 days\""), SURFACES);
        var unit = fullTimeUnit().inspected("2026-08-12");
        unit.sweep("2026-08-12");

        Plan plan = unit.sweep(new DueEngine(slower), date("2026-11-12"));

        assertThat(plan.changesAnything()).isFalse();
        assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-11-11"));
    }

    private static CareRules with(String rule) {
        return RuleFile.read(rulesJson().replaceFirst("\"rules\": \\[", "\"rules\": [" + rule), SURFACES);
    }
}
