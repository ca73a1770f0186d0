package dev.lapwing.alerts.application;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.alerts.domain.Appointment;
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
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.StringReader;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarBuilder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Work that was given to someone and called off leaves their calendar (RFC 5546 section 3.2.5). */
@QuarkusTest
class CalledOffMailTest {
    @Inject
    FleetFixture fleet;

    @Inject
    Clock clock;

    private String unit;
    private UUID task;

    @BeforeEach
    void work() {
        unit = "C-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        task = QuarkusTransaction.requiringNew().call(this::touchUp);
    }

    @Test
    void theTechIsToldWhyAndTheAppointmentIsWithdrawn() throws Exception {
        post("assignment", Map.of("tech", "tech2"));
        post("call-off", Map.of("why", "the unit was sold"));

        OutboxMail mail = mails(MailKind.CALLED_OFF).get(0);
        OutboxMail request = mails(MailKind.ASSIGNMENT).get(0);
        assertThat(mail.recipient).isEqualTo("tech2@haldenridge.example");
        assertThat(mail.subject).isEqualTo("Unit " + unit + ": touch-up was called off");
        assertThat(mail.textBody)
                .contains("Cora Vale called off this work")
                .contains("The reason given: the unit was sold")
                .doesNotContain("Falls kill");
        assertThat(mail.inReplyTo).isEqualTo(request.messageId);
        assertThat(mail.calendarMethod).isEqualTo(Appointment.Method.CANCEL);
        assertThat(mail.calendarSequence).isGreaterThan(request.calendarSequence);
        var calendar = new CalendarBuilder().build(new StringReader(mail.calendarPart));
        assertThat(calendar.getMethod().getValue()).isEqualTo("CANCEL");
        assertThat(calendar.validate(true).getEntries()).isEmpty();
        assertThat(mail.calendarPart).contains("UID:" + task).contains("STATUS:CANCELLED");
    }

    @Test
    void workThatNobodyHadIsCalledOffQuietly() {
        post("call-off", Map.of("why", "the unit was sold"));

        assertThat(mails(MailKind.CALLED_OFF)).isEmpty();
    }

    private UUID touchUp() {
        var touchUp = new CareTask();
        touchUp.id = UUID.randomUUID();
        touchUp.unit = Unit.require(unit);
        touchUp.depot = touchUp.unit.depot;
        LocalDate today = touchUp.depot.dateAt(clock.instant());
        touchUp.kind = TaskKind.TOUCH_UP;
        touchUp.origin = TaskOrigin.BY_HAND;
        touchUp.why = "asked for by the coordinator";
        touchUp.opens = today;
        touchUp.due = today;
        touchUp.late = today.plusDays(7);
        touchUp.dueAt = today.atStartOfDay(touchUp.depot.zoneId()).toInstant();
        touchUp.state = TaskState.PLANNED;
        touchUp.createdAt = clock.instant();
        touchUp.createdBy = "coordinator";
        touchUp.persist();
        return touchUp.id;
    }

    private void post(String act, Map<String, String> body) {
        as("coordinator")
                .body(body)
                .post("/api/tasks/" + task + "/" + act)
                .then()
                .statusCode(200);
    }

    private List<OutboxMail> mails(MailKind kind) {
        return QuarkusTransaction.requiringNew()
                .call(() -> OutboxMail.<OutboxMail>list("taskId = ?1 and kind = ?2", task, kind));
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
