package dev.lapwing.returns.web;

import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Secrets;
import dev.lapwing.returns.RoofPlace;
import dev.lapwing.returns.application.ReturnNotice;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;

/** The return form as typed. Nothing is lost when it is shown again. */
public class DeskForm {
    static final String NOTHING_TOUCHED = "Nothing touched";

    @RestForm
    String key;

    @RestForm
    String unit;

    @RestForm
    String returnedAt;

    @RestForm
    String note;

    @RestForm
    String odometer;

    @RestForm
    String reportedBy;

    @RestForm
    List<String> markAt;

    @RestForm
    List<String> markKind;

    @RestForm
    String place;

    @RestForm
    String placeKind;

    /** Set by the button that files a return on which nothing touched the roof. */
    @RestForm
    String nothing;

    /** One mark as the form carries it. */
    public record TypedMark(String at, String kind) {}

    /** Reads the fields that are not texts; what cannot be read is noted. */
    ReturnNotice notice(Instant now, FieldErrors errors) {
        String words = note == null ? "" : note;
        if (nothing != null) {
            errors.check(
                    words.isBlank() && marks().isEmpty() && blank(placeKind),
                    "note",
                    "says more than \"nothing touched\": send it with the other button, or clear it");
            words = NOTHING_TOUCHED;
        }
        return new ReturnNotice(
                unit, time(now, errors), words, null, wholeNumber(errors), readMarks(errors), nullIfBlank(reportedBy));
    }

    /** Reads the local time of the unit's depot; an empty field means now. */
    private OffsetDateTime time(Instant now, FieldErrors errors) {
        if (blank(returnedAt)) {
            return now.atOffset(ZoneOffset.UTC);
        }
        try {
            return LocalDateTime.parse(returnedAt.strip()).atZone(zone()).toOffsetDateTime();
        } catch (DateTimeParseException wrong) {
            errors.check(false, "returnedAt", "is not a date with a time");
            return now.atOffset(ZoneOffset.UTC);
        }
    }

    private ZoneId zone() {
        Optional<Unit> known = blank(unit) ? Optional.empty() : Unit.byNumber(unit.strip());
        return known.map(found -> found.depot.zoneId()).orElse(ZoneOffset.UTC);
    }

    private Integer wholeNumber(FieldErrors errors) {
        if (blank(odometer)) {
            return null;
        }
        try {
            return Integer.valueOf(odometer.replaceAll("[\\s.,]", ""));
        } catch (NumberFormatException wrong) {
            errors.check(false, "odometerKm", "is not a whole number");
            return null;
        }
    }

    private List<ReturnNotice.Mark> readMarks(FieldErrors errors) {
        List<ReturnNotice.Mark> read = new ArrayList<>();
        for (TypedMark mark : marks()) {
            point(mark, errors).ifPresent(read::add);
        }
        if (!blank(placeKind)) {
            errors.word(RoofPlace.class, place, "marks")
                    .ifPresentOrElse(
                            where -> read.add(new ReturnNotice.Mark(where.x(), where.y(), placeKind)),
                            () -> errors.check(!blank(place), "marks", "need a place"));
        }
        return read;
    }

    private static Optional<ReturnNotice.Mark> point(TypedMark mark, FieldErrors errors) {
        try {
            String[] xy = mark.at().split(",", 2);
            return Optional.of(new ReturnNotice.Mark(Double.valueOf(xy[0]), Double.valueOf(xy[1]), mark.kind()));
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException wrong) {
            errors.check(false, "marks", "hold a place that is not on the plan");
            return Optional.empty();
        }
    }

    public List<TypedMark> marks() {
        List<TypedMark> marks = new ArrayList<>();
        for (int i = 0; markAt != null && i < markAt.size(); i++) {
            String kind = markKind != null && i < markKind.size() ? markKind.get(i) : "";
            marks.add(new TypedMark(markAt.get(i), kind));
        }
        return marks;
    }

    /** Returns what tells this form from another one that came with the same key. */
    String fingerprint() {
        List<Object> all = new ArrayList<>();
        for (String text : new String[] {unit, returnedAt, note, odometer, reportedBy, place, placeKind, nothing}) {
            all.add(text == null ? "" : text.length() + ":" + text);
        }
        all.add(marks());
        return Secrets.hash("desk form " + all);
    }

    public String key() {
        return key;
    }

    public String unit() {
        return unit;
    }

    public String returnedAt() {
        return returnedAt;
    }

    public String note() {
        return note;
    }

    public String odometer() {
        return odometer;
    }

    public String reportedBy() {
        return reportedBy;
    }

    public String place() {
        return place;
    }

    public String placeKind() {
        return placeKind;
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }

    private static String nullIfBlank(String text) {
        return blank(text) ? null : text.strip();
    }
}
