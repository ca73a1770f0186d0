package dev.lapwing.care.web;

import dev.lapwing.care.Tech;
import dev.lapwing.care.domain.Standing;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.web.Dates;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * One task as the pages show it, in words.
 *
 * @param since of strike work, when it was reported, else null
 * @param assignee full name of who has it, or null
 * @param hold what keeps the unit in the yard, or null
 * @param pickup when the unit goes out next, or null while nothing is booked
 * @param rain when rain is likely at the depot, in words, or null when there is no forecast
 * @param yard where the unit is and whether the work fits in before it goes
 * @param question what the rules ask of a task that a person has in hand, or null
 * @param techs who it can be given to
 */
record DueRow(
        UUID id,
        String unit,
        String unitKind,
        String depot,
        String kind,
        String standing,
        String state,
        String due,
        String since,
        String assignee,
        String assigneeName,
        String hold,
        String why,
        boolean strike,
        String footing,
        String pickup,
        String rain,
        String yard,
        String question,
        List<Tech> techs) {

    static DueRow of(CareTask task, Hold hold, YardNotes yard, String rain, List<Tech> techs, Instant now) {
        boolean strike = task.kind == TaskKind.STRIKE_INSPECTION;
        Standing standing = task.standingAt(now);
        return new DueRow(
                task.id,
                task.unit.number,
                task.unit.kind.word(),
                task.depot.name,
                task.kind.label(),
                standing.word(),
                task.state.word(),
                strike ? "at once" : Dates.day(task.due),
                strike ? Dates.time(task.dueAt, task.depot.zoneId()) : null,
                task.assignee,
                nameOf(task.assignee, techs),
                hold == null ? null : hold.words,
                reason(task),
                task.strikeId != null,
                task.unit.roof.footing.word(),
                Dates.time(yard.pickup(task), task.depot.zoneId()),
                rain,
                yard.note(task),
                task.state.open() ? task.question : null,
                techs);
    }

    /** Leaves out the kind of work that a reason may begin with: the page names it beside. */
    private static String reason(CareTask task) {
        String repeated = task.kind.label() + ": ";
        return task.why.startsWith(repeated) ? task.why.substring(repeated.length()) : task.why;
    }

    private static String nameOf(String username, List<Tech> techs) {
        return techs.stream()
                .filter(tech -> tech.username().equals(username))
                .map(Tech::fullName)
                .findFirst()
                .orElse(username);
    }
}
