package dev.lapwing.alerts.live;

import dev.lapwing.care.HoldOpened;
import dev.lapwing.care.HoldReleased;
import dev.lapwing.care.StrikeWorkOpened;
import dev.lapwing.care.TaskMoved;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.UUID;

/** Writes down what happens to work and holds, in the transaction in which it happens. */
@ApplicationScoped
class NotingWhatHappens {
    @Inject
    Event<LiveNoted> noted;

    @Inject
    Clock clock;

    @Transactional(Transactional.TxType.MANDATORY)
    void strikeWorkOpened(@Observes StrikeWorkOpened event) {
        note(LiveKind.STRIKE, CareTask.findById(event.taskId()), event.holdId());
    }

    /** What opens the inspection of a strike is told as the strike. */
    @Transactional(Transactional.TxType.MANDATORY)
    void taskMoved(@Observes TaskMoved event) {
        CareTask task = CareTask.findById(event.taskId());
        if (!event.opened() || task.strikeId == null) {
            note(LiveKind.of(event.state()), task, null);
        }
    }

    @Transactional(Transactional.TxType.MANDATORY)
    void holdOpened(@Observes HoldOpened event) {
        note(LiveKind.HOLD, event.holdId());
    }

    @Transactional(Transactional.TxType.MANDATORY)
    void holdReleased(@Observes HoldReleased event) {
        note(LiveKind.RELEASE, event.holdId());
    }

    private void note(LiveKind kind, CareTask task, UUID holdId) {
        write(kind, task.unit.number, task.depot.code, task.id, holdId);
    }

    private void note(LiveKind kind, UUID holdId) {
        Hold hold = Hold.findById(holdId);
        write(kind, hold.unit.number, hold.unit.depot.code, null, holdId);
    }

    private void write(LiveKind kind, String unit, String depot, UUID taskId, UUID holdId) {
        var event = new LiveEvent();
        event.kind = kind;
        event.unitNumber = unit;
        event.depotCode = depot;
        event.taskId = taskId;
        event.holdId = holdId;
        event.at = clock.instant();
        event.persist();
        noted.fire(new LiveNoted());
    }
}
