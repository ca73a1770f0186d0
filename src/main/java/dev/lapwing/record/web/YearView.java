package dev.lapwing.record.web;

import dev.lapwing.use.domain.DayUse;
import dev.lapwing.use.domain.YearStrip;
import dev.lapwing.web.Dates;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A year of a unit as its page draws it, one point wide for each day, and says it in words.
 *
 * @param bars what it did, by day
 * @param seasons the days in season
 * @param legend each use with its days; the season last
 * @param marks days along the strip, evenly apart, the first and last included
 * @param runs the same in words, oldest first
 */
record YearView(List<Bar> bars, List<Bar> seasons, List<Key> legend, List<String> marks, List<String> runs) {
    private static final int MARKS = 5;

    /** Days in a row, from the left; the kind is a word for the look. */
    record Bar(int x, int width, String kind) {}

    /** One use with the days it had. */
    record Key(String kind, String words) {}

    static YearView of(YearStrip strip) {
        List<Bar> bars = new ArrayList<>();
        List<Bar> seasons = new ArrayList<>();
        List<String> runs = new ArrayList<>();
        int x = 0;
        for (YearStrip.Run run : strip.runs()) {
            bars.add(new Bar(x, run.days(), kind(run.use())));
            if (run.inSeason()) {
                seasons.add(new Bar(x, run.days(), "season"));
            }
            runs.add(words(run));
            x += run.days();
        }
        return new YearView(bars, seasons, legend(strip), marks(strip), runs);
    }

    private static String kind(DayUse use) {
        return use.name().toLowerCase(Locale.ROOT);
    }

    private static String words(YearStrip.Run run) {
        String until = run.days() == 1 ? "" : " to " + Dates.day(run.first().plusDays(run.days() - 1L));
        return Dates.day(run.first()) + until + ": " + run.use().word() + ", " + days(run.days())
                + (run.inSeason() ? ", in season" : "");
    }

    private static List<Key> legend(YearStrip strip) {
        List<Key> legend = new ArrayList<>();
        for (DayUse use : DayUse.values()) {
            int days = strip.runs().stream()
                    .filter(run -> run.use() == use)
                    .mapToInt(YearStrip.Run::days)
                    .sum();
            if (days > 0) {
                legend.add(new Key(kind(use), use.word() + " " + days(days)));
            }
        }
        int season = strip.runs().stream()
                .filter(YearStrip.Run::inSeason)
                .mapToInt(YearStrip.Run::days)
                .sum();
        legend.add(new Key("season", season == 0 ? "no day in season" : "in season " + days(season)));
        return legend;
    }

    private static List<String> marks(YearStrip strip) {
        List<String> marks = new ArrayList<>();
        for (int mark = 0; mark < MARKS; mark++) {
            long days = Math.round((YearStrip.DAYS - 1.0) * mark / (MARKS - 1));
            marks.add(Dates.plainDay(strip.runs().get(0).first().plusDays(days)));
        }
        return marks;
    }

    private static String days(int count) {
        return count + (count == 1 ? " day" : " days");
    }
}
