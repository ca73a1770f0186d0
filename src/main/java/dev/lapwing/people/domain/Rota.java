package dev.lapwing.people.domain;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The duty rota of one depot: weekly turns, less absences, with swaps. */
public final class Rota {
    /** Someone on duty, for as long as the turn lasts. */
    public record Duty(String username, int place, Span span) {}

    private final ZoneId zone;
    private final List<DutyTurn> turns;
    private final List<Absence> absences;
    private final List<Swap> swaps;

    public Rota(ZoneId zone, List<DutyTurn> turns, List<Absence> absences, List<Swap> swaps) {
        this.zone = zone;
        this.turns = List.copyOf(turns);
        this.absences = List.copyOf(absences);
        this.swaps = List.copyOf(swaps);
    }

    /** Returns whether anybody was ever put on it. A depot without a rota has no gaps; it has no duty at all. */
    public boolean kept() {
        return !turns.isEmpty();
    }

    /** Returns who is on duty, in the order in which they are called; a name comes once. */
    public List<String> onDuty(Instant at) {
        LocalDate today = at.atZone(zone).toLocalDate();
        return duties(today.minusDays(1), today).stream()
                .filter(duty -> duty.span().covers(at))
                .map(Duty::username)
                .distinct()
                .toList();
    }

    /** Returns the duties that begin on these days, the first place first, then the earlier turn. */
    public List<Duty> duties(LocalDate from, LocalDate until) {
        List<Duty> duties = new ArrayList<>();
        for (LocalDate date = from; !date.isAfter(until); date = date.plusDays(1)) {
            for (DutyTurn turn : turns) {
                String username = standIn(turn.username(), date);
                if (turn.weekday() == date.getDayOfWeek() && !absent(username, date)) {
                    duties.add(new Duty(username, turn.place(), turn.on(date, zone)));
                }
            }
        }
        duties.sort(Comparator.comparingInt(Duty::place)
                .thenComparing(duty -> duty.span().from())
                .thenComparing(Duty::username));
        return duties;
    }

    /** Returns the spans within these instants in which nobody is on duty, in order; none when no rota is kept. */
    public List<Span> gaps(Instant from, Instant until) {
        if (!kept()) {
            return List.of();
        }
        LocalDate first = from.atZone(zone).toLocalDate().minusDays(1);
        LocalDate last = until.atZone(zone).toLocalDate();
        List<Span> manned = duties(first, last).stream()
                .map(Duty::span)
                .sorted(Comparator.comparing(Span::from))
                .toList();
        List<Span> gaps = new ArrayList<>();
        Instant covered = from;
        for (Span span : manned) {
            if (!span.from().isBefore(until)) {
                break;
            }
            if (span.from().isAfter(covered)) {
                gaps.add(new Span(covered, span.from()));
            }
            covered = span.until().isAfter(covered) ? span.until() : covered;
        }
        if (covered.isBefore(until)) {
            gaps.add(new Span(covered, until));
        }
        return gaps;
    }

    private String standIn(String username, LocalDate date) {
        return swaps.stream()
                .filter(swap -> swap.date().equals(date) && swap.giver().equals(username))
                .map(Swap::taker)
                .findFirst()
                .orElse(username);
    }

    private boolean absent(String username, LocalDate date) {
        return absences.stream().anyMatch(absence -> absence.covers(username, date));
    }
}
