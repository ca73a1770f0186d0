package dev.lapwing.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.TaskStep;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** How long work takes is learnt from the house's own jobs, once there are ten. */
@QuarkusTest
class OwnTimesTest {
    private static final Instant MORNING = Instant.parse("2026-03-02T13:00:00Z");

    @Inject
    FleetFixture fleet;

    @Test
    void theMedianAndSpreadOfTenJobsReplaceTheDefault() {
        String unit = "T-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        for (int job = 1; job <= 9; job++) {
            replacement(unit, Duration.ofMinutes(10L * job));
        }
        JsonPath few = RoofDriver.roof(replacement(unit, null));
        assertThat(few.getBoolean("time.fromOwnJobs")).isFalse();
        assertThat(few.getInt("time.median")).isEqualTo(480);

        String task = replacement(unit, Duration.ofMinutes(100));

        JsonPath enough = RoofDriver.roof(task);
        // of 10, 20 … 100 minutes, type 7: median 55, quartiles at positions 2.25 and 6.75: 32.5 and 77.5
        assertThat(enough.getBoolean("time.fromOwnJobs")).isTrue();
        assertThat(enough.getInt("time.jobs")).isEqualTo(10);
        assertThat(enough.getInt("time.median")).isEqualTo(55);
        assertThat(enough.getInt("time.lowerQuartile")).isEqualTo(32);
        assertThat(enough.getInt("time.upperQuartile")).isEqualTo(77);
    }

    /** Stores a replacement that took so long, or one that was never started when {@code took} is null. */
    private static String replacement(String number, Duration took) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Unit unit = Unit.require(number);
            var task = new CareTask();
            task.id = UUID.randomUUID();
            task.unit = unit;
            task.depot = unit.depot;
            task.kind = TaskKind.SEALANT_REPLACEMENT;
            task.origin = TaskOrigin.BY_HAND;
            task.why = "old sealant";
            task.opens = unit.depot.dateAt(MORNING);
            task.due = task.opens;
            task.late = task.opens;
            task.dueAt = MORNING;
            task.createdAt = MORNING;
            task.createdBy = "coordinator";
            task.state = TaskState.DONE;
            task.doneAt = took == null ? MORNING : MORNING.plus(took);
            task.doneOn = task.opens;
            task.persist();
            if (took != null) {
                started(task.id);
            }
            return task.id.toString();
        });
    }

    private static void started(UUID task) {
        var step = new TaskStep();
        step.id = UUID.randomUUID();
        step.taskId = task;
        step.position = 0;
        step.at = MORNING;
        step.who = "tech1";
        step.state = TaskState.UNDER_WAY;
        step.words = "Started";
        step.persist();
    }
}
