package dev.lapwing.fleet;

import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.regex.Pattern;

/** Adds depots and changes what is known of them. */
@ApplicationScoped
class KeepingDepots {
    private static final Pattern CODE = Pattern.compile("[a-z0-9](?:[a-z0-9-]{0,38}[a-z0-9])?");
    private static final Pattern MONTH_DAY = Pattern.compile("\\d\\d-\\d\\d");
    private static final Pattern MAIL = Pattern.compile("[^\\s@<>,;\"]{1,64}@[^\\s@<>,;\"]+\\.[^\\s@<>,;\"]+");
    private static final int LONGEST_MAIL = 254;

    @Inject
    Event<DepotSaved> saved;

    /** Adds a depot; refuses a code that is taken. */
    @Transactional
    Depot add(DepotRequest request) {
        var errors = new FieldErrors();
        if (errors.present(request.code(), "code")) {
            errors.check(
                    CODE.matcher(request.code()).matches(),
                    "code",
                    "must be 1 to 40 small letters and digits, with hyphens between them");
        }
        var depot = new Depot();
        depot.code = request.code();
        fill(depot, request, errors);
        if (Depot.findById(depot.code) != null) {
            throw Refused.conflict("There is a depot " + depot.code + " already");
        }
        depot.persist();
        tell(depot);
        return depot;
    }

    /** Replaces what is known of a depot. */
    @Transactional
    Depot change(String code, DepotRequest request) {
        Depot depot = Depot.findById(code);
        if (depot == null) {
            throw Refused.notFound("depot " + code);
        }
        var errors = new FieldErrors();
        errors.check(
                request.code() == null || request.code().equals(code), "code", "is " + code + " and cannot be changed");
        fill(depot, request, errors);
        tell(depot);
        return depot;
    }

    private void tell(Depot depot) {
        depot.flush();
        saved.fire(new DepotSaved(depot.code, depot.seasonOpens, depot.seasonCloses));
    }

    private static void fill(Depot depot, DepotRequest request, FieldErrors errors) {
        if (errors.present(request.name(), "name")) {
            errors.atMost(request.name(), 100, "name");
        }
        if (errors.present(request.zone(), "zone")) {
            boolean known = ZoneId.getAvailableZoneIds().contains(request.zone());
            errors.check(known, "zone", "is not the IANA name of a time zone, such as America/Phoenix");
        }
        if (errors.present(request.season(), "season")) {
            monthDay(request.season().opens(), "season.opens", errors);
            monthDay(request.season().closes(), "season.closes", errors);
        }
        mail(request.deskMail(), errors);
        errors.refuseIfAny();
        depot.name = request.name().strip();
        depot.zone = request.zone();
        depot.seasonOpens = request.season().opens();
        depot.seasonCloses = request.season().closes();
        depot.deskMail = blank(request.deskMail()) ? null : request.deskMail().strip();
    }

    private static void monthDay(String text, String field, FieldErrors errors) {
        if (errors.present(text, field)) {
            errors.check(isMonthDay(text), field, "is not a day of the year, MM-dd");
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

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
