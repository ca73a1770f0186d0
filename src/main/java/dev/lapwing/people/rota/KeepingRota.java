package dev.lapwing.people.rota;

import dev.lapwing.people.Staff;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.DepotChoices;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.UUID;

/** Puts people on the rota and takes them off. */
@ApplicationScoped
public class KeepingRota {
    private static final int MOST_PLACES = 9;
    private static final int LONGEST_WHY = 200;

    /** A turn as sent; weekday 1 is Monday, times are HH:mm, the place counts from 1. */
    public record NewTurn(Integer weekday, String starts, String ends, String username, Integer place) {}

    /** An absence as sent; dates are ISO 8601 and both belong to it. */
    public record NewAbsence(String username, String from, String until, String why) {}

    /** A swap as sent. */
    public record NewSwap(String date, String giver, String taker) {}

    @Inject
    DepotChoices depots;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    @Transactional
    public StoredTurn add(String depot, NewTurn asked) {
        requireDepot(depot);
        var errors = new FieldErrors();
        errors.check(
                asked.weekday() != null && asked.weekday() >= 1 && asked.weekday() <= 7,
                "weekday",
                "must be from 1 (Monday) to 7 (Sunday)");
        LocalTime starts = time(errors, asked.starts(), "starts");
        LocalTime ends = time(errors, asked.ends(), "ends");
        int place = asked.place() == null ? 1 : asked.place();
        errors.check(place >= 1 && place <= MOST_PLACES, "place", "must be from 1 to " + MOST_PLACES);
        requirePerson(errors, depot, asked.username(), "username");
        errors.refuseIfAny();
        var turn = new StoredTurn();
        turn.id = ids.next();
        turn.depot = depot;
        turn.weekday = asked.weekday();
        turn.starts = starts.toString();
        turn.ends = ends.toString();
        turn.username = asked.username();
        turn.place = place;
        if (StoredTurn.at(depot).stream().anyMatch(other -> sameStart(other, turn))) {
            throw Refused.invalid("username", "has a turn that starts then already");
        }
        turn.persist();
        return turn;
    }

    private static boolean sameStart(StoredTurn one, StoredTurn other) {
        return one.weekday == other.weekday && one.starts.equals(other.starts) && one.username.equals(other.username);
    }

    @Transactional
    public StoredAbsence add(String depot, NewAbsence asked) {
        requireDepot(depot);
        var errors = new FieldErrors();
        requirePerson(errors, depot, asked.username(), "username");
        LocalDate from = date(errors, asked.from(), "from");
        LocalDate until = date(errors, asked.until(), "until");
        if (from != null && until != null) {
            errors.check(!until.isBefore(from), "until", "is before the first day");
        }
        errors.atMost(asked.why(), LONGEST_WHY, "why");
        errors.refuseIfAny();
        var absence = new StoredAbsence();
        absence.id = ids.next();
        absence.username = asked.username();
        absence.from = from;
        absence.until = until;
        absence.why = asked.why() == null || asked.why().isBlank()
                ? null
                : asked.why().strip();
        absence.persist();
        return absence;
    }

    @Transactional
    public StoredSwap add(String depot, NewSwap asked, String by) {
        requireDepot(depot);
        var errors = new FieldErrors();
        LocalDate date = date(errors, asked.date(), "date");
        requirePerson(errors, depot, asked.giver(), "giver");
        requirePerson(errors, depot, asked.taker(), "taker");
        errors.check(
                asked.giver() == null || !asked.giver().equals(asked.taker()),
                "taker",
                "is the one who gives the turn");
        errors.refuseIfAny();
        if (StoredSwap.count("depot = ?1 and date = ?2 and giver = ?3", depot, date, asked.giver()) > 0) {
            throw Refused.invalid("giver", "has given the turns of that day away already");
        }
        var swap = new StoredSwap();
        swap.id = ids.next();
        swap.depot = depot;
        swap.date = date;
        swap.giver = asked.giver();
        swap.taker = asked.taker();
        swap.notedBy = by;
        swap.notedAt = clock.instant();
        swap.persist();
        return swap;
    }

    @Transactional
    void removeTurn(UUID id) {
        remove(StoredTurn.findById(id), "turn " + id);
    }

    @Transactional
    void removeAbsence(UUID id) {
        remove(StoredAbsence.findById(id), "absence " + id);
    }

    @Transactional
    void removeSwap(UUID id) {
        remove(StoredSwap.findById(id), "swap " + id);
    }

    DepotChoices.Choice requireDepot(String code) {
        return depots.all().stream()
                .filter(depot -> depot.code().equals(code))
                .findFirst()
                .orElseThrow(() -> Refused.notFound("depot " + code));
    }

    private static void remove(PanacheEntityBase stored, String what) {
        if (stored == null) {
            throw Refused.notFound(what);
        }
        stored.delete();
    }

    private static void requirePerson(FieldErrors errors, String depot, String username, String field) {
        if (!errors.present(username, field)) {
            return;
        }
        boolean known = Staff.activeByName(username)
                .filter(staff -> staff.depots.contains(depot))
                .isPresent();
        errors.check(known, field, "is not the sign-in name of somebody at this depot");
    }

    private static LocalTime time(FieldErrors errors, String text, String field) {
        errors.present(text, field);
        return errors.read(
                text,
                typed -> LocalTime.parse(typed).truncatedTo(ChronoUnit.MINUTES),
                field,
                "must be a time such as 07:30");
    }

    private static LocalDate date(FieldErrors errors, String text, String field) {
        errors.present(text, field);
        return errors.read(text, LocalDate::parse, field, "must be a date such as 2026-11-25");
    }
}
