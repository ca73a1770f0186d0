package dev.lapwing.alerts.application;

import dev.lapwing.care.RoofCautions;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.people.Staff;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Writes to people about strikes that nobody has as they should. */
@ApplicationScoped
class EscalationLetters {
    private static final int MOST_LINES = 50;

    @ConfigProperty(name = "lapwing.public-url", defaultValue = "http://localhost:8080")
    String publicUrl;

    @Inject
    Letters letters;

    @Inject
    RoofCautions cautions;

    /** Says what is wanting with one strike, and what the reader is asked to do. */
    Letter one(Reader reader, Call call) {
        MailWords words = Languages.words(Languages.of(reader));
        CareTask task = call.task();
        String wanting = words.wanting(call.reason());
        String waited = waited(call.waited());
        String lead = words.ladderLead(task.unit.number, task.depot.name, wanting, waited) + " "
                + words.ladderAsk(call.rung());
        return letters.about(reader, task, tech(task), words.ladderSubject(task.unit.number, wanting, waited), lead);
    }

    /** Lists several strikes in one mail; there must be at least one. */
    Letter many(Reader reader, List<Call> calls) {
        String language = Languages.of(reader);
        MailWords words = Languages.words(language);
        return new Letter(
                language,
                words.ladderManySubject(calls.size()),
                words.greeting(reader.name()),
                words.ladderManyLead(),
                lines(calls, words),
                null,
                new Letter.Link(words.openDueList(), publicUrl + "/due-list"),
                words.cautionsTitle(),
                cautions.inShort(language),
                words.footer());
    }

    private static List<Letter.Fact> lines(List<Call> calls, MailWords words) {
        List<Letter.Fact> lines = new ArrayList<>();
        for (Call call : calls.subList(0, Math.min(calls.size(), MOST_LINES))) {
            CareTask task = call.task();
            String tech = tech(task);
            lines.add(new Letter.Fact(
                    task.unit.number,
                    task.depot.name + ", " + words.wanting(call.reason()) + ", " + waited(call.waited()) + " ("
                            + (tech == null ? words.factNobody() : tech) + ")"));
        }
        if (calls.size() > MOST_LINES) {
            lines.add(new Letter.Fact("…", words.andMore(calls.size() - MOST_LINES)));
        }
        return lines;
    }

    /** Returns a wait such as "2 h 15 min"; the units are written alike in the languages we have. */
    static String waited(Duration wait) {
        long hours = wait.toHours();
        int minutes = wait.toMinutesPart();
        if (hours == 0) {
            return minutes + " min";
        }
        return minutes == 0 ? hours + " h" : hours + " h " + minutes + " min";
    }

    private static String tech(CareTask task) {
        if (task.assignee == null) {
            return null;
        }
        return Staff.activeByName(task.assignee).map(staff -> staff.fullName).orElse(task.assignee);
    }
}
