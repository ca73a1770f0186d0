package dev.lapwing.alerts.application;

import dev.lapwing.care.RoofCautions;
import dev.lapwing.care.domain.Standing;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Depot;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Writes what is to be done at a depot today. */
@ApplicationScoped
class DigestLetters {
    private static final int MOST_LINES = 50;

    @ConfigProperty(name = "lapwing.public-url", defaultValue = "http://localhost:8080")
    String publicUrl;

    @Inject
    RoofCautions cautions;

    /** Lists the tasks in the order given; there must be at least one. */
    Letter daily(Staff person, Depot depot, List<CareTask> tasks, Instant now) {
        Reader reader = Reader.of(person);
        String language = Languages.of(reader);
        MailWords words = Languages.words(language);
        String date = Languages.date(depot.dateAt(now), language);
        return new Letter(
                language,
                words.digestSubject(depot.name, date, tasks.size()),
                words.greeting(reader.name()),
                person.role == Role.TECH ? words.digestLeadTech(depot.name) : words.digestLead(depot.name),
                lines(tasks, words, language, now),
                null,
                new Letter.Link(words.openDueList(), publicUrl + "/due-list"),
                words.cautionsTitle(),
                cautions.inShort(language),
                words.footer());
    }

    private static List<Letter.Fact> lines(List<CareTask> tasks, MailWords words, String language, Instant now) {
        List<Letter.Fact> lines = new ArrayList<>();
        for (CareTask task : tasks.subList(0, Math.min(tasks.size(), MOST_LINES))) {
            String standing =
                    switch (task.standingAt(now)) {
                        case STRIKE -> words.untilNow();
                        case LATE -> words.lateSince(Languages.date(task.due, language));
                        case DUE, COMING -> words.untilDate(Languages.date(task.due, language));
                    };
            String tech = task.assignee == null ? words.factNobody() : name(task.assignee);
            lines.add(new Letter.Fact(task.unit.number, words.work(task.kind) + ", " + standing + " (" + tech + ")"));
        }
        if (tasks.size() > MOST_LINES) {
            lines.add(new Letter.Fact("…", words.andMore(tasks.size() - MOST_LINES)));
        }
        return lines;
    }

    private static String name(String username) {
        return Staff.<Staff>findByIdOptional(username)
                .map(staff -> staff.fullName)
                .orElse(username);
    }

    /** Returns whether a task belongs into the digest of today. */
    static boolean wanted(CareTask task, Instant now) {
        return task.standingAt(now) != Standing.COMING;
    }
}
