package dev.lapwing.record;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.record.domain.Waits;
import dev.lapwing.returns.storage.Strike;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** Counts how the care of the roofs goes, of one depot or, with null, of all. */
@ApplicationScoped
public class Figures {
    /** Scheduled work done in a month and how much of it by its last day. */
    public record OnTime(YearMonth month, long done, long onTime) {}

    /** Units on hold at the end of a month, and strikes recorded in it. */
    public record Month(YearMonth month, long openHolds, long strikes) {}

    private static final int MONTHS = 12;
    private static final String OF_DEPOT = " and (?1 is null or %s.code = ?1)";

    /** Returns the twelve months that end with the one of the instant, the oldest first. */
    public static List<YearMonth> months(Instant now) {
        YearMonth last = YearMonth.from(now.atOffset(ZoneOffset.UTC));
        List<YearMonth> months = new ArrayList<>();
        for (int back = MONTHS - 1; back >= 0; back--) {
            months.add(last.minusMonths(back));
        }
        return months;
    }

    /** Counts the work with a date that was done; strike work has an instant and is counted by {@link #waits}. */
    public List<OnTime> onTime(String depot, Instant now) {
        List<OnTime> rows = new ArrayList<>();
        for (YearMonth month : months(now)) {
            String done = "state = ?2 and kind <> ?3 and doneOn >= ?4 and doneOn <= ?5" + OF_DEPOT.formatted("depot");
            Object[] values = {depot, TaskState.DONE, TaskKind.STRIKE_INSPECTION, month.atDay(1), month.atEndOfMonth()};
            rows.add(new OnTime(
                    month, CareTask.count(done, values), CareTask.count(done + " and doneOn <= late", values)));
        }
        return rows;
    }

    /** Returns how long it took from the report of each strike of the last year to the end of its inspection. */
    public Waits waits(String depot, Instant now) {
        LocalDate since = months(now).get(0).atDay(1);
        List<CareTask> done = CareTask.list(
                "state = ?2 and kind = ?3 and doneOn >= ?4" + OF_DEPOT.formatted("depot"),
                depot,
                TaskState.DONE,
                TaskKind.STRIKE_INSPECTION,
                since);
        return new Waits(done.stream()
                .map(task -> Duration.between(task.dueAt, task.doneAt))
                .toList());
    }

    /** Counts holds and strikes by month; a month that is not over counts up to the instant. */
    public List<Month> byMonth(String depot, Instant now) {
        List<Month> rows = new ArrayList<>();
        for (YearMonth month : months(now)) {
            Instant start = month.atDay(1).atStartOfDay().toInstant(ZoneOffset.UTC);
            Instant over = month.plusMonths(1).atDay(1).atStartOfDay().toInstant(ZoneOffset.UTC);
            Instant end = over.isAfter(now) ? now : over;
            long holds = Hold.count(
                    "openedAt <= ?2 and (releasedAt is null or releasedAt > ?2)" + OF_DEPOT.formatted("unit.depot"),
                    depot,
                    end);
            long strikes = Strike.count(
                    "raisedAt >= ?2 and raisedAt < ?3" + OF_DEPOT.formatted("unit.depot"), depot, start, over);
            rows.add(new Month(month, holds, strikes));
        }
        return rows;
    }
}
