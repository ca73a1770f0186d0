package dev.lapwing.record.web;

import dev.lapwing.fleet.Unit;
import dev.lapwing.jobs.application.RoofPlans;
import dev.lapwing.jobs.domain.roof.Point;
import dev.lapwing.jobs.domain.roof.RoofDrawing;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import dev.lapwing.jobs.storage.RecordedFinding;
import dev.lapwing.jobs.web.RoofDrawings;
import dev.lapwing.photos.web.PhotoShelf;
import dev.lapwing.photos.web.ShownPhoto;
import dev.lapwing.returns.storage.ReturnReport;
import dev.lapwing.returns.storage.RoofMark;
import dev.lapwing.web.Dates;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What the page of a unit shows of its roof: everything that was found on it over time, and its photos by day. */
@Named("unitRoof")
@ApplicationScoped
public class UnitRoof {
    private static final int MOST_PHOTOS = 60;
    private static final int MOST_MARKS = 120;

    @Inject
    RoofPlans plans;

    @Inject
    PhotoShelf shelf;

    /**
     * The roof over time.
     *
     * @param days the days on which something was found, the oldest first
     */
    public record Story(RoofDrawing drawing, List<Day> days) {}

    /** A day in ISO form and in words. */
    public record Day(String iso, String words) {}

    /** Something found, with the moment it was written down. */
    private record Noticed(Instant at, RoofDrawing.Found found) {}

    /** The photos of one day. */
    public record PhotoDay(String words, List<ShownPhoto> photos) {}

    /** Returns what the desk marked and the techs found, the oldest first; of very many the newest. */
    @Transactional
    public Story story(String number) {
        Unit unit = Unit.require(number);
        RoofPlan plan = plans.of(unit);
        ZoneId zone = unit.depot.zoneId();
        List<Noticed> noticed = new ArrayList<>();
        RecordedFinding.ofUnit(unit.id)
                .forEach(one -> noticed.add(new Noticed(one.recordedAt, RoofDrawings.found(one, plan, zone))));
        List<ReturnReport> reports = ReturnReport.list("unit.id = ?1 and size(marks) > 0", unit.id);
        for (ReturnReport report : reports) {
            LocalDate day = report.filedAt.atZone(zone).toLocalDate();
            report.marks.forEach(mark -> noticed.add(new Noticed(report.filedAt, marked(mark, plan, day))));
        }
        List<RoofDrawing.Found> newest = noticed.stream()
                .sorted(Comparator.comparing(Noticed::at))
                .skip(Math.max(0, noticed.size() - MOST_MARKS))
                .map(Noticed::found)
                .toList();
        return new Story(RoofDrawing.of(plan, newest), days(newest));
    }

    private static RoofDrawing.Found marked(RoofMark mark, RoofPlan plan, LocalDate day) {
        var point = new Point(mark.x, mark.y);
        return new RoofDrawing.Found(
                point, day.toString(), mark.kind + " in " + plan.zoneAt(point).name() + ", marked by the desk");
    }

    private static List<Day> days(List<RoofDrawing.Found> found) {
        return found.stream()
                .map(RoofDrawing.Found::day)
                .distinct()
                .map(day -> new Day(day, Dates.day(LocalDate.parse(day))))
                .toList();
    }

    /** Returns the newest photos by day, the newest first. */
    @Transactional
    public List<PhotoDay> photos(String number) {
        TreeMap<LocalDate, List<ShownPhoto>> byDay = shelf.ofUnit(Unit.require(number).id, MOST_PHOTOS).stream()
                .collect(Collectors.groupingBy(
                        ShownPhoto::day, () -> new TreeMap<>(Comparator.reverseOrder()), Collectors.toList()));
        return byDay.entrySet().stream()
                .map(day -> new PhotoDay(Dates.day(day.getKey()), day.getValue()))
                .toList();
    }
}
