package dev.lapwing.people.rota;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.people.Staff;
import dev.lapwing.people.domain.Span;
import dev.lapwing.web.DepotChoices;
import dev.lapwing.web.PersonNames;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

/** Gathers the rota of a depot, as the endpoint answers it and the page shows it. */
@ApplicationScoped
class RotaView {
    /** How far ahead gaps are looked for. */
    static final Duration AHEAD = Duration.ofDays(28);

    record Person(String username, String name) {}

    record Turn(UUID id, int weekday, String starts, String ends, String username, String name, int place) {}

    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Away(UUID id, String username, String name, LocalDate from, LocalDate until, String why) {}

    record Swapped(UUID id, LocalDate date, String giver, String giverName, String taker, String takerName) {}

    record Gap(OffsetDateTime from, OffsetDateTime until) {}

    /** @param now who is on duty, in the order in which they are called */
    record Answer(
            String depot,
            boolean kept,
            List<Person> now,
            List<Turn> turns,
            List<Away> absences,
            List<Swapped> swaps,
            List<Gap> gaps) {}

    @Inject
    DutyRota duty;

    @Inject
    PersonNames names;

    @Inject
    Clock clock;

    @Transactional
    Answer of(DepotChoices.Choice depot) {
        Instant now = clock.instant();
        LocalDate today = now.atZone(depot.zone()).toLocalDate();
        List<StoredTurn> turns = StoredTurn.at(depot.code());
        List<String> people = Staff.atDepot(depot.code()).stream()
                .map(staff -> staff.username)
                .toList();
        return new Answer(
                depot.code(),
                !turns.isEmpty(),
                duty.onDuty(depot.code(), depot.zone(), now).stream()
                        .map(staff -> new Person(staff.username, staff.fullName))
                        .toList(),
                turns.stream().map(this::turn).toList(),
                StoredAbsence.of(people, today).stream().map(this::away).toList(),
                StoredSwap.at(depot.code(), today).stream().map(this::swapped).toList(),
                duty.gaps(depot.code(), depot.zone(), now, AHEAD).stream()
                        .map(span -> gap(span, depot.zone()))
                        .toList());
    }

    Turn turn(StoredTurn turn) {
        return new Turn(
                turn.id, turn.weekday, turn.starts, turn.ends, turn.username, names.of(turn.username), turn.place);
    }

    Away away(StoredAbsence absence) {
        return new Away(
                absence.id, absence.username, names.of(absence.username), absence.from, absence.until, absence.why);
    }

    Swapped swapped(StoredSwap swap) {
        return new Swapped(swap.id, swap.date, swap.giver, names.of(swap.giver), swap.taker, names.of(swap.taker));
    }

    private static Gap gap(Span span, ZoneId zone) {
        return new Gap(
                span.from().atZone(zone).toOffsetDateTime(),
                span.until().atZone(zone).toOffsetDateTime());
    }
}
