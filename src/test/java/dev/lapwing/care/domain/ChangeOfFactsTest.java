package dev.lapwing.care.domain;

import static dev.lapwing.care.domain.CareFixture.date;
import static dev.lapwing.care.domain.CareFixture.fullTimeUnit;
import static dev.lapwing.care.domain.CareFixture.seasonalUnit;
import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.use.domain.Season;
import dev.lapwing.use.domain.UsePattern;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What happens to open work when use, depot, service or roof of a unit change. */
class ChangeOfFactsTest {
    @Nested
    class Use {
        @Test
        void fromFullTimeToSeasonalMovesWorkNotYetDueToTheSeason() {
            var unit = fullTimeUnit().inspected("2026-08-12");
            unit.sweep("2026-08-12");

            unit.use(UsePattern.SEASONAL, date("2026-09-20")).sweep("2026-09-20");

            assertThat(unit.onlyOpen().origin()).isEqualTo(TaskOrigin.SEASON_CLOSING);
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-11-14"));
            assertThat(unit.calledOff)
                    .containsExactly("moved from due 11 Nov 2026 to 14 Nov 2026: wash with inspection: seasonal,"
                            + " season closes 31 Oct 2026, 14 days, rule season-closing v1");
        }

        @Test
        void workAlreadyDueStaysWhenTheUnitTurnsSeasonal() {
            var unit = fullTimeUnit().inspected("2026-03-01");
            unit.sweep("2026-03-01");

            Plan plan = unit.use(UsePattern.SEASONAL, date("2026-06-10")).sweep("2026-06-10");

            assertThat(plan.changesAnything()).isFalse();
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-05-31"));
            assertThat(plan.next().why()).isEqualTo("already due on 31 May 2026, not done yet");
        }

        @Test
        void changeBeforeTheDueDaySeenOnlyAfterItMovesTheWorkAllTheSame() {
            var unit = fullTimeUnit().inspected("2026-03-01");
            unit.sweep("2026-03-01");

            unit.use(UsePattern.SEASONAL, date("2026-05-20")).sweep("2026-06-10");

            assertThat(unit.onlyOpen().origin()).isEqualTo(TaskOrigin.SEASON_OPENING);
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-05-20"));
        }

        @Test
        void fromSeasonalToFullTimeIsDueAtOnceIfTheLastInspectionIsLongAgoButNotEarlier() {
            var unit = seasonalUnit().inspected(TaskOrigin.SEASON_OPENING, "2026-03-30");
            unit.sweep("2026-03-30");

            unit.use(UsePattern.FULL_TIME, date("2026-09-01")).sweep("2026-09-01");

            assertThat(unit.onlyOpen().origin()).isEqualTo(TaskOrigin.INTERVAL);
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-09-01"));
        }

        @Test
        void turningSeasonalInMidSeasonUninspectedAsksForTheOpeningThatWasMissed() {
            var unit = fullTimeUnit().inspected("2026-02-20");
            unit.sweep("2026-02-20");

            unit.use(UsePattern.SEASONAL, date("2026-05-01")).sweep("2026-05-01");

            assertThat(unit.onlyOpen().origin()).isEqualTo(TaskOrigin.SEASON_OPENING);
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-05-01"));
        }

        @Test
        void unknownIsCaredForAsFullTime() {
            var unit = fullTimeUnit().use(UsePattern.UNKNOWN, null).inspected("2026-08-12");

            assertThat(unit.plan("2026-08-12").next().why()).contains("use unknown, cared for as full-time");
        }

        @Test
        void seasonalWithoutASeasonIsCaredForAsFullTime() {
            var unit = seasonalUnit().inspected("2026-08-12");
            unit.season = null;

            NextDue next = unit.plan("2026-08-12").next();

            assertThat(next.window().due()).isEqualTo(date("2026-11-11"));
            assertThat(next.why()).contains("seasonal without a season");
        }
    }

    @Nested
    class Depot {
        @Test
        void moveToTheOtherHemisphereMovesTheWorkToTheSeasonThere() {
            var unit = seasonalUnit().inspected(TaskOrigin.SEASON_OPENING, "2026-03-30");
            unit.sweep("2026-03-30");

            unit.season = Season.of("10-01", "04-30");
            unit.seasonSince = date("2026-06-15");
            unit.zone = ZoneId.of("Pacific/Auckland");
            unit.sweep("2026-06-15");

            assertThat(unit.onlyOpen().origin()).isEqualTo(TaskOrigin.SEASON_OPENING);
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-10-01"));
        }

        @Test
        void moveIntoARunningSeasonUninspectedAsksForItsOpeningOnTheDayOfTheMove() {
            var unit = seasonalUnit().inspected(TaskOrigin.SEASON_OPENING, "2026-03-30");

            unit.season = Season.of("11-01", "03-31");
            unit.seasonSince = date("2027-01-20");
            unit.sweep("2027-01-20");

            assertThat(unit.onlyOpen().origin()).isEqualTo(TaskOrigin.SEASON_OPENING);
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2027-01-20"));
        }

        @Test
        void dueDaysStayTheSameLocalDatesInAnotherZone() {
            var unit = fullTimeUnit().inspected("2026-08-12");
            unit.sweep("2026-08-12");

            unit.zone = ZoneId.of("Pacific/Chatham");

            assertThat(unit.sweep("2026-08-13").changesAnything()).isFalse();
        }
    }

    @Nested
    class LeavingAndComingBack {
        @Test
        void soldUnitHasItsWorkCalledOffButNotTheStrikeInspection() {
            var unit = fullTimeUnit().inspected("2026-08-12");
            unit.events.add(strike("S1", "2026-08-20"));
            unit.sweep("2026-08-20");
            unit.service = new Service(unit.service.from(), unit.service.awaySince(), date("2026-09-01"), true);

            Plan plan = unit.sweep("2026-09-01");

            assertThat(unit.calledOff).containsExactly("the unit was sold on 1 Sep 2026");
            assertThat(unit.onlyOpen().origin()).isEqualTo(TaskOrigin.STRIKE);
            assertThat(plan.changes()).anyMatch(change -> change instanceof Change.Ask);
            assertThat(plan.inService()).isFalse();
        }

        @Test
        void outOfServiceCallsRoutineWorkOffAndTheReturnBringsItBack() {
            var unit = fullTimeUnit().inspected("2026-08-12");
            unit.sweep("2026-08-12");
            unit.service = new Service(date("2020-01-01"), date("2019-12-01"), date("2026-09-01"), false);
            unit.sweep("2026-09-01");
            assertThat(unit.open).isEmpty();

            unit.service = new Service(date("2026-12-01"), date("2026-09-01"), null, false);
            unit.sweep("2026-12-01");

            assertThat(unit.onlyOpen().origin()).isEqualTo(TaskOrigin.INTERVAL);
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-12-01"));
        }

        @Test
        void longAwayGetsAnIntakeInspectionBeforeItsFirstRental() {
            var unit = fullTimeUnit().inspected("2026-01-12").rented("2026-12-05", "2026-12-09");
            unit.service = new Service(date("2026-12-01"), date("2026-03-01"), null, false);

            unit.sweep("2026-12-01");

            assertThat(unit.onlyOpen().origin()).isEqualTo(TaskOrigin.INTAKE);
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-12-04"));
        }

        @Test
        void newUnitGetsAnIntakeInspectionAndThenTheInterval() {
            var unit = fullTimeUnit();
            unit.service = Service.since(date("2026-06-01"));
            unit.sweep("2026-06-01");
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-06-15"));

            unit.signOff(TaskKind.INSPECTION, "2026-06-03").sweep("2026-06-03");

            assertThat(unit.onlyOpen().origin()).isEqualTo(TaskOrigin.INTERVAL);
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-09-02"));
        }
    }

    @Nested
    class NewRoof {
        @Test
        void intervalCountsFromTheNewRoofAndWorkOnTheOldOneIsCalledOff() {
            var unit = fullTimeUnit().inspected("2026-08-12");
            unit.sweep("2026-08-12");
            unit.open.add(new OpenTask(
                    "F1",
                    TaskKind.TOUCH_UP,
                    TaskOrigin.FOLLOW_UP,
                    window("2026-09-20"),
                    date("2026-08-12"),
                    false,
                    null));

            unit.roof = new Roof("tpo", "walkable", date("2026-09-10"), false, false);
            unit.sweep("2026-09-10");

            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-12-10"));
            assertThat(unit.calledOff)
                    .containsExactly("the roof was replaced on 10 Sep 2026", "the roof was replaced on 10 Sep 2026");
        }

        @Test
        void roofPutOnWhileTheUnitWasAwayCountsToo() {
            var unit = fullTimeUnit().inspected("2026-03-01");
            unit.service = new Service(date("2026-09-20"), date("2026-06-01"), null, false);
            unit.roof = new Roof("tpo", "walkable", date("2026-09-10"), false, false);

            unit.sweep("2026-09-20");

            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-12-10"));
        }

        @Test
        void workPlannedBeforeTheNewRoofWasHeardOfGoesToo() {
            var unit = fullTimeUnit().inspected("2026-06-01");
            unit.sweep("2026-09-11");
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-08-31"));

            unit.roof = new Roof("tpo", "walkable", date("2026-09-10"), false, false);
            unit.sweep("2026-09-11");

            assertThat(unit.calledOff).containsExactly("the roof was replaced on 10 Sep 2026");
            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-12-10"));
        }

        @Test
        void overdueWorkOnTheOldRoofGoesWithIt() {
            var unit = fullTimeUnit().inspected("2026-03-01");
            unit.sweep("2026-03-01");

            unit.roof = new Roof("tpo", "walkable", date("2026-09-10"), false, false);
            unit.sweep("2026-09-11");

            assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2026-12-10"));
        }
    }

    private static CareEvent strike(String id, String day) {
        return new CareEvent(id, TaskOrigin.STRIKE, Instant.parse(day + "T10:00:00Z"), date(day));
    }

    private static DueWindow window(String due) {
        LocalDate day = date(due);
        return new DueWindow(day, day, day);
    }
}
