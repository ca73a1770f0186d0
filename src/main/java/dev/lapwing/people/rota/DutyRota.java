package dev.lapwing.people.rota;

import dev.lapwing.people.Staff;
import dev.lapwing.people.domain.Rota;
import dev.lapwing.people.domain.Span;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Answers who is on duty at a depot, and when nobody is. */
@ApplicationScoped
public class DutyRota {

    /** Returns the active people on duty, in the order in which they are called; empty when nobody is or no rota is kept. */
    @Transactional
    public List<Staff> onDuty(String depot, ZoneId zone, Instant at) {
        return rota(depot, zone, at).onDuty(at).stream()
                .map(Staff::activeByName)
                .flatMap(Optional::stream)
                .toList();
    }

    /** Returns the spans from now on in which nobody is on duty; none when no rota is kept. */
    @Transactional
    public List<Span> gaps(String depot, ZoneId zone, Instant now, Duration ahead) {
        return rota(depot, zone, now).gaps(now, now.plus(ahead));
    }

    Rota rota(String depot, ZoneId zone, Instant now) {
        List<StoredTurn> stored = StoredTurn.at(depot);
        // A turn that began yesterday may still run.
        LocalDate since = now.atZone(zone).toLocalDate().minusDays(1);
        List<StoredSwap> swaps = StoredSwap.at(depot, since);
        Set<String> people = stored.stream().map(turn -> turn.username).collect(Collectors.toSet());
        swaps.forEach(swap -> people.add(swap.taker));
        return new Rota(
                zone,
                stored.stream().map(StoredTurn::turn).toList(),
                StoredAbsence.of(people, since).stream()
                        .map(StoredAbsence::absence)
                        .toList(),
                swaps.stream().map(StoredSwap::swap).toList());
    }
}
