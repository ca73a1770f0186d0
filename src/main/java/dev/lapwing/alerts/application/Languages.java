package dev.lapwing.alerts.application;

import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.Set;

/** Finds words and dates in a person's language; English where we have no words in it. */
final class Languages {
    static final Set<String> KNOWN = Set.of("en", "es", "fr");

    private Languages() {}

    static String of(Reader reader) {
        return KNOWN.contains(reader.language()) ? reader.language() : "en";
    }

    static MailWords words(String language) {
        return MessageBundles.get(MailWords.class, Localized.Literal.of(language));
    }

    static String time(Instant instant, ZoneId zone, String language) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(Locale.forLanguageTag(language))
                .format(instant.atZone(zone));
    }

    static String date(LocalDate date, String language) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                .withLocale(Locale.forLanguageTag(language))
                .format(date);
    }
}
