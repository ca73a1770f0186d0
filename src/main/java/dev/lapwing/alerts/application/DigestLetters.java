package dev.lapwing.alerts.application;

import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.care.RoofCautions;
import dev.lapwing.care.domain.Standing;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Depot;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Writes what is to be done at a depot, and what mails said that could not go. */
@ApplicationScoped
class DigestLetters {
    private static final int MOST_LINES = 50;

    @ConfigProperty(name = "lapwing.public-url", defaultValue = "http://localhost:8080")
    String publicUrl;

    @Inject
    RoofCautions cautions;

    /** Lists what is to be done today, in the order given; there must be at least one task. */
    Letter daily(Staff person, Depot depot, List<CareTask> tasks, Instant now) {
        String language = Languages.of(Reader.of(person));
        MailWords words = Languages.words(language);
        String date = Languages.date(depot.dateAt(now), language);
        String subject = words.digestSubject(depot.name, date, tasks.size());
        String lead = person.role == Role.TECH ? words.digestLeadTech(depot.name) : words.digestLead(depot.name);
        return letter(person, subject, lead, tasks, now);
    }

    /** Lists what is to be done this week, in the order given; there must be at least one task. */
    Letter weekly(Staff person, Depot depot, List<CareTask> tasks, Instant now) {
        String language = Languages.of(Reader.of(person));
        MailWords words = Languages.words(language);
        String date = Languages.date(depot.dateAt(now), language);
        String subject = words.weekSubject(depot.name, date, tasks.size());
        String lead = person.role == Role.TECH ? words.weekLeadTech(depot.name) : words.weekLead(depot.name);
        return letter(person, subject, lead, tasks, now);
    }

    /** Lists what mails said that could not go, in the order given; a null role means someone who does not sign in. */
    Letter outage(Reader reader, Role role, List<OutboxMail> mails) {
        String language = Languages.of(reader);
        MailWords words = Languages.words(language);
        List<Letter.Fact> lines = mails.stream()
                .limit(MOST_LINES)
                .map(mail -> new Letter.Fact(
                        Languages.date(LocalDate.ofInstant(mail.createdAt, ZoneOffset.UTC), language), mail.subject))
                .collect(Collectors.toCollection(ArrayList::new));
        if (mails.size() > MOST_LINES) {
            lines.add(new Letter.Fact("…", words.andMore(mails.size() - MOST_LINES)));
        }
        return new Letter(
                language,
                words.outageSubject(mails.size()),
                words.greeting(reader.name()),
                words.outageLead(),
                lines,
                null,
                link(role, words),
                words.cautionsTitle(),
                List.of(),
                words.footer());
    }

    private Letter.Link link(Role role, MailWords words) {
        return role == Role.TECH
                ? new Letter.Link(words.openMyWork(), publicUrl + "/work")
                : new Letter.Link(words.openDueList(), publicUrl + "/due-list");
    }

    private Letter letter(Staff person, String subject, String lead, List<CareTask> tasks, Instant now) {
        Reader reader = Reader.of(person);
        String language = Languages.of(reader);
        MailWords words = Languages.words(language);
        return new Letter(
                language,
                subject,
                words.greeting(reader.name()),
                lead,
                lines(tasks, words, language, now),
                null,
                link(person.role, words),
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
