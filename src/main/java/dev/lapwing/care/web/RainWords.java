package dev.lapwing.care.web;

import dev.lapwing.care.RainOutlook;
import dev.lapwing.web.Dates;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

/** Says how much time is left before the next rain. */
final class RainWords {
    private RainWords() {}

    /** Returns words that begin a sentence, such as "Rain likely in 3 h, at Wed 25 Nov 2026, 18:00"; null without a forecast. */
    static String of(RainOutlook.Outlook outlook, ZoneId zone, Instant now) {
        if (outlook == null) {
            return null;
        }
        if (outlook.rainAt() == null) {
            return "No rain likely before " + Dates.time(outlook.until(), zone);
        }
        Duration left = Duration.between(now, outlook.rainAt());
        if (left.toMinutes() < 30) {
            return "Rain likely now";
        }
        String wait = left.toHours() < 1 ? left.toMinutes() + " min" : Math.round(left.toMinutes() / 60.0) + " h";
        return "Rain likely in " + wait + ", at " + Dates.time(outlook.rainAt(), zone);
    }
}
