package dev.lapwing.care.domain;

import static dev.lapwing.care.domain.CareFixture.date;
import static dev.lapwing.care.domain.CareFixture.seasonalUnit;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** When opening and closing work are due. */
class SeasonDatesTest {
    @Test
    void openingIsDueTheDayBeforeAnEarlyFirstRental() {
        var unit = seasonalUnit()
                .inspected(TaskOrigin.SEASON_CLOSING, "2025-11-10")
                .rented("2026-03-27", "2026-03-30");

        assertThat(unit.plan("2026-01-10").next().window().due()).isEqualTo(date("2026-03-26"));
    }

    @Test
    void closingIsDueAfterTheLastReturnOnceTheSeasonIsNearlyOver() {
        var unit = seasonalUnit()
                .inspected(TaskOrigin.SEASON_OPENING, "2026-03-30")
                .rented("2026-09-28", "2026-10-06");

        assertThat(unit.plan("2026-10-05").next().window().due()).isEqualTo(date("2026-11-14"));
        assertThat(unit.plan("2026-10-06").next().window().due()).isEqualTo(date("2026-10-20"));
    }

    @Test
    void returnIsNotTheLastWhileTheUnitIsBookedAgain() {
        var unit = seasonalUnit()
                .inspected(TaskOrigin.SEASON_OPENING, "2026-03-30")
                .rented("2026-09-28", "2026-10-06")
                .rented("2026-10-20", "2026-10-24");

        assertThat(unit.plan("2026-10-06").next().window().due()).isEqualTo(date("2026-11-14"));
    }

    @Test
    void unitOutPastTheClosingDayIsDueByTheClosingDay() {
        var unit = seasonalUnit()
                .inspected(TaskOrigin.SEASON_OPENING, "2026-03-30")
                .rented("2026-10-25", "2026-11-20");

        assertThat(unit.plan("2026-11-21").next().window().due()).isEqualTo(date("2026-11-14"));
    }

    @Test
    void closingDoneAfterTheLastReturnIsNotAskedForAgainWhenTheUnitGoesOutOnceMore() {
        var unit = seasonalUnit()
                .inspected(TaskOrigin.SEASON_OPENING, "2026-03-30")
                .inspected(TaskOrigin.SEASON_CLOSING, "2026-10-08")
                .rented("2026-10-20", "2026-10-24");

        assertThat(unit.plan("2026-10-25").next().origin()).isEqualTo(TaskOrigin.SEASON_OPENING);
    }
}
