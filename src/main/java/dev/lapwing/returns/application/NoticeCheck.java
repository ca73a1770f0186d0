package dev.lapwing.returns.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.FieldErrors;
import java.time.Instant;
import java.util.List;
import java.util.Set;

/** Checks what the desk sends, and says all that is wrong with it at once. */
final class NoticeCheck {
    static final int LONGEST_NOTE = 20_000;
    private static final int MOST_MARKS = 50;
    private static final int HIGHEST_ODOMETER = 5_000_000;
    private static final Set<String> LANGUAGES = Set.of("en", "es", "fr");

    private final FieldErrors errors = new FieldErrors();

    private NoticeCheck() {}

    /** Returns the unit, or refuses the notice with every wrong field named. */
    static Unit check(ReturnNotice notice, Instant now) {
        return new NoticeCheck().run(notice, now);
    }

    private Unit run(ReturnNotice notice, Instant now) {
        Unit unit = unit(notice.unit());
        if (errors.present(notice.returnedAt(), "returnedAt")) {
            errors.check(!notice.returnedAt().toInstant().isAfter(now), "returnedAt", "lies in the future");
        }
        note(notice);
        marks(notice.marks());
        errors.check(
                notice.language() == null || LANGUAGES.contains(notice.language()),
                "language",
                "must be en, es or fr, or left out");
        Integer odometer = notice.odometerKm();
        errors.check(
                odometer == null || odometer >= 0 && odometer <= HIGHEST_ODOMETER,
                "odometerKm",
                "must be from 0 to " + HIGHEST_ODOMETER);
        errors.atMost(notice.reportedBy(), 100, "reportedBy");
        errors.refuseIfAny();
        return unit;
    }

    private Unit unit(String number) {
        if (!errors.present(number, "unit")) {
            return null;
        }
        Unit unit = Unit.byNumber(number.strip()).orElse(null);
        errors.check(unit != null, "unit", "is not the number of a unit");
        return unit;
    }

    private void note(ReturnNotice notice) {
        boolean marked = notice.marks() != null && !notice.marks().isEmpty();
        boolean written = notice.note() != null && !notice.note().isBlank();
        errors.check(written || marked, "note", "is required when nothing is marked on the roof plan");
        errors.atMost(notice.note(), LONGEST_NOTE, "note");
        errors.check(notice.note() == null || notice.note().indexOf('\0') < 0, "note", "holds a NUL character");
    }

    private void marks(List<ReturnNotice.Mark> marks) {
        if (marks == null || !errors.check(marks.size() <= MOST_MARKS, "marks", "are more than " + MOST_MARKS)) {
            return;
        }
        for (int i = 0; i < marks.size(); i++) {
            String at = "marks[" + i + "]";
            ReturnNotice.Mark mark = marks.get(i);
            if (errors.present(mark, at)) {
                share(mark.x(), at + ".x");
                share(mark.y(), at + ".y");
                if (errors.present(mark.kind(), at + ".kind")) {
                    errors.atMost(mark.kind(), 40, at + ".kind");
                }
            }
        }
    }

    private void share(Double value, String field) {
        if (errors.present(value, field)) {
            errors.check(value >= 0 && value <= 1, field, "must be from 0 to 1");
        }
    }
}
