package dev.lapwing.alerts.domain.rain;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is expected to fall at one place.
 *
 * @param issued when the forecast was made
 * @param spells spans with what falls in each, in order of time
 */
public record Forecast(Instant issued, List<Spell> spells) {
    /**
     * One span of the forecast.
     *
     * @param chance of any rain in it, from 0 to 1; null when the feed does not tell
     * @param millimetres what falls in the whole span; null when the feed does not tell
     */
    public record Spell(Instant from, Duration length, Double chance, Double millimetres) {
        Instant until() {
            return from.plus(length);
        }
    }

    /**
     * When a spell counts as likely rain.
     *
     * @param chance at or above this chance
     * @param millimetresAnHour at or above this much in each hour, on the average of the spell
     */
    public record Likely(double chance, double millimetresAnHour) {
        boolean rainIn(Spell spell) {
            double hours = spell.length().toSeconds() / 3600.0;
            return spell.chance() != null && spell.chance() >= chance
                    || spell.millimetres() != null && spell.millimetres() / hours >= millimetresAnHour;
        }
    }

    public Forecast {
        spells = spells.stream().sorted(Comparator.comparing(Spell::from)).toList();
    }

    /** Returns when rain is likely to begin, not before now; empty when none is likely as far as the forecast goes. */
    public Optional<Instant> rainAt(Instant now, Likely likely) {
        return spells.stream()
                .filter(spell -> spell.until().isAfter(now))
                .filter(likely::rainIn)
                .map(spell -> spell.from().isBefore(now) ? now : spell.from())
                .findFirst();
    }

    /** Returns until when the forecast tells anything; the time of issue when it has no spells. */
    public Instant reaches() {
        return spells.stream().map(Spell::until).max(Instant::compareTo).orElse(issued);
    }
}
