package dev.lapwing.alerts.application;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import jakarta.enterprise.context.ApplicationScoped;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Writes about units that were referred to a workshop or released; no work at height is asked for. */
@ApplicationScoped
class RoofLetters {
    @ConfigProperty(name = "lapwing.public-url", defaultValue = "http://localhost:8080")
    String publicUrl;

    /**
     * Tells a coordinator that somebody stopped work on a roof.
     *
     * @param by name of who stopped
     * @param why what they said
     */
    Letter referred(Reader reader, CareTask task, String by, String why) {
        String language = Languages.of(reader);
        MailWords words = Languages.words(language);
        String unit = task.unit.number;
        return new Letter(
                language,
                words.referredSubject(unit),
                words.greeting(reader.name()),
                words.referredLead(unit, task.depot.name, by),
                List.of(
                        new Letter.Fact(words.factUnit(), unit),
                        new Letter.Fact(words.factDepot(), task.depot.name),
                        new Letter.Fact(words.factWork(), words.work(task.kind))),
                new Letter.Quote(words.quoteLabel(), why),
                new Letter.Link(words.openTask(), publicUrl + "/tasks/" + task.id),
                words.cautionsTitle(),
                List.of(),
                words.footer());
    }

    private static String pathPart(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** Tells the desk that a unit may be rented again. */
    Letter released(Reader reader, Hold hold) {
        String language = Languages.of(reader);
        MailWords words = Languages.words(language);
        String unit = hold.unit.number;
        String depot = hold.unit.depot.name;
        return new Letter(
                language,
                words.releasedSubject(unit),
                words.greeting(reader.name()),
                words.releasedLead(unit, depot, hold.releasedBy),
                List.of(new Letter.Fact(words.factUnit(), unit), new Letter.Fact(words.factDepot(), depot)),
                new Letter.Quote(words.quoteLabel(), hold.statement),
                new Letter.Link(words.openUnit(), publicUrl + "/units/" + pathPart(unit)),
                words.cautionsTitle(),
                List.of(),
                words.footer());
    }
}
