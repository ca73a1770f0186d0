package dev.lapwing.use.domain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PatternJudgeTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 1);
    private static final PatternJudge JUDGE = new PatternJudge(PatternThresholds.DEFAULT);

    @ParameterizedTest(name = "{0} days out, then {1} idle, before it {2}: {3}")
    @CsvSource({
        "265, 100, ,          full-time",
        "219, 146, ,          seasonal",
        "230, 135, ,          full-time",
        "230, 135, SEASONAL,  seasonal",
        "230, 135, FULL_TIME, full-time",
        "255, 110, SEASONAL,  seasonal",
        "256, 109, SEASONAL,  full-time",
        "0,   365, FULL_TIME, seasonal",
        "0,   89,  ,          unknown",
        "0,   90,  ,          seasonal",
        "60,  30,  ,          full-time",
    })
    void patternFollowsShareOutAndLongestStorePeriod(int out, int idle, UsePattern before, String pattern) {
        LocalDate start = TODAY.minusDays(out + idle);
        var log = log(
                spans(LogKind.STORAGE, start.plusDays(out), TODAY), spans(LogKind.RENTAL, start, start.plusDays(out)));
        UseInForce previous = before == null ? null : new UseInForce(before, null, "before");

        assertThat(JUDGE.judge(log, TODAY, previous).pattern().word()).isEqualTo(pattern);
    }

    @Test
    void manyShortStaysInTheYardAreNotAStorePeriod() {
        var spans = new ArrayList<LogSpan>();
        for (LocalDate day = TODAY.minusDays(365); day.isBefore(TODAY); day = day.plusDays(10)) {
            spans.addAll(spans(LogKind.RENTAL, day, day.plusDays(3)));
        }

        UseInForce use = JUDGE.judge(new RentalLog(spans, ZoneOffset.UTC), TODAY, null);

        assertThat(use.pattern()).isEqualTo(UsePattern.FULL_TIME);
        assertThat(use.why()).isEqualTo("out 111 of 365 days, longest store period 7 days");
    }

    @Test
    void daysInTheWorkshopNeitherCountNorMakeAStorePeriod() {
        LocalDate start = TODAY.minusDays(365);
        var log = log(
                spans(LogKind.RENTAL, start, start.plusDays(200)),
                spans(LogKind.WORKSHOP, start.plusDays(200), TODAY.minusDays(50)));

        UseInForce use = JUDGE.judge(log, TODAY, null);

        assertThat(use.why()).isEqualTo("out 200 of 250 days, longest store period 50 days");
        assertThat(use.pattern()).isEqualTo(UsePattern.FULL_TIME);
    }

    @Test
    void emptyLogIsUnknownAndSaysWhy() {
        UseInForce use = JUDGE.judge(new RentalLog(List.of(), ZoneOffset.UTC), TODAY, null);

        assertThat(use).isEqualTo(new UseInForce(UsePattern.UNKNOWN, null, "0 days of rental log, 90 needed"));
    }

    @Test
    void careKeepsItsFirstDayWhileUnknownBecomesFullTime() {
        LocalDate since = LocalDate.of(2026, 6, 1);
        var log = log(spans(LogKind.RENTAL, TODAY.minusDays(120), TODAY));

        UseInForce use = JUDGE.judge(log, TODAY, new UseInForce(UsePattern.UNKNOWN, since, "young"));

        assertThat(use.pattern()).isEqualTo(UsePattern.FULL_TIME);
        assertThat(use.since()).isEqualTo(since);
    }

    @Test
    void changeOfCareBeginsOnTheDayItIsJudged() {
        var log = log(spans(LogKind.RENTAL, TODAY.minusDays(300), TODAY.minusDays(200)));

        UseInForce use = JUDGE.judge(log, TODAY, new UseInForce(UsePattern.FULL_TIME, null, "before"));

        assertThat(use.pattern()).isEqualTo(UsePattern.SEASONAL);
        assertThat(use.since()).isEqualTo(TODAY);
    }

    @Property(tries = 50)
    void unitNeverFlipsTwiceWithinThirtyDaysHoweverItIsRented(@ForAll long seed) {
        RentalLog log = randomLog(new Random(seed));
        UseInForce use = null;
        LocalDate lastFlip = null;
        for (LocalDate day = TODAY.minusDays(1400); day.isBefore(TODAY); day = day.plusDays(1)) {
            UseInForce next = JUDGE.judge(log, day, use);
            if (use != null && next.pattern().caredForAs() != use.pattern().caredForAs()) {
                if (lastFlip != null) {
                    assertThat(day).isAfterOrEqualTo(lastFlip.plusDays(30));
                }
                lastFlip = day;
            }
            use = next;
        }
    }

    @ParameterizedTest
    @CsvSource({
        "365, 0,   0.6, 0.7, 90,  60",
        "365, 400, 0.6, 0.7, 90,  60",
        "365, 90,  0.7, 0.7, 90,  60",
        "365, 90,  0.6, 1.1, 90,  60",
        "365, 90,  0.6, 0.7, 60,  60",
        "365, 90,  0.6, 0.7, 400, 60",
        "365, 90,  0.6, 0.7, 90,  0",
    })
    void thresholdsThatCannotWorkAreRefused(
            int trailing, int known, double seasonal, double fullTime, int seasonalStore, int fullTimeStore) {
        assertThatThrownBy(
                        () -> new PatternThresholds(trailing, known, seasonal, fullTime, seasonalStore, fullTimeStore))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("use pattern: ");
    }

    private static RentalLog randomLog(Random random) {
        var spans = new ArrayList<LogSpan>();
        LocalDate day = TODAY.minusDays(1500);
        while (day.isBefore(TODAY)) {
            LocalDate back = day.plusDays(1 + random.nextInt(60));
            spans.addAll(spans(LogKind.RENTAL, day, back));
            boolean winter = random.nextInt(4) == 0;
            day = back.plusDays(winter ? 50 + random.nextInt(80) : random.nextInt(20));
        }
        return new RentalLog(spans, ZoneOffset.UTC);
    }

    @SafeVarargs
    private static RentalLog log(List<LogSpan>... parts) {
        var spans = new ArrayList<LogSpan>();
        for (List<LogSpan> part : parts) {
            spans.addAll(part);
        }
        return new RentalLog(spans, ZoneOffset.UTC);
    }

    private static List<LogSpan> spans(LogKind kind, LocalDate first, LocalDate end) {
        return first.equals(end) ? List.of() : List.of(new LogSpan(kind, midnight(first), midnight(end)));
    }

    private static Instant midnight(LocalDate day) {
        return day.atStartOfDay(ZoneOffset.UTC).toInstant();
    }
}
