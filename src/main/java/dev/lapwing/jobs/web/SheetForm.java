package dev.lapwing.jobs.web;

import dev.lapwing.jobs.domain.Words;
import dev.lapwing.jobs.domain.finding.FindingEntry;
import dev.lapwing.jobs.domain.sheet.SignOffEntry;
import dev.lapwing.jobs.domain.sheet.Weather;
import dev.lapwing.jobs.storage.RecordedFinding;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Secrets;
import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestForm;

/** The forms of the sheet as typed. Nothing is lost when they are shown again. */
public class SheetForm {
    private static final int LONGEST_KEY = 100;

    /** Tells one sending from the next, so that what is sent twice is kept once. */
    @RestForm
    public String key;

    /** The finding to take back, or that a new one stands instead of. */
    @RestForm
    public String finding;

    @RestForm
    public String x;

    @RestForm
    public String y;

    @RestForm
    public String zone;

    @RestForm
    public String kind;

    @RestForm
    public String depth;

    @RestForm
    public String extent;

    @RestForm
    public String lengthCm;

    @RestForm
    public String note;

    /** Ids of the cautions that were acknowledged. */
    @RestForm
    public List<String> read;

    /** {@code calm}, {@code wet} or {@code windy}; null when nothing was chosen. */
    @RestForm
    public String weather;

    @RestForm
    public String dry;

    @RestForm
    public String by;

    @RestForm
    public String statement;

    /** How many entries the page showed that was signed. */
    @RestForm
    public String seen;

    FindingEntry entry() {
        return new FindingEntry(
                zone, kind, depth, extent, number("lengthCm", lengthCm), note, number("x", x), number("y", y));
    }

    /** Takes over a finding that is to be changed. */
    void startFrom(RecordedFinding found) {
        finding = found.id.toString();
        x = found.x == null ? null : found.x.toString();
        y = found.y == null ? null : found.y.toString();
        zone = found.zone;
        kind = found.kind.word();
        depth = found.depth == null ? null : Words.of(found.depth);
        extent = found.extent == null ? null : Words.of(found.extent);
        lengthCm = found.lengthCm == null
                ? null
                : BigDecimal.valueOf(found.lengthCm).stripTrailingZeros().toPlainString();
        note = found.note;
    }

    public boolean hasRead(String caution) {
        return read != null && read.contains(caution);
    }

    UUID findingId() {
        return Identifier.of("finding", finding);
    }

    boolean changes() {
        return finding != null && !finding.isBlank();
    }

    private static Double number(String field, String typed) {
        if (typed == null || typed.isBlank()) {
            return null;
        }
        try {
            return Double.valueOf(typed.strip().replace(',', '.'));
        } catch (NumberFormatException wrong) {
            throw Refused.invalid(field, "is not a number");
        }
    }

    SignOffEntry signature(boolean cautionsRead) {
        Double counted = number("seen", seen);
        return new SignOffEntry(
                by, cautionsRead, "yes".equals(dry), statement, counted == null ? null : counted.intValue());
    }

    /** Refuses to go on unless the tech said that roof and air allow it. */
    void refuseBadWeather() {
        if (weather == null || weather.isBlank()) {
            throw Refused.invalid("weather", "is needed: dry and calm, wet, or windy");
        }
        new Weather(weather.equals("wet"), weather.equals("windy")).stop().ifPresent(why -> {
            throw Refused.conflict(why + " Nothing was started; come back when it is dry and calm.");
        });
    }

    /** Returns the key that something was sent under, or a new one when that is none. */
    static String usable(String key, Secrets secrets) {
        return key == null || key.isBlank() || key.length() > LONGEST_KEY ? secrets.newToken() : key;
    }

    /** Returns what tells this form from another one that came with the same key. */
    String fingerprint(String path) {
        return Secrets.hash(Stream.of(
                        path,
                        finding,
                        x,
                        y,
                        zone,
                        kind,
                        depth,
                        extent,
                        lengthCm,
                        note,
                        String.valueOf(read),
                        weather,
                        dry,
                        by,
                        statement,
                        seen)
                .map(text -> text == null ? "" : text.length() + ":" + text)
                .collect(Collectors.joining("|")));
    }
}
