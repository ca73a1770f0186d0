package dev.lapwing.fleet;

import dev.lapwing.platform.FieldErrors;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.regex.Pattern;

/** What holds for the fields of every depot, however it is sent. */
final class DepotFields {
    private static final Pattern CODE = Pattern.compile("[a-z0-9](?:[a-z0-9-]{0,38}[a-z0-9])?");
    private static final Pattern MONTH_DAY = Pattern.compile("\\d\\d-\\d\\d");
    private static final Pattern MAIL = Pattern.compile("[^\\s@<>,;\"]{1,64}@[^\\s@<>,;\"]+\\.[^\\s@<>,;\"]+");
    private static final int LONGEST_MAIL = 254;

    private DepotFields() {}

    /** Notes what is wrong. */
    static void check(DepotRequest request, FieldErrors errors) {
        if (errors.present(request.code(), "code")) {
            errors.check(
                    CODE.matcher(request.code()).matches(),
                    "code",
                    "must be 1 to 40 small letters and digits, with hyphens between them");
        }
        if (errors.present(request.name(), "name")) {
            errors.atMost(request.name(), 100, "name");
            errors.check(request.name().indexOf('\0') < 0, "name", "holds a NUL character");
        }
        if (errors.present(request.zone(), "zone")) {
            boolean known = ZoneId.getAvailableZoneIds().contains(request.zone());
            errors.check(known, "zone", "is not the name of a time zone, such as America/Phoenix");
        }
        if (errors.present(request.season(), "season")) {
            season(request.season(), errors);
        }
        mail(request.deskMail(), errors);
    }

    /** Fills in what was checked. */
    static void fill(Depot depot, DepotRequest request) {
        depot.name = request.name().strip();
        depot.zone = request.zone();
        depot.seasonOpens = request.season().opens();
        depot.seasonCloses = request.season().closes();
        depot.deskMail = blank(request.deskMail()) ? null : request.deskMail().strip();
    }

    /** Notes what is wrong with the days of a season. */
    static void season(DepotRequest.SeasonDays season, FieldErrors errors) {
        monthDay(season.opens(), "season.opens", errors);
        monthDay(season.closes(), "season.closes", errors);
    }

    private static void monthDay(String text, String field, FieldErrors errors) {
        if (errors.present(text, field)) {
            errors.check(isMonthDay(text), field, "must be a month and a day, such as 04-01");
        }
    }

    private static boolean isMonthDay(String text) {
        try {
            return MONTH_DAY.matcher(text).matches() && MonthDay.parse("--" + text) != null;
        } catch (DateTimeException noSuchDay) {
            return false;
        }
    }

    private static void mail(String address, FieldErrors errors) {
        if (!blank(address)) {
            errors.atMost(address, LONGEST_MAIL, "deskMail");
            errors.check(MAIL.matcher(address.strip()).matches(), "deskMail", "is not a mail address");
        }
    }

    static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
