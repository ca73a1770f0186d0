package dev.lapwing.fleet;

import dev.lapwing.platform.FieldErrors;
import dev.lapwing.web.FoundingDepots;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.regex.Pattern;

@ApplicationScoped
class AddingDepots implements FoundingDepots {
    private static final Pattern CODE = Pattern.compile("[\\p{L}\\p{N}_-]{1,40}");
    private static final int LONGEST_NAME = 100;

    @Override
    @Transactional
    public void examine(NewDepot depot, FieldErrors errors) {
        if (errors.present(depot.code(), "code")
                && errors.check(
                        CODE.matcher(depot.code().strip()).matches(),
                        "code",
                        "must be 1 to 40 letters, digits, hyphens or underscores")) {
            errors.check(Depot.findById(depot.code().strip()) == null, "code", "is the code of a depot already");
        }
        if (errors.present(depot.name(), "name")) {
            errors.atMost(depot.name().strip(), LONGEST_NAME, "name");
        }
        if (errors.present(depot.zone(), "zone")) {
            errors.check(
                    ZoneId.getAvailableZoneIds().contains(depot.zone().strip()),
                    "zone",
                    "is not the name of a time zone, such as Europe/Madrid");
        }
        monthDay(depot.opens(), "opens", errors);
        monthDay(depot.closes(), "closes", errors);
    }

    @Override
    @Transactional
    public String found(NewDepot typed) {
        var depot = new Depot();
        depot.code = typed.code().strip();
        depot.name = typed.name().strip();
        depot.zone = typed.zone().strip();
        depot.seasonOpens = typed.opens().strip();
        depot.seasonCloses = typed.closes().strip();
        depot.persist();
        return depot.code;
    }

    private static void monthDay(String typed, String field, FieldErrors errors) {
        if (errors.present(typed, field)) {
            errors.check(isMonthDay(typed.strip()), field, "must be a month and a day, such as 04-01");
        }
    }

    private static boolean isMonthDay(String typed) {
        try {
            MonthDay.parse("--" + typed);
            return true;
        } catch (DateTimeException wrong) {
            return false;
        }
    }
}
