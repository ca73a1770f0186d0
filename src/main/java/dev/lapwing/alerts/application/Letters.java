package dev.lapwing.alerts.application;

import dev.lapwing.care.RainOutlook;
import dev.lapwing.care.RoofCautions;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.people.JobLinks;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Writes what is said about one task, in the language of its reader. */
@ApplicationScoped
class Letters {
    @ConfigProperty(name = "lapwing.public-url", defaultValue = "http://localhost:8080")
    String publicUrl;

    @Inject
    RainOutlook rainClock;

    @Inject
    JobLinks links;

    @Inject
    RoofCautions cautions;

    @Inject
    Clock clock;

    /** Asks the tech to inspect a struck roof. */
    Letter strike(Reader reader, CareTask task, Hold hold) {
        var sheet = new Sheet(reader, task, reader.name());
        return sheet.yours(
                sheet.words.strikeSubject(sheet.unit()),
                sheet.words.strikeLead(sheet.unit(), task.depot.name),
                hold.words);
    }

    /** Tells a coordinator of a hold and the name of who inspects; a null tech means that nobody does yet. */
    Letter held(Reader reader, CareTask task, Hold hold, String tech) {
        var sheet = new Sheet(reader, task, tech);
        MailWords words = sheet.words;
        if (tech == null) {
            String lead = words.nobodyLead(sheet.unit(), task.depot.name);
            return sheet.letter(words.nobodySubject(sheet.unit()), lead, hold.words, true);
        }
        String lead = words.heldLead(sheet.unit(), task.depot.name, tech);
        return sheet.letter(words.heldSubject(sheet.unit()), lead, hold.words, true);
    }

    /** Tells the tech of work that a person gave them; the hold is null when no strike is behind it. */
    Letter assigned(Reader reader, CareTask task, Hold hold, String by) {
        var sheet = new Sheet(reader, task, reader.name());
        return sheet.yours(
                sheet.words.assignedSubject(sheet.unit(), sheet.work(), sheet.until()),
                sheet.words.assignedLead(sheet.unit(), sheet.work(), by),
                hold == null ? null : hold.words);
    }

    /** Tells the tech who had the work that another has it now. */
    Letter handedOver(Reader reader, CareTask task, String tech, String by) {
        var sheet = new Sheet(reader, task, tech);
        return sheet.letter(
                sheet.words.handedOverSubject(sheet.unit(), sheet.work(), tech),
                sheet.words.handedOverLead(sheet.unit(), sheet.work(), tech, by),
                null,
                false);
    }

    /** Tells the tech that work they had need not be done. */
    Letter calledOff(Reader reader, CareTask task, String by, String why) {
        var sheet = new Sheet(reader, task, reader.name());
        return sheet.letter(
                sheet.words.calledOffSubject(sheet.unit(), sheet.work()),
                sheet.words.calledOffLead(sheet.unit(), sheet.work(), by, why),
                null,
                false);
    }

    /** Writes a letter about a task with a subject and lead of its own; a null tech means that nobody has it. */
    Letter about(Reader reader, CareTask task, String tech, String subject, String lead) {
        return new Sheet(reader, task, tech).letter(subject, lead, null, true);
    }

    /** What all letters about a task share. */
    private final class Sheet {
        private final Reader reader;
        private final CareTask task;
        private final String tech;
        private final String language;
        private final MailWords words;

        Sheet(Reader reader, CareTask task, String tech) {
            this.reader = reader;
            this.task = task;
            this.tech = tech;
            language = Languages.of(reader);
            words = Languages.words(language);
        }

        String unit() {
            return task.unit.number;
        }

        String work() {
            return words.work(task.kind);
        }

        String until() {
            return urgent() ? words.untilNow() : words.untilDate(Languages.date(task.due, language));
        }

        private boolean urgent() {
            return task.kind == TaskKind.STRIKE_INSPECTION;
        }

        Letter letter(String subject, String lead, String quote, boolean asksForWork) {
            var page = new Letter.Link(words.openTask(), publicUrl + "/tasks/" + task.id);
            return letter(subject, lead, quote, asksForWork, page);
        }

        /** Writes to the tech who has the work; the link opens its sheet without a sign-in. */
        Letter yours(String subject, String lead, String quote) {
            var page = new Letter.Link(words.openSheet(), links.addressFor(task.id, task.assignee));
            return letter(subject, lead, quote, true, page);
        }

        private Letter letter(String subject, String lead, String quote, boolean asksForWork, Letter.Link page) {
            return new Letter(
                    language,
                    subject,
                    words.greeting(reader.name()),
                    lead,
                    facts(),
                    quote == null ? null : new Letter.Quote(words.quoteLabel(), quote),
                    page,
                    words.cautionsTitle(),
                    asksForWork ? cautions.inShort(task.unit.roof, language) : List.of(),
                    words.footer());
        }

        private List<Letter.Fact> facts() {
            String due = urgent() ? words.untilNow() : Languages.date(task.due, language);
            List<Letter.Fact> facts = new ArrayList<>(List.of(
                    new Letter.Fact(words.factUnit(), unit()),
                    new Letter.Fact(words.factDepot(), task.depot.name),
                    new Letter.Fact(words.factWork(), work()),
                    new Letter.Fact(words.factDue(), due),
                    new Letter.Fact(words.factTech(), tech == null ? words.factNobody() : tech)));
            if (urgent()) {
                facts.add(3, new Letter.Fact(words.factRain(), rain()));
            }
            return facts;
        }

        private String rain() {
            RainOutlook.Outlook outlook =
                    rainClock.at(task.depot.code, clock.instant()).orElse(null);
            if (outlook == null) {
                return words.rainUnknown();
            }
            ZoneId zone = task.depot.zoneId();
            return outlook.rainAt() == null
                    ? words.rainNone(Languages.time(outlook.until(), zone, language))
                    : words.rainAt(Languages.time(outlook.rainAt(), zone, language));
        }
    }
}
