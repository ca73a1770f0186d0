package dev.lapwing.alerts.application;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.mail.MailSettings;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.CalendarComponent;
import net.fortuna.ical4j.model.component.VEvent;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The calendar rules of {@code shared/checks/mail.csv} (RFC 5545, 5546, 6047), held by the mails of one task that is
 * given to one tech, to another, and back. What arrived is read by ical4j.
 */
@QuarkusTest
class InvitationTest {
    /** One mail's calendar part, as it arrived. */
    private record Arrived(String recipient, String contentType, byte[] bytes, Calendar calendar) {
        VEvent event() {
            return calendar.<VEvent>getComponent("VEVENT").orElseThrow();
        }

        String value(String property) {
            return event().getProperty(property).orElseThrow().getValue();
        }

        String method() {
            return calendar.getMethod().getValue();
        }

        int sequence() {
            return Integer.parseInt(value("SEQUENCE"));
        }
    }

    @Inject
    FleetFixture fleet;

    @Inject
    MailSettings settings;

    private String unit;
    private String task;
    private List<Arrived> arrived;

    @BeforeEach
    void aTaskThatGoesToAndFro() {
        unit = "Hé,1;\\" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        task = as("desk")
                .body(Map.of(
                        "unit",
                        unit,
                        "returnedAt",
                        "2025-11-20T10:00:00-05:00",
                        "note",
                        "an oak limb scraped the roof"))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .extract()
                .path("task.id");
        String first = as("coordinator").get("/api/tasks/" + task).path("assignee");
        assign(first.equals("tech1") ? "tech2" : "tech1");
        assign(first);
        arrived = calendarParts();
    }

    @Test
    void everyCalendarRuleHolds() throws IOException {
        var format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var records = format.parse(Files.newBufferedReader(Path.of("shared/checks/mail.csv")))) {
            List<String> names = records.stream()
                    .filter(record -> record.get("rfc_section").matches("RFC (5545|5546|6047).*"))
                    .map(record -> record.get("rule"))
                    .toList();
            assertThat(rules().keySet()).containsExactlyInAnyOrderElementsOf(names);
        }
        rules().forEach((name, rule) -> rule.run());
    }

    private Map<String, Runnable> rules() {
        return Map.of(
                "Calendar line ends and folding", this::lines,
                "Calendar text escaping", this::escaping,
                "UID stable", this::oneUid,
                "SEQUENCE on reschedule", this::sequenceGrowsWithEachChange,
                "SEQUENCE on cancel", this::cancelIsAboveTheLastRequest,
                "DTSTAMP breaks ties", this::noTieIsLeftToStamps,
                "REQUEST for invitations", this::methods,
                "One component type per message", this::onlyEvents,
                "Method parameter matches", this::methodParameter,
                "Calendar part charset", this::charset);
    }

    private void oneUid() {
        assertThat(arrived).extracting(one -> one.value("UID")).containsOnly(task + "@haldenridge.example");
    }

    private void onlyEvents() {
        assertThat(arrived).allSatisfy(one -> {
            List<CalendarComponent> components = one.calendar().getComponents();
            assertThat(components).extracting(CalendarComponent::getName).containsOnly("VEVENT");
        });
    }

    private void methodParameter() {
        assertThat(arrived).allSatisfy(one -> assertThat(one.contentType()).contains("method=" + one.method()));
    }

    private void charset() {
        assertThat(arrived).allSatisfy(one -> assertThat(one.contentType()).containsIgnoringCase("charset=UTF-8"));
    }

    private void lines() {
        for (Arrived one : arrived) {
            String text = new String(one.bytes(), StandardCharsets.UTF_8);
            assertThat(text.replace("\r\n", "")).doesNotContain("\r", "\n");
            assertThat(text.split("\r\n")).allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75);
        }
    }

    private void escaping() {
        assertThat(arrived).allSatisfy(one -> {
            assertThat(one.value("SUMMARY")).contains("Unit " + unit);
            assertThat(new String(one.bytes(), StandardCharsets.UTF_8).replace("\r\n ", ""))
                    .contains("Unit "
                            + unit.replace("\\", "\\\\").replace(",", "\\,").replace(";", "\\;"));
        });
    }

    private void sequenceGrowsWithEachChange() {
        assertThat(arrived.stream()
                        .filter(one -> one.method().equals("REQUEST"))
                        .map(Arrived::sequence))
                .containsExactly(0, 1, 2);
    }

    private void cancelIsAboveTheLastRequest() {
        for (Arrived cancel : arrived) {
            if (cancel.method().equals("CANCEL")) {
                int before = arrived.stream()
                        .filter(one -> one.recipient().equals(cancel.recipient()))
                        .filter(one -> one.method().equals("REQUEST") && one.sequence() < cancel.sequence())
                        .mapToInt(Arrived::sequence)
                        .max()
                        .orElseThrow();
                assertThat(cancel.sequence()).isGreaterThan(before);
                assertThat(cancel.value("STATUS")).isEqualTo("CANCELLED");
            }
        }
    }

    private void noTieIsLeftToStamps() {
        assertThat(arrived).extracting(one -> one.recipient() + one.sequence()).doesNotHaveDuplicates();
        assertThat(arrived).allSatisfy(one -> assertThat(one.value("DTSTAMP")).endsWith("Z"));
    }

    private void methods() {
        assertThat(arrived)
                .extracting(Arrived::method)
                .containsExactlyInAnyOrder("REQUEST", "CANCEL", "REQUEST", "CANCEL", "REQUEST");
        assertThat(arrived).allSatisfy(one -> {
            assertThat(one.value("ORGANIZER")).isEqualTo("mailto:lapwing@haldenridge.example");
            assertThat(one.value("ATTENDEE")).isEqualTo("mailto:" + one.recipient());
            assertThat(one.calendar().validate(true).getEntries()).isEmpty();
        });
    }

    private void assign(String tech) {
        as("coordinator")
                .body(Map.of("tech", tech))
                .post("/api/tasks/" + task + "/assignment")
                .then()
                .statusCode(200);
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }

    /** Reads the calendar parts in the order of the changes, once all mails are out. */
    private List<Arrived> calendarParts() {
        List<OutboxMail> mails = await().atMost(Duration.ofSeconds(20))
                .until(
                        () -> QuarkusTransaction.requiringNew()
                                .call(() -> OutboxMail.<OutboxMail>list(
                                        "taskId = ?1 and state = ?2 and calendarPart is not null order by calendarSequence",
                                        UUID.fromString(task),
                                        MailState.SENT)),
                        found -> found.size() == 5);
        List<Arrived> parts = new ArrayList<>();
        for (OutboxMail mail : mails) {
            parts.add(read(mail));
        }
        return parts;
    }

    private Arrived read(OutboxMail mail) {
        Path file = settings.folder().resolve(mail.messageId.replaceAll("[<>]", "") + ".eml");
        try (var in = Files.newInputStream(file)) {
            var message = new MimeMessage(Session.getInstance(new Properties()), in);
            var part = ((MimeMultipart) message.getContent()).getBodyPart(2);
            byte[] bytes = part.getInputStream().readAllBytes();
            var calendar = new CalendarBuilder().build(new StringReader(new String(bytes, StandardCharsets.UTF_8)));
            return new Arrived(mail.recipient, part.getContentType(), bytes, calendar);
        } catch (Exception e) {
            throw new AssertionError("the mail cannot be read: " + file, e);
        }
    }
}
