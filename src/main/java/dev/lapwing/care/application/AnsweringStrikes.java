package dev.lapwing.care.application;

import dev.lapwing.care.StrikeWorkOpened;
import dev.lapwing.care.Tech;
import dev.lapwing.care.TechRoster;
import dev.lapwing.care.domain.HoldCause;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.fleet.ContactDoubted;
import dev.lapwing.fleet.DoubtSettled;
import dev.lapwing.fleet.RoofStruck;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.Ids;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Answers a strike at once: the unit is held, and its inspection is due this instant and given to a tech. */
@ApplicationScoped
class AnsweringStrikes {
    @Inject
    TechRoster roster;

    @Inject
    OpeningHolds holds;

    @Inject
    ReleasingHolds releasing;

    @Inject
    TaskLog log;

    @Inject
    Event<StrikeWorkOpened> opened;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    @Transactional(Transactional.TxType.MANDATORY)
    void roofStruck(@Observes RoofStruck strike) {
        Unit unit = Unit.findById(strike.unitId());
        Hold hold = holds.open(unit, HoldCause.STRIKE, strike.strikeId(), strike.words(), strike.seenAt(), strike.by());
        CareTask task = inspection(unit, strike);
        opened.fire(new StrikeWorkOpened(task.id, hold.id));
    }

    @Transactional(Transactional.TxType.MANDATORY)
    void contactDoubted(@Observes ContactDoubted doubt) {
        Unit unit = Unit.findById(doubt.unitId());
        holds.open(unit, HoldCause.QUESTION, doubt.questionId(), doubt.words(), doubt.at(), doubt.by());
    }

    @Transactional(Transactional.TxType.MANDATORY)
    void doubtSettled(@Observes DoubtSettled answer) {
        String statement =
                (answer.contact() ? "Answered: there was contact, the strike's own hold stands. " : "") + answer.why();
        Hold.ofCause(answer.questionId()).ifPresent(hold -> releasing.end(hold, answer.by(), statement, answer.at()));
    }

    private CareTask inspection(Unit unit, RoofStruck strike) {
        // A strike may be told hours after it was seen; people can be called from now on only.
        Instant now = clock.instant();
        Optional<Tech> tech = chosen(unit.depot.code, now);
        var task = new CareTask();
        task.id = ids.next();
        task.unit = unit;
        task.depot = unit.depot;
        task.kind = TaskKind.STRIKE_INSPECTION;
        task.origin = TaskOrigin.STRIKE;
        task.why = "strike inspection: " + strike.words() + "; due at once, before the next rain";
        LocalDate today = unit.depot.dateAt(strike.seenAt());
        task.opens = today;
        task.due = today;
        task.late = today;
        task.dueAt = strike.seenAt();
        task.strikeId = strike.strikeId();
        task.openKey = "strike " + strike.strikeId();
        task.state = tech.isPresent() ? TaskState.ASSIGNED : TaskState.PLANNED;
        task.assignee = tech.map(Tech::username).orElse(null);
        task.createdAt = now;
        task.createdBy = strike.by();
        task.persist();
        String given = tech.map(someone -> "given to " + someone.fullName())
                .orElse("no tech at " + unit.depot.name + " to give it to");
        log.write(task, strike.by(), "Strike inspection opened, " + given, now);
        return task;
    }

    /** The first on duty when the strike is told; where no tech is, the one with the least open work. */
    private Optional<Tech> chosen(String depotCode, Instant at) {
        return roster.onDuty(depotCode, at).stream().findFirst().or(() -> leastBusy(depotCode));
    }

    private Optional<Tech> leastBusy(String depotCode) {
        List<Tech> techs = roster.techsOf(depotCode);
        Map<String, Long> load = OpenWork.countByTech(techs);
        return techs.stream().min(Comparator.comparing(tech -> load.getOrDefault(tech.username(), 0L)));
    }
}
