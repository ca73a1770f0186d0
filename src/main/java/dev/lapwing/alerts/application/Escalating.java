package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.Climb;
import dev.lapwing.alerts.domain.Ladder;
import dev.lapwing.alerts.domain.LadderPace;
import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.alerts.storage.LadderStep;
import dev.lapwing.alerts.storage.OpenStrikes;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.TaskStep;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;

/**
 * Calls more and more people while nobody has a strike.
 *
 * <p>Which steps are due is worked out of the log of the task and the steps already taken, so a restart, a late run or
 * a second node neither skips one nor takes it twice. Steps that fall due together reach a person in one mail.
 */
@ApplicationScoped
class Escalating {
    private static final Logger LOG = Logger.getLogger(Escalating.class);

    @Inject
    LadderPaces paces;

    @Inject
    Callees callees;

    @Inject
    EscalationLetters letters;

    @Inject
    Outbox outbox;

    @Inject
    Clock clock;

    @Scheduled(
            identity = "escalation",
            every = "${lapwing.escalation.look}",
            delayed = "5s",
            concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void tick() {
        run(clock.instant());
    }

    /** Takes every step whose time has come. What fails for one depot is tried again strike by strike. */
    void run(Instant now) {
        Map<String, List<UUID>> byDepot = QuarkusTransaction.requiringNew().call(OpenStrikes::waitingByDepot);
        byDepot.forEach((depot, tasks) -> {
            if (!taken(tasks, now)) {
                tasks.forEach(task -> taken(List.of(task), now));
            }
        });
    }

    private boolean taken(List<UUID> tasks, Instant now) {
        try {
            QuarkusTransaction.requiringNew().run(() -> climb(tasks, now));
            return true;
        } catch (RuntimeException e) {
            LOG.errorf(e, "The ladder of %d strikes was not climbed; the next look tries again", tasks.size());
            return false;
        }
    }

    private void climb(List<UUID> ids, Instant now) {
        Map<UUID, List<Climb.Moment>> logs = logs(ids);
        Map<UUID, List<LadderStep.Latest>> taken =
                LadderStep.latestOf(ids).stream().collect(Collectors.groupingBy(LadderStep.Latest::taskId));
        Callees.Look look = callees.lookAt(now);
        LadderPaces.Now paces = this.paces.at(now);
        Map<Reader, List<Call>> calls = new LinkedHashMap<>();
        for (CareTask task : OpenStrikes.tasks(ids)) {
            LadderPace pace = paces.of(task.depot.code);
            Climb.of(logs.get(task.id), pace).ifPresent(climb -> {
                List<Ladder.Step> before = steps(climb, taken.getOrDefault(task.id, List.of()));
                for (Ladder.Step step : Ladder.due(climb, before, pace, now)) {
                    take(task, climb, step, now, look, calls);
                }
            });
        }
        calls.forEach(this::write);
    }

    private void take(
            CareTask task,
            Climb climb,
            Ladder.Step step,
            Instant now,
            Callees.Look look,
            Map<Reader, List<Call>> calls) {
        List<Reader> called = look.of(step.rung(), task);
        String told = called.stream().map(Reader::name).collect(Collectors.joining(", "));
        if (!LadderStep.claim(task.id, climb, step, now, told)) {
            return;
        }
        if (called.isEmpty()) {
            LOG.warnf("Nobody to call for %s: unit %s", step.rung().word(), task.unit.number);
        }
        var call = new Call(task, climb.reason(), step.rung(), Duration.between(climb.from(), now));
        called.forEach(reader ->
                calls.computeIfAbsent(reader, any -> new ArrayList<>()).add(call));
    }

    /** Of several rungs of one strike that reach a person at once, the last says it all. */
    private void write(Reader reader, List<Call> calls) {
        Map<UUID, Call> byTask = new LinkedHashMap<>();
        calls.forEach(call -> byTask.put(call.task().id, call));
        List<Call> last = List.copyOf(byTask.values());
        if (last.size() == 1) {
            Call call = last.get(0);
            outbox.add(reader, MailKind.ESCALATION, Urgency.AT_ONCE, call.task(), letters.one(reader, call));
        } else {
            outbox.add(reader, MailKind.ESCALATION, Urgency.AT_ONCE, letters.many(reader, last));
        }
    }

    static List<Ladder.Step> steps(Climb climb, List<LadderStep.Latest> taken) {
        return taken.stream()
                .filter(latest -> latest.climb() == climb.number())
                .map(LadderStep.Latest::step)
                .toList();
    }

    static Map<UUID, List<Climb.Moment>> logs(List<UUID> tasks) {
        return TaskStep.of(tasks).stream()
                .collect(Collectors.groupingBy(
                        step -> step.taskId,
                        Collectors.mapping(
                                step -> new Climb.Moment(step.position, step.at, step.state), Collectors.toList())));
    }
}
