package dev.lapwing.alerts.application;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import dev.lapwing.alerts.domain.Appointment;
import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.alerts.mail.MailFixture;
import dev.lapwing.alerts.storage.OutboxLine;
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
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Three days without a mail server: what waited is seen to before it goes. No server takes anything meanwhile. */
@QuarkusTest
@TestProfile(StaleMailsTest.Outage.class)
class StaleMailsTest {
    private static final Instant NOW = Instant.parse("2026-05-06T08:00:00Z");
    /** No sender gets hold of the mails while the test looks at them. */
    private static final Instant NEXT_CENTURY = Instant.parse("2100-01-01T00:00:00Z");

    private static final Instant LONG_AGO = NOW.minus(Duration.ofDays(3));

    /** Nobody answers on the port for mails. */
    public static class Outage implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of(
                    "quarkus.datasource.jdbc.url", "jdbc:h2:mem:outage",
                    "lapwing.mail.transport", "smtp",
                    "lapwing.mail.smtp.host", "127.0.0.1",
                    "lapwing.mail.smtp.port", "1",
                    "lapwing.mail.smtp.tls", "none",
                    "lapwing.mail.tick", "1h");
        }
    }

    @Inject
    FleetFixture fleet;

    @Inject
    StaleMails stale;

    @BeforeEach
    void aUnit() {
        fleet.unit("S-1");
    }

    @AfterEach
    void empty() {
        QuarkusTransaction.requiringNew().run(() -> {
            OutboxMail.deleteAll();
            CareTask.deleteAll();
            Staff.<Staff>findById("tech1").language = "en";
        });
    }

    @Test
    void staleMailsOfAPersonBecomeOneDigestInTheirLanguage() {
        QuarkusTransaction.requiringNew().run(() -> Staff.<Staff>findById("tech1").language = "fr");
        UUID one = mail(MailKind.ASSIGNMENT, Urgency.SOON, null, LONG_AGO, "Unit S-1: wash, due May 4");
        UUID two = mail(MailKind.DAILY_DIGEST, Urgency.TODAY, null, LONG_AGO.plusSeconds(60), "Tarn Hollow: 3 to do");
        UUID fresh = mail(MailKind.ASSIGNMENT, Urgency.SOON, null, NOW.minusSeconds(60), "Unit S-1: rework");

        stale.run(NOW);

        OutboxMail digest = digests().get(0);
        assertThat(digests()).hasSize(1);
        assertThat(find(one).state).isEqualTo(MailState.MERGED);
        assertThat(find(one).mergedInto).isEqualTo(digest.id);
        assertThat(find(two).state).isEqualTo(MailState.MERGED);
        assertThat(find(fresh).state).isEqualTo(MailState.WAITING);
        assertThat(digest.recipient).isEqualTo("tech1@haldenridge.example");
        assertThat(digest.subject).isEqualTo("2 messages du temps où le courrier ne partait pas");
        assertThat(digest.textBody)
                .contains("3 mai 2026: Unit S-1: wash, due May 4")
                .contains("Tarn Hollow: 3 to do")
                .contains("/work");
        assertThat(digest.priority).isEqualTo(Urgency.SOON.priority());
    }

    @Test
    void aSingleStaleMailGoesAsItIs() {
        UUID one = mail(MailKind.ASSIGNMENT, Urgency.SOON, null, LONG_AGO, "Unit S-1: wash");

        stale.run(NOW);

        assertThat(find(one).state).isEqualTo(MailState.WAITING);
        assertThat(digests()).isEmpty();
    }

    @Test
    void anOpenStrikeGoesAsItIsAndOneThatIsOverIsDroppedWithANote() {
        UUID open = mail(MailKind.STRIKE, Urgency.AT_ONCE, task(TaskState.ASSIGNED), LONG_AGO, "struck");
        UUID over = mail(MailKind.STRIKE, Urgency.AT_ONCE, task(TaskState.DONE), LONG_AGO, "struck too");

        stale.run(NOW);

        assertThat(find(open).state).isEqualTo(MailState.WAITING);
        assertThat(find(over).state).isEqualTo(MailState.DROPPED);
        assertThat(find(over).lastError).isEqualTo("not sent: the work was done before the mail could go");
        assertThat(digests()).isEmpty();
    }

    @Test
    void ofSeveralCallsForTheSameStrikeTheNewestGoes() {
        UUID task = task(TaskState.ASSIGNED);
        UUID told = mail(MailKind.STRIKE, Urgency.AT_ONCE, task, LONG_AGO, "struck");
        UUID first = mail(MailKind.ESCALATION, Urgency.AT_ONCE, task, LONG_AGO.plusSeconds(3600), "call 1");
        UUID last = mail(MailKind.ESCALATION, Urgency.AT_ONCE, task, LONG_AGO.plusSeconds(7200), "call 2");

        stale.run(NOW);

        assertThat(find(told).state).isEqualTo(MailState.WAITING);
        assertThat(find(first).state).isEqualTo(MailState.DROPPED);
        assertThat(find(last).state).isEqualTo(MailState.WAITING);
    }

    @Test
    void anOutageThatLastsAddsToTheDigestInsteadOfMakingAnother() {
        mail(MailKind.ASSIGNMENT, Urgency.SOON, null, LONG_AGO, "first");
        mail(MailKind.ASSIGNMENT, Urgency.SOON, null, LONG_AGO.plusSeconds(1), "second");
        stale.run(NOW);
        UUID earlier = await().atMost(Duration.ofSeconds(20))
                .until(() -> digests().get(0), digest -> digest.state == MailState.FAILED)
                .id;
        QuarkusTransaction.requiringNew()
                .run(() -> OutboxMail.<OutboxMail>findById(earlier).createdAt = NOW.minusSeconds(30));
        UUID third = mail(MailKind.ASSIGNMENT, Urgency.SOON, null, NOW.minusSeconds(20), "third");

        stale.run(NOW.plus(Duration.ofDays(1)));

        assertThat(find(earlier).state).isEqualTo(MailState.MERGED);
        OutboxMail digest = QuarkusTransaction.requiringNew()
                .call(() -> OutboxMail.<OutboxMail>find(
                                "kind = ?1 and state in ?2", MailKind.OUTAGE_DIGEST, MailState.TO_GO)
                        .singleResult());
        assertThat(digest.subject).startsWith("3 messages");
        assertThat(digest.textBody).contains("first").contains("second").contains("third");
        assertThat(find(third).mergedInto).isEqualTo(digest.id);
    }

    @Test
    void theWithdrawalOfAnAppointmentThatArrivedGoesByItself() {
        UUID task = task(TaskState.CALLED_OFF);
        UUID request = mail(MailKind.ASSIGNMENT, Urgency.SOON, task, LONG_AGO.minusSeconds(3600), "yours");
        UUID cancel = mail(MailKind.CALLED_OFF, Urgency.SOON, task, LONG_AGO, "called off");
        mail(MailKind.ASSIGNMENT, Urgency.SOON, null, LONG_AGO, "a");
        mail(MailKind.ASSIGNMENT, Urgency.SOON, null, LONG_AGO, "b");
        QuarkusTransaction.requiringNew().run(() -> {
            OutboxMail sent = OutboxMail.findById(request);
            sent.calendarMethod = Appointment.Method.REQUEST;
            sent.sent(LONG_AGO);
            OutboxMail.<OutboxMail>findById(cancel).calendarMethod = Appointment.Method.CANCEL;
        });

        stale.run(NOW);

        assertThat(find(cancel).state).isEqualTo(MailState.WAITING);
        assertThat(digests().get(0).textBody).contains("a").doesNotContain("called off");
    }

    @Test
    void whatIsLeftGoesByUrgency() {
        UUID digestOne = mail(MailKind.DAILY_DIGEST, Urgency.TODAY, null, LONG_AGO, "one");
        mail(MailKind.ASSIGNMENT, Urgency.SOON, null, LONG_AGO, "two");
        UUID strike =
                mail(MailKind.STRIKE, Urgency.AT_ONCE, task(TaskState.ASSIGNED), LONG_AGO.plusSeconds(9), "three");

        stale.run(NOW);

        List<UUID> line = QuarkusTransaction.requiringNew().call(() -> OutboxLine.due(NEXT_CENTURY, 30, 10));
        assertThat(line).containsExactly(strike, digests().get(0).id);
        assertThat(find(digestOne).state).isEqualTo(MailState.MERGED);
    }

    private static UUID mail(MailKind kind, Urgency urgency, UUID task, Instant at, String subject) {
        return QuarkusTransaction.requiringNew().call(() -> {
            OutboxMail mail = MailFixture.anyMail();
            mail.kind = kind;
            mail.priority = urgency.priority();
            mail.recipient = "tech1@haldenridge.example";
            mail.subject = subject;
            mail.taskId = task;
            mail.createdAt = at;
            mail.nextAttemptAt = NEXT_CENTURY;
            mail.persist();
            return mail.id;
        });
    }

    private static UUID task(TaskState state) {
        return QuarkusTransaction.requiringNew().call(() -> {
            var task = new CareTask();
            task.id = UUID.randomUUID();
            task.unit = Unit.require("S-1");
            task.depot = task.unit.depot;
            task.kind = TaskKind.STRIKE_INSPECTION;
            task.origin = TaskOrigin.BY_HAND;
            task.why = "struck";
            task.opens = LocalDate.of(2026, 5, 3);
            task.due = task.opens;
            task.late = task.opens;
            task.dueAt = LONG_AGO;
            task.state = state;
            task.assignee = "tech1";
            task.createdAt = LONG_AGO;
            task.createdBy = "desk";
            task.persist();
            return task.id;
        });
    }

    private static OutboxMail find(UUID id) {
        return QuarkusTransaction.requiringNew().call(() -> OutboxMail.<OutboxMail>findById(id));
    }

    private static List<OutboxMail> digests() {
        return QuarkusTransaction.requiringNew()
                .call(() -> OutboxMail.<OutboxMail>list("kind", MailKind.OUTAGE_DIGEST));
    }
}
