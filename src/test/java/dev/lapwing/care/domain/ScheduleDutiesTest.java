package dev.lapwing.care.domain;

import static dev.lapwing.care.domain.CareFixture.RULES;
import static dev.lapwing.care.domain.CareFixture.date;
import static dev.lapwing.care.domain.CareFixture.fullTimeUnit;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The duties of shared/checks/records.csv that fall to the engine; each test names the row it answers. */
class ScheduleDutiesTest {
    @Test
    void everyUnitUnderControlHasAScheduleAndOneWithoutIsReported() {
        assertThat(duty("49 CFR 396.3(a)")).contains("a unit without one is reported");
        var empty = new CareRules(List.of(), RULES.opening(), RULES.closing(), RULES.intake(), RULES.events(), 30, 3);

        Plan plan =
                new DueEngine(empty).plan(fullTimeUnit().inspected("2026-08-12").facts(), date("2026-08-12"));

        assertThat(plan.withoutSchedule()).isTrue();
        assertThat(RuleCheck.problems(empty)).anyMatch(problem -> problem.contains("units are left without a date"));
        assertThat(fullTimeUnit().plan("2026-08-12").withoutSchedule()).isFalse();
    }

    @Test
    void eachPlannedItemHasItsNatureAndADueDateThatStaysWhenTheWorkIsMoved() {
        assertThat(duty("49 CFR 396.3(b)(2)")).contains("due date kept even after it is done or moved");
        var unit = fullTimeUnit().inspected("2026-08-12");
        unit.sweep("2026-08-12");
        OpenTask first = unit.onlyOpen();
        unit.roof = new Roof("epdm", "walkable", null, false, true);

        Plan plan = unit.sweep("2026-08-20");

        assertThat(plan.changes())
                .satisfiesExactly(
                        change -> assertThat(change).isInstanceOfSatisfying(Change.CallOff.class, callOff -> {
                            assertThat(callOff.task()).isEqualTo(first.id());
                            assertThat(callOff.reason()).startsWith("moved from due 11 Nov 2026 to 26 Oct 2026");
                        }),
                        change -> assertThat(change)
                                .isInstanceOfSatisfying(
                                        Change.Create.class,
                                        create -> assertThat(create.kind()).isEqualTo(TaskKind.INSPECTION)));
    }

    @Test
    void newUnitIsInspectedBeforeItsFirstUse() {
        assertThat(duty("same guide s4.2")).contains("inspection before use");
        var unit = fullTimeUnit().rented("2026-06-01", "2026-06-05");
        unit.service = Service.since(date("2026-06-01"));

        NextDue next = unit.plan("2026-06-01").next();

        assertThat(next.origin()).isEqualTo(TaskOrigin.INTAKE);
        assertThat(next.window().due()).isEqualTo(date("2026-06-01"));
    }

    private static String duty(String section) {
        return CheckValues.rows("records.csv").stream()
                .filter(row -> row.get("source_section").equals(section))
                .map(row -> row.get("what_software_must_do"))
                .findFirst()
                .orElseThrow();
    }
}
