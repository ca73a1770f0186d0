package dev.lapwing.alerts.rain;

import dev.lapwing.fleet.Depot;
import dev.lapwing.platform.FieldErrors;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;

/** Takes in what a coordinator knows of the next rain. */
@ApplicationScoped
class RainEntry {
    private static final int MOST_HOURS = 72;

    /**
     * What is sent.
     *
     * @param rainAt when rain is expected, with offset, or local to the depot without; empty when none is
     * @param holdsHours for how many hours from now this goes before the feed
     */
    record Wanted(String rainAt, Integer holdsHours) {}

    @Inject
    Clock clock;

    @Transactional
    RainByHand enter(String depotCode, Wanted wanted, String by) {
        Depot depot = Depot.require(depotCode);
        Instant now = clock.instant();
        var errors = new FieldErrors();
        Instant rain = errors.read(
                wanted.rainAt(),
                text -> moment(text.strip(), depot.zoneId()),
                "rainAt",
                "must be a time such as 2026-11-25T18:30");
        int hours = wanted.holdsHours() == null ? 12 : wanted.holdsHours();
        errors.check(hours >= 1 && hours <= MOST_HOURS, "holdsHours", "must be from 1 to " + MOST_HOURS);
        if (rain != null) {
            errors.check(!rain.isBefore(now.minus(Duration.ofHours(1))), "rainAt", "lies in the past");
            errors.check(!rain.isAfter(now.plus(Duration.ofDays(14))), "rainAt", "is more than two weeks ahead");
        }
        errors.refuseIfAny();
        RainByHand entry = RainByHand.findById(depotCode);
        if (entry == null) {
            entry = new RainByHand();
            entry.depot = depotCode;
        }
        entry.rainAt = rain;
        entry.holdsUntil = now.plus(Duration.ofHours(hours));
        entry.enteredBy = by;
        entry.enteredAt = now;
        entry.persist();
        return entry;
    }

    /** Lets the feed count again. */
    @Transactional
    void withdraw(String depotCode) {
        Depot.require(depotCode);
        RainByHand.deleteById(depotCode);
    }

    /** Reads a time with offset, or one local to the zone without. */
    private static Instant moment(String text, ZoneId zone) {
        try {
            return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeException withoutOffset) {
            return LocalDateTime.parse(text).atZone(zone).toInstant();
        }
    }
}
