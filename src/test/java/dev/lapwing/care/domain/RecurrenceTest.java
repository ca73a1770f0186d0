package dev.lapwing.care.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.fortuna.ical4j.model.Recur;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Interval arithmetic against shared/checks/recurrence.csv (RFC 5545 s3.8.5.3 examples, java.time on JDK 17) and against
 * ical4j as the reference library.
 */
class RecurrenceTest {
    private static final Pattern PLAIN_RULE =
            Pattern.compile("FREQ=(DAILY|WEEKLY)(?:;INTERVAL=(\\d+))?(?:;COUNT=\\d+)?(?:;WKST=SU)?");
    private static final Pattern FROM_ANCHOR =
            Pattern.compile("plus(Days|Months|Years)\\((\\d*)n\\)(?: from the anchor)?, n=0\\.\\.\\d+");

    @ParameterizedTest
    @MethodSource("rfcRows")
    void theReferenceLibraryGivesTheDatesOfTheStandard(CSVRecord row) {
        assertThat(reference(row.get("rule"), start(row), dates(row).size())).isEqualTo(dates(row));
    }

    @ParameterizedTest
    @MethodSource("plainRfcRows")
    void plainIntervalsGiveTheDatesOfTheStandard(CSVRecord row) {
        Matcher rule = PLAIN_RULE.matcher(row.get("rule"));
        assertThat(rule.matches()).isTrue();
        int interval = rule.group(2) == null ? 1 : Integer.parseInt(rule.group(2));
        var every = Every.days(rule.group(1).equals("WEEKLY") ? 7 * interval : interval);

        assertThat(series(every, start(row), dates(row).size())).isEqualTo(dates(row));
    }

    @ParameterizedTest
    @MethodSource("anchoredJavaTimeRows")
    void spansCountFromTheFirstDateAndClip(CSVRecord row) {
        assertThat(series(everyOf(row), start(row), dates(row).size())).isEqualTo(dates(row));
    }

    @ParameterizedTest
    @MethodSource("chainedJavaTimeRows")
    void workDoneOnEachClippedDayDoesNotDrift(CSVRecord row) {
        var every = row.get("rule").startsWith("plusYears") ? Every.months(12) : Every.months(1);
        List<LocalDate> done = series(every, start(row), dates(row).size());

        LocalDate next = IntervalCount.through(inspectedOn(done), every, 10).next();

        assertThat(next).isEqualTo(every.after(start(row), done.size()));
        assertThat(done).isNotEqualTo(dates(row));
    }

    @ParameterizedTest
    @MethodSource("skipRows")
    void everyDateOfTheSkippingRuleIsKeptAndNoMonthIsSkipped(CSVRecord row) {
        List<LocalDate> wanted = dates(row);
        var every = Every.months(monthsOf(row.get("rule")));
        LocalDate last = wanted.get(wanted.size() - 1);

        List<LocalDate> ours = IntStream.range(0, 200)
                .mapToObj(times -> every.after(start(row), times))
                .takeWhile(date -> !date.isAfter(last))
                .toList();

        assertThat(ours).containsAll(wanted);
        if (row.get("rule").contains("BYMONTHDAY=-1")) {
            assertThat(ours).isEqualTo(wanted);
        } else {
            assertThat(ours).hasSizeGreaterThan(wanted.size());
        }
    }

    /** Going a month forward and back again loses the day; so the code only ever counts forward from the first date. */
    @ParameterizedTest
    @MethodSource("thereAndBackRows")
    void monthsAreNeverCountedBackwards(CSVRecord row) {
        LocalDate clipped = Every.months(1).after(start(row), 1);

        assertThat(clipped.minusMonths(1)).isEqualTo(dates(row).get(0)).isNotEqualTo(start(row));
        assertThat(Every.months(1).after(start(row), 0)).isEqualTo(start(row));
    }

    /** A day on from a local time that a clock change takes away or doubles, as the due time of event work counts it. */
    @ParameterizedTest
    @MethodSource("zoneRows")
    void aDayOnThroughAClockChange(CSVRecord row) {
        String[] start = row.get("dtstart").split(" ");
        ZoneId zone = ZoneId.of(start[1]);
        Instant reported = LocalDateTime.parse(start[0]).atZone(zone).toInstant();

        Instant due = ZonesTest.event(TaskOrigin.WATER_INSIDE, zone, reported).dueAt();

        assertThat(due.atZone(zone).toOffsetDateTime()).isEqualTo(OffsetDateTime.parse(row.get("first_n")));
    }

    @Test
    void everyRowOfTheFileIsChecked() {
        long checked = Stream.of(
                        rfcRows(), anchoredJavaTimeRows(), chainedJavaTimeRows(), thereAndBackRows(), zoneRows())
                .mapToLong(Stream::count)
                .sum();

        assertThat(checked).isEqualTo(CheckValues.rows("recurrence.csv").size());
    }

    @Property
    void daysAgreeWithTheReferenceLibrary(
            @ForAll @IntRange(min = 0, max = 30000) int start, @ForAll @IntRange(min = 1, max = 400) int days) {
        LocalDate first = LocalDate.of(1990, 1, 1).plusDays(start);

        assertThat(series(Every.days(days), first, 12)).isEqualTo(reference("FREQ=DAILY;INTERVAL=" + days, first, 12));
    }

    @Property
    void monthsAgreeWithTheReferenceLibraryWhereNoMonthIsTooShort(
            @ForAll @IntRange(min = 0, max = 1000) int month,
            @ForAll @IntRange(min = 1, max = 28) int day,
            @ForAll @IntRange(min = 1, max = 36) int months) {
        LocalDate first = LocalDate.of(1990, 1, day).plusMonths(month);

        assertThat(series(Every.months(months), first, 12))
                .isEqualTo(reference("FREQ=MONTHLY;INTERVAL=" + months, first, 12));
    }

    @Property
    void monthEndsAgreeWithTheReferenceLibraryAskedForTheLastDay(
            @ForAll @IntRange(min = 0, max = 200) int year, @ForAll @IntRange(min = 1, max = 12) int months) {
        LocalDate first = LocalDate.of(1900 + year, 1, 31);

        assertThat(series(Every.months(months), first, 12))
                .isEqualTo(reference("FREQ=MONTHLY;BYMONTHDAY=-1;INTERVAL=" + months, first, 12));
    }

    @Test
    void textAndBackAgain() {
        assertThat(Every.parse("91 days")).isEqualTo(Every.days(91)).hasToString("91 days");
        assertThat(Every.parse("1 month")).isEqualTo(Every.months(1)).hasToString("1 month");
        assertThat(Every.months(4).longestDays()).isEqualTo(123);
        assertThat(Every.months(1).shortestDays()).isEqualTo(28);
    }

    static Stream<CSVRecord> rfcRows() {
        return rows("rfc_example", "rfc_skip_case");
    }

    static Stream<CSVRecord> plainRfcRows() {
        return rows("rfc_example")
                .filter(row -> PLAIN_RULE.matcher(row.get("rule")).matches());
    }

    static Stream<CSVRecord> anchoredJavaTimeRows() {
        return rows("java_time_clip_case")
                .filter(row -> FROM_ANCHOR.matcher(row.get("rule")).matches());
    }

    static Stream<CSVRecord> chainedJavaTimeRows() {
        return rows("java_time_clip_case").filter(row -> row.get("rule").contains("chained"));
    }

    static Stream<CSVRecord> thereAndBackRows() {
        return rows("java_time_clip_case").filter(row -> row.get("rule").contains("plusMonths(-1)"));
    }

    static Stream<CSVRecord> zoneRows() {
        return rows("java_time_zone_case");
    }

    static Stream<CSVRecord> skipRows() {
        return rows("rfc_skip_case");
    }

    private static Stream<CSVRecord> rows(String... kinds) {
        return CheckValues.rows("recurrence.csv").stream()
                .filter(row -> Arrays.asList(kinds).contains(row.get("kind")));
    }

    private static Every everyOf(CSVRecord row) {
        Matcher rule = FROM_ANCHOR.matcher(row.get("rule"));
        assertThat(rule.matches()).isTrue();
        int factor = rule.group(2).isEmpty() ? 1 : Integer.parseInt(rule.group(2));
        return switch (rule.group(1)) {
            case "Days" -> Every.days(factor);
            case "Months" -> Every.months(factor);
            default -> Every.months(12 * factor);
        };
    }

    private static int monthsOf(String rule) {
        if (rule.startsWith("FREQ=YEARLY")) {
            return 12;
        }
        return rule.contains("INTERVAL=3") ? 3 : 1;
    }

    private static Inspected inspectedOn(List<LocalDate> days) {
        return new Inspected(
                days.stream()
                        .map(day -> new DoneWork(TaskKind.INSPECTION, TaskOrigin.INTERVAL, day, null))
                        .toList(),
                null);
    }

    private static List<LocalDate> series(Every every, LocalDate first, int count) {
        return IntStream.range(0, count)
                .mapToObj(times -> every.after(first, times))
                .toList();
    }

    private static List<LocalDate> reference(String rule, LocalDate first, int count) {
        var recur = new Recur<LocalDate>(rule);
        LocalDate end = first.plusYears(count * 4L + 4);
        return recur.getDates(first, first, end).stream().limit(count).toList();
    }

    private static LocalDate start(CSVRecord row) {
        return LocalDate.parse(row.get("dtstart"));
    }

    private static List<LocalDate> dates(CSVRecord row) {
        return Arrays.stream(row.get("first_n").split(" "))
                .map(LocalDate::parse)
                .toList();
    }
}
