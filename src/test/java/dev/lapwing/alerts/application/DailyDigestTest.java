package dev.lapwing.alerts.application;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The depot of the fixture lies in New York: half past six there is 10:30 UTC in summer. */
@QuarkusTest
class DailyDigestTest {
    private static final LocalDate TODAY = LocalDate.of(2024, 7, 3);
    private static final Instant MORNING = Instant.parse("2024-07-03T10:30:00Z");

    @Inject
    FleetFixture fleet;

    @Inject
    DailyDigest digest;

    private String unit;

    @BeforeEach
    void nothingIsDue() {
        unit = "D-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        QuarkusTransaction.requiringNew().run(() -> {
            CareTask.update("state = ?1, openKey = null", TaskState.CALLED_OFF);
            OutboxMail.delete("kind", MailKind.DAILY_DIGEST);
            CareTask.getEntityManager()
                    .createNativeQuery("delete from digest_day")
                    .executeUpdate();
        });
    }

    @Test
    void theTechAndTheCoordinatorAreToldInTheMorningOfTheDepot() {
        task(TODAY.minusDays(3), TODAY, TODAY.plusDays(5), "tech1");

        digest.run(MORNING.minusSeconds(1));
        assertThat(digests()).isEmpty();
        digest.run(MORNING);

        assertThat(digests())
                .extracting(mail -> mail.recipient)
                .containsExactlyInAnyOrder("tech1@haldenridge.example", "coordinator@haldenridge.example");
        assertThat(digests()).allSatisfy(mail -> {
            assertThat(mail.subject).isEqualTo("Tarn Hollow, July 3, 2024: 1 to do");
            assertThat(mail.textBody).contains(unit + ": wash with inspection, due July 3, 2024 (Tess Alder)");
            assertThat(mail.taskId).isNull();
        });
    }

    @Test
    void aSecondRunOnTheSameDayWritesNothingMore() {
        task(TODAY, TODAY, TODAY, "tech1");

        digest.run(MORNING);
        digest.run(MORNING.plusSeconds(300));
        assertThat(digests()).hasSize(2);

        digest.run(MORNING.plusSeconds(86_400));
        assertThat(digests()).hasSize(4);
    }

    @Test
    void aRunThatComesHoursLateStillWritesOnce() {
        task(TODAY, TODAY, TODAY, null);

        digest.run(MORNING.plusSeconds(5 * 3600));

        assertThat(digests()).singleElement().satisfies(mail -> {
            assertThat(mail.recipient).isEqualTo("coordinator@haldenridge.example");
            assertThat(mail.textBody).contains("(nobody yet)");
        });
    }

    @Test
    void nobodyIsWrittenToWhenNothingIsDue() {
        task(TODAY.plusDays(1), TODAY.plusDays(8), TODAY.plusDays(20), "tech1");

        digest.run(MORNING);

        assertThat(digests()).isEmpty();
    }

    private void task(LocalDate opens, LocalDate due, LocalDate late, String assignee) {
        QuarkusTransaction.requiringNew().run(() -> {
            var task = new CareTask();
            task.id = UUID.randomUUID();
            task.unit = Unit.require(unit);
            task.depot = task.unit.depot;
            task.kind = TaskKind.INSPECTION;
            task.origin = TaskOrigin.BY_HAND;
            task.why = "by hand";
            task.opens = opens;
            task.due = due;
            task.late = late;
            task.dueAt = due.atStartOfDay(task.depot.zoneId()).toInstant();
            task.state = assignee == null ? TaskState.PLANNED : TaskState.ASSIGNED;
            task.assignee = assignee;
            task.createdAt = MORNING;
            task.createdBy = "coordinator";
            task.persist();
        });
    }

    private static List<OutboxMail> digests() {
        return QuarkusTransaction.requiringNew().call(() -> OutboxMail.<OutboxMail>list("kind", MailKind.DAILY_DIGEST));
    }
}
