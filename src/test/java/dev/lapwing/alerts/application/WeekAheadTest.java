package dev.lapwing.alerts.application;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Unit;
import dev.lapwing.people.Staff;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** July 1, 2024 was a Monday; half past six at the depot in New York was 10:30 UTC. */
@QuarkusTest
class WeekAheadTest {
    private static final LocalDate MONDAY = LocalDate.of(2024, 7, 1);
    private static final Instant MORNING = Instant.parse("2024-07-01T10:30:00Z");

    @Inject
    FleetFixture fleet;

    @Inject
    DailyDigest digest;

    private String unit;

    @BeforeEach
    void nothingIsDue() {
        unit = "A-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        QuarkusTransaction.requiringNew().run(() -> {
            CareTask.update("state = ?1, openKey = null", TaskState.CALLED_OFF);
            OutboxMail.delete("kind", MailKind.WEEK_AHEAD);
            CareTask.getEntityManager()
                    .createNativeQuery("delete from digest_week")
                    .executeUpdate();
        });
    }

    @AfterEach
    void languages() {
        language("tech1", "en");
        language("coordinator", "en");
    }

    @Test
    void theTechAndTheCoordinatorAreToldOnMondayWhatIsDueUntilSunday() {
        task(MONDAY.plusDays(6), "tech1");
        task(MONDAY.plusDays(7), "tech1");

        digest.run(MORNING.minusSeconds(1));
        assertThat(mails()).isEmpty();
        digest.run(MORNING);

        assertThat(mails())
                .extracting(mail -> mail.recipient)
                .containsExactlyInAnyOrder("tech1@haldenridge.example", "coordinator@haldenridge.example");
        assertThat(mails()).allSatisfy(mail -> {
            assertThat(mail.subject).isEqualTo("Tarn Hollow, week of July 1, 2024: 1 to do");
            assertThat(mail.textBody).contains(unit + ": wash with inspection, due July 7, 2024 (Tess Alder)");
        });
        assertThat(mails())
                .filteredOn(mail -> mail.recipient.startsWith("tech1"))
                .allSatisfy(mail -> assertThat(mail.textBody).contains("/work").doesNotContain("/due-list"));
    }

    @Test
    void eachIsWrittenToInTheirLanguage() {
        language("tech1", "es");
        language("coordinator", "fr");
        task(MONDAY, "tech1");

        digest.run(MORNING);

        assertThat(mails())
                .extracting(mail -> mail.subject)
                .containsExactlyInAnyOrder(
                        "Tarn Hollow, semana del 1 de julio de 2024: 1 por hacer",
                        "Tarn Hollow, semaine du 1 juillet 2024 : 1 à faire");
    }

    @Test
    void theWeekIsWrittenOnceAndOnNoOtherDay() {
        task(MONDAY, "tech1");

        digest.run(MORNING);
        digest.run(MORNING.plusSeconds(3600));
        digest.run(MORNING.plus(Duration.ofDays(1)));
        assertThat(mails()).hasSize(2);

        digest.run(MORNING.plus(Duration.ofDays(7)));
        assertThat(mails()).hasSize(4);
    }

    @Test
    void nobodyIsWrittenToWhenNothingIsDueThisWeek() {
        task(MONDAY.plusDays(8), "tech1");

        digest.run(MORNING);

        assertThat(mails()).isEmpty();
    }

    private void task(LocalDate due, String assignee) {
        QuarkusTransaction.requiringNew().run(() -> {
            var task = new CareTask();
            task.id = UUID.randomUUID();
            task.unit = Unit.require(unit);
            task.depot = task.unit.depot;
            task.kind = TaskKind.INSPECTION;
            task.origin = TaskOrigin.BY_HAND;
            task.why = "by hand";
            task.opens = MONDAY;
            task.due = due;
            task.late = due.plusDays(30);
            task.dueAt = due.atStartOfDay(task.depot.zoneId()).toInstant();
            task.state = TaskState.ASSIGNED;
            task.assignee = assignee;
            task.createdAt = MORNING;
            task.createdBy = "coordinator";
            task.persist();
        });
    }

    private static void language(String username, String language) {
        QuarkusTransaction.requiringNew().run(() -> Staff.<Staff>findById(username).language = language);
    }

    private static List<OutboxMail> mails() {
        return QuarkusTransaction.requiringNew().call(() -> OutboxMail.<OutboxMail>list("kind", MailKind.WEEK_AHEAD));
    }
}
