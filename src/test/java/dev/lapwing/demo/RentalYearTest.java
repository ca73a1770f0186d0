package dev.lapwing.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Rentals that are made up could have happened. */
class RentalYearTest {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final Instant NOW = Instant.parse("2025-03-09T12:00:00Z");

    @Property(tries = 200)
    void aUnitIsOutOnceAtATime(@ForAll long seed, @ForAll boolean open) {
        RentalYear year = year(seed, null);
        year.endTripAt(NOW.minusSeconds(86_400));
        if (open) {
            year.leaveReturnOpen(NOW);
        }
        List<RentalYear.Span> spans = year.spans().stream()
                .sorted(Comparator.comparing(RentalYear.Span::out))
                .toList();
        assertThat(spans).hasSizeGreaterThan(20);
        for (int i = 1; i < spans.size(); i++) {
            assertThat(spans.get(i - 1).back())
                    .isNotNull()
                    .isBefore(spans.get(i).out());
        }
    }

    @Property(tries = 200)
    void tripsOfASeasonalUnitBeginInTheSeason(@ForAll long seed) {
        var season = new RentalYear.Season(MonthDay.of(10, 1), MonthDay.of(4, 30));
        assertThat(year(seed, season).spans())
                .isNotEmpty()
                .allSatisfy(span ->
                        assertThat(span.out().atZone(ZONE).getMonthValue()).isIn(10, 11, 12, 1, 2, 3, 4));
    }

    @Property(tries = 200)
    void theUnitIsInTheYardForTwoDaysAfterATripThatEndsAtAMoment(@ForAll long seed) {
        RentalYear year = year(seed, null);
        year.endTripAt(NOW);
        assertThat(year.isOut(NOW.minusSeconds(60))).isTrue();
        assertThat(year.isOut(NOW)).isFalse();
        assertThat(year.isOut(NOW.plusSeconds(47 * 3600))).isFalse();
    }

    private static RentalYear year(long seed, RentalYear.Season season) {
        return RentalYear.of(new SplittableRandom(seed), LocalDate.of(2024, 3, 1), season, NOW, ZONE);
    }
}
