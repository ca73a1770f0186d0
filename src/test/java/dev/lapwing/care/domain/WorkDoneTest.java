package dev.lapwing.care.domain;

import static dev.lapwing.care.domain.CareFixture.date;
import static dev.lapwing.care.domain.CareFixture.fullTimeUnit;
import static dev.lapwing.care.domain.CareFixture.seasonalUnit;
import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.use.domain.UsePattern;
import java.time.Instant;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What inspections done early, late or for another cause, and people's hands on a task, mean for the rest. */
class WorkDoneTest {
    @Nested
    class Inspections {
        @Test
        void doneEarlyCountsFromTheDayItWasDone() {
            var unit = fullTimeUnit().inspected("2026-08-12");
            unit.sweep("2026-08-12");

            unit.signOff(TaskKind.INSPECTION, "2026-09-25").sweep("2026-09-25");

            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-12-25"));
        }

        @Test
        void doneLateCountsFromTheDayItWasDone() {
            var unit = fullTimeUnit().inspected("2026-08-12");
            unit.sweep("2026-08-12");

            unit.signOff(TaskKind.INSPECTION, "2026-12-31").sweep("2026-12-31");

            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2027-04-01"));
        }

        @Test
        void strikeInspectionServesRoutineWorkDueWithinThirtyDays() {
            var unit = fullTimeUnit().inspected("2026-08-12");
            unit.sweep("2026-08-12");

            unit.inspected(TaskOrigin.STRIKE, "2026-10-12").sweep("2026-10-12");

            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2027-01-11"));
            assertThat(unit.calledOff)
                    .containsExactly("served by the strike inspection of 12 Oct 2026 (due 11 Nov 2026)");
        }

        @Test
        void strikeInspectionThirtyOneDaysBeforeLeavesRoutineWorkWhereItIs() {
            var unit = fullTimeUnit().inspected("2026-08-12");
            unit.sweep("2026-08-12");

            Plan plan = unit.inspected(TaskOrigin.STRIKE, "2026-10-11").sweep("2026-10-11");

            assertThat(plan.changesAnything()).isFalse();
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-11-11"));
        }

        @Test
        void extraInspectionAddedByHandLongBeforeTheDueDayLeavesItToo() {
            var unit = fullTimeUnit().inspected("2026-08-12").inspected(TaskOrigin.BY_HAND, "2026-10-11");

            assertThat(unit.plan("2026-10-11").next().window().due()).isEqualTo(date("2026-11-11"));
        }

        @Test
        void strikeDuringClosingWorkLeavesThatWorkToThePersonAndServesItWhenInspected() {
            var unit = seasonalUnit().inspected(TaskOrigin.SEASON_OPENING, "2026-03-30");
            unit.sweep("2026-03-30");
            unit.touched();
            unit.events.add(strike("S1", "2026-11-03"));
            unit.sweep("2026-11-03");
            assertThat(unit.open)
                    .extracting(OpenTask::kind)
                    .containsExactly(TaskKind.INSPECTION, TaskKind.STRIKE_INSPECTION);

            unit.signOff(TaskKind.STRIKE_INSPECTION, "2026-11-04");
            Plan plan = unit.sweep("2026-11-04");

            assertThat(plan.changes())
                    .containsExactly(new Change.Ask(
                            unit.onlyOpen().id(),
                            "No longer needed: served by the strike inspection of 4 Nov 2026 (due 14 Nov 2026)."));
        }

        @Test
        void missedOpeningStaysOpenUntilAnInspectionIsDone() {
            var unit = seasonalUnit().inspected(TaskOrigin.SEASON_CLOSING, "2025-11-10");
            unit.sweep("2025-11-10");

            unit.sweep("2026-12-01");
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-04-01"));

            unit.signOff(TaskKind.INSPECTION, "2026-12-02").sweep("2026-12-02");
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2027-04-01"));
        }

        @Test
        void openingWorkDoneFiveWeeksEarlyIsTheOpeningWork() {
            var unit = seasonalUnit().inspected(TaskOrigin.SEASON_OPENING, "2026-02-20");

            assertThat(unit.plan("2026-02-20").next().origin()).isEqualTo(TaskOrigin.SEASON_CLOSING);
        }

        @Test
        void strikeInspectionFiveWeeksBeforeTheOpeningIsNot() {
            var unit = seasonalUnit()
                    .inspected(TaskOrigin.SEASON_CLOSING, "2025-11-10")
                    .inspected(TaskOrigin.STRIKE, "2026-02-20");

            assertThat(unit.plan("2026-02-20").next().origin()).isEqualTo(TaskOrigin.SEASON_OPENING);
        }
    }

    @Nested
    class TouchedByAPerson {
        @Test
        void touchedWorkIsNeitherMovedNorDoubledButAskedAbout() {
            var unit = fullTimeUnit().inspected("2026-08-12");
            unit.sweep("2026-08-12");
            unit.touched();

            Plan plan = unit.use(UsePattern.SEASONAL, date("2026-09-20")).sweep("2026-09-20");

            assertThat(plan.changesAnything()).isFalse();
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-11-11"));
            assertThat(plan.changes()).singleElement().isInstanceOf(Change.Ask.class);
        }

        @Test
        void twoTasksForTheSameWorkBecomeOneAndTheTouchedOneStays() {
            var unit = fullTimeUnit().inspected("2026-08-12");
            unit.sweep("2026-08-12");
            unit.touched();
            OpenTask touched = unit.onlyOpen();
            unit.open.add(
                    0,
                    new OpenTask(
                            "A", touched.kind(), touched.origin(), touched.window(), touched.plannedOn(), false, null));

            unit.sweep("2026-08-13");

            assertThat(unit.onlyOpen()).isEqualTo(touched);
            assertThat(unit.calledOff).containsExactly("task T1 stands for the same work");
        }
    }

    @Nested
    class Events {
        @Test
        void eventIsAnsweredOnce() {
            var unit = fullTimeUnit().inspected("2026-08-12");
            unit.events.add(strike("S1", "2026-08-20"));
            unit.sweep("2026-08-20");

            assertThat(unit.sweep("2026-08-20").changesAnything()).isFalse();
            assertThat(unit.sweep("2026-09-20").changesAnything()).isFalse();
        }

        @Test
        void routineInspectionDoesNotAnswerAStrike() {
            var unit = fullTimeUnit().inspected("2026-08-21");
            unit.events.add(strike("S1", "2026-08-20"));

            assertThat(unit.plan("2026-08-22").changes())
                    .anyMatch(change ->
                            change instanceof Change.Create create && create.kind() == TaskKind.STRIKE_INSPECTION);
        }

        @Test
        void inspectionOfALaterDayAnswersAStorm() {
            var unit = fullTimeUnit().inspected("2026-08-21");
            unit.events.add(
                    new CareEvent("E1", TaskOrigin.STORM, Instant.parse("2026-08-20T10:00:00Z"), date("2026-08-20")));

            assertThat(unit.plan("2026-08-22").changes())
                    .noneMatch(change -> change instanceof Change.Create create && create.event() != null);
        }
    }

    private static CareEvent strike(String id, String day) {
        return new CareEvent(id, TaskOrigin.STRIKE, Instant.parse(day + "T10:00:00Z"), date(day));
    }
}
