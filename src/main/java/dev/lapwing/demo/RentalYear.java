package dev.lapwing.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** The rentals of one unit of the demo: those of the last year, and what is booked. */
final class RentalYear {
    /** A time out; a null back means nobody knows yet. */
    record Span(Instant out, Instant back) {
        boolean covers(Instant moment) {
            return !moment.isBefore(out) && (back == null || moment.isBefore(back));
        }
    }

    private static final int BOOKED_DAYS = 45;
    private static final Duration STORY_TRIP = Duration.ofDays(6);
    private static final Duration STORY_STAY = Duration.ofDays(2);

    private final List<Span> spans;
    private final ZoneId zone;

    private RentalYear(List<Span> spans, ZoneId zone) {
        this.spans = spans;
        this.zone = zone;
    }

    /**
     * Makes up rentals.
     *
     * @param from first day on which the unit can be out
     * @param season first and last day on which trips begin, or null for the whole year
     */
    static RentalYear of(SplittableRandom random, LocalDate from, Season season, Instant now, ZoneId zone) {
        var spans = new ArrayList<Span>();
        LocalDate end = now.atZone(zone).toLocalDate().plusDays(BOOKED_DAYS);
        LocalDate day = from.plusDays(random.nextInt(5));
        int longest = season == null ? 13 : 10;
        int idle = season == null ? 4 : 8;
        while (day.isBefore(end)) {
            if (season != null && !season.contains(day)) {
                day = day.plusDays(1);
                continue;
            }
            LocalDate back = day.plusDays(random.nextInt(4, longest));
            spans.add(new Span(at(day, 10, random, zone), at(back, 15, random, zone)));
            day = back.plusDays(random.nextInt(1, idle));
        }
        return new RentalYear(spans, zone);
    }

    /** When trips begin, in days of the year; may cross New Year. */
    record Season(MonthDay opens, MonthDay closes) {
        boolean contains(LocalDate date) {
            MonthDay day = MonthDay.from(date);
            boolean after = !day.isBefore(opens);
            boolean before = !day.isAfter(closes);
            return opens.isAfter(closes) ? after || before : after && before;
        }
    }

    private static Instant at(LocalDate day, int hour, SplittableRandom random, ZoneId zone) {
        LocalTime time = LocalTime.of(hour, 15 * random.nextInt(4));
        return day.atTime(time).atZone(zone).toInstant();
    }

    /** Makes a trip end at a moment, with some days in the yard after it. */
    void endTripAt(Instant back) {
        Instant out = back.minus(STORY_TRIP);
        Instant free = back.plus(STORY_STAY);
        spans.removeIf(span ->
                span.out().isBefore(free) && (span.back() == null || span.back().isAfter(out)));
        spans.add(new Span(out, back));
    }

    /** Forgets when a trip that is under way will end, and what is booked after it. */
    void leaveReturnOpen(Instant now) {
        spans.stream().filter(span -> span.covers(now)).findFirst().ifPresent(away -> {
            spans.removeIf(span -> !span.out().isBefore(away.out()));
            spans.add(new Span(away.out(), null));
        });
    }

    /** Returns the last day up to a date on which the unit was in the yard at mid-morning. */
    LocalDate dayInYard(LocalDate wanted) {
        LocalDate day = wanted;
        while (isOut(day.atTime(11, 0).atZone(zone).toInstant())) {
            day = day.minusDays(1);
        }
        return day;
    }

    boolean isOut(Instant moment) {
        return spans.stream().anyMatch(span -> span.covers(moment));
    }

    List<Span> spans() {
        return List.copyOf(spans);
    }
}
