package dev.lapwing.alerts.application;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.nullValue;

import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.mail.MailSettings;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.people.Staff;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is mailed when a roof was struck and when work changes hands. */
@QuarkusTest
class StrikeMailTest {
    private static final String STRUCK = "scraped the top along an oak limb at the site";

    @Inject
    FleetFixture fleet;

    @Inject
    MailSettings settings;

    private String unit;

    @BeforeEach
    void aFreshUnit() {
        unit = "H-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
    }

    @Test
    void theTechAndTheCoordinatorAreMailedWithoutWaitingForTheTick() {
        String task = strike();

        List<OutboxMail> mails = sentAbout(task, 2);

        assertThat(mails).extracting(mail -> mail.recipient).contains("coordinator@haldenridge.example");
        assertThat(mails)
                .extracting(mail -> mail.subject)
                .containsExactlyInAnyOrder(
                        "Unit " + unit + ": inspect the struck roof now, before the next rain",
                        "Unit " + unit + ": roof struck, on hold; inspection due now, before the next rain");
        assertThat(mails).allSatisfy(mail -> assertThat(mail.attempts).isEqualTo(1));
    }

    @Test
    void theFileIsAMailThatSaysWhatToDoAndWhatToBewareOf() throws Exception {
        String task = strike();
        OutboxMail toTech = sentAbout(task, 2).stream()
                .filter(mail -> mail.recipient.startsWith("tech"))
                .findFirst()
                .orElseThrow();

        MimeMessage read = file(toTech);

        var parts = (MimeMultipart) read.getContent();
        String text = (String) parts.getBodyPart(0).getContent();
        String html = (String) parts.getBodyPart(1).getContent();
        String link = "http://localhost:8080/job/";
        assertThat(text)
                .contains("> " + STRUCK)
                .contains("Open the sheet, without signing in: " + link)
                .contains("Falls kill")
                .contains("treat it as no-walk and inspect from the ladder only")
                .contains("Wet, icy or windy: stop")
                .contains("come before anything written here");
        assertThat(html).contains("href=\"" + link).contains(STRUCK).contains("Falls kill");
    }

    @Test
    void wordsOfTheReportCannotBecomeMarkup() throws Exception {
        String task = report("hit an oak limb with the roof <script>alert(1)</script> & \"more\"");
        OutboxMail mail = sentAbout(task, 2).get(0);

        var parts = (MimeMultipart) file(mail).getContent();

        assertThat((String) parts.getBodyPart(1).getContent())
                .doesNotContain("<script>")
                .contains("&lt;script&gt;");
        assertThat((String) parts.getBodyPart(0).getContent()).contains("<script>alert(1)</script> & \"more\"");
    }

    @Test
    void eachReaderIsWrittenToInTheirLanguage() {
        languages("coordinator", "fr");
        languages("tech1", "es");
        languages("tech2", "es");
        try {
            assertThat(sentAbout(strike(), 2))
                    .extracting(mail -> mail.subject)
                    .containsExactlyInAnyOrder(
                            "Unidad " + unit + ": inspeccionar ya el techo golpeado, antes de la próxima lluvia",
                            "Unité " + unit
                                    + " : toit heurté, retenue ; inspection maintenant, avant la prochaine pluie");
        } finally {
            languages("coordinator", "en");
            languages("tech1", "en");
            languages("tech2", "en");
        }
    }

    @Test
    void handingOverTellsBothInTheThreadOfTheFirstMail() {
        String task = strike();
        OutboxMail first = sentAbout(task, 2).stream()
                .filter(mail -> mail.recipient.startsWith("tech"))
                .findFirst()
                .orElseThrow();
        String before = first.recipient.substring(0, first.recipient.indexOf('@'));
        String next = before.equals("tech1") ? "tech2" : "tech1";

        as("coordinator")
                .body(Map.of("tech", next))
                .post("/api/tasks/" + task + "/assignment")
                .then()
                .statusCode(200);

        List<OutboxMail> mails = sentAbout(task, 4);
        OutboxMail over = subject(mails, "was handed over to");
        OutboxMail yours = subject(mails, ": strike inspection, now, before the next rain");
        assertThat(over.recipient).isEqualTo(first.recipient);
        assertThat(over.inReplyTo).isEqualTo(first.messageId);
        assertThat(over.textBody).doesNotContain("Falls kill");
        assertThat(yours.recipient).isEqualTo(next + "@haldenridge.example");
        assertThat(yours.inReplyTo).isNull();
        assertThat(yours.textBody).contains("Cora Vale gave you this work").contains("Falls kill");
    }

    @Test
    void whenNobodyCanInspectTheCoordinatorIsAskedToAssign() {
        active("tech1", false);
        active("tech2", false);
        try {
            assertThat(sentAbout(strike(), 1))
                    .singleElement()
                    .satisfies(mail -> assertThat(mail.subject)
                            .isEqualTo("Unit " + unit
                                    + ": nobody to inspect the struck roof; due now, before the next rain"))
                    .satisfies(mail -> assertThat(mail.textBody).contains("Given to: nobody yet"));
        } finally {
            active("tech1", true);
            active("tech2", true);
        }
    }

    @Test
    void theOutboxIsListedForCoordinatorsOnly() {
        String task = strike();
        OutboxMail mail = sentAbout(task, 2).get(0);

        as("coordinator")
                .get("/api/outbox?state=sent&limit=500")
                .then()
                .statusCode(200)
                .body("items.find { it.id == '" + mail.id + "' }.to", equalTo(mail.recipient))
                .body("items.find { it.id == '" + mail.id + "' }.messageId", equalTo(mail.messageId))
                .body("items.find { it.id == '" + mail.id + "' }.kind", equalTo("strike"))
                .body("items.find { it.id == '" + mail.id + "' }.state", equalTo("sent"))
                .body("items.find { it.id == '" + mail.id + "' }.attempts", equalTo(1))
                .body("items.find { it.id == '" + mail.id + "' }.task", equalTo(task))
                .body("items.find { it.id == '" + mail.id + "' }.nextAttemptAt", nullValue());
        as("tech1").get("/api/outbox").then().statusCode(403);
        given().get("/api/outbox").then().statusCode(401);
    }

    @Test
    void theOutboxIsReadPageByPage() {
        sentAbout(strike(), 2);

        var first = as("coordinator")
                .get("/api/outbox?limit=1")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
        String next = first.getString("next");
        var second = as("coordinator")
                .get("/api/outbox?limit=1&after=" + next)
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();

        assertThat(first.getString("items[0].id")).isEqualTo(next).isNotEqualTo(second.getString("items[0].id"));
        assertThat(first.getInt("total")).isGreaterThanOrEqualTo(2);
    }

    @Test
    void wrongQuestionsToTheOutboxAreRefusedWithTheFieldNamed() {
        as("coordinator").get("/api/outbox?state=lost").then().statusCode(400).body("errors.field", hasItem("state"));
        as("coordinator").get("/api/outbox?after=x").then().statusCode(400).body("errors.field", hasItem("after"));
        as("coordinator")
                .get("/api/outbox?after=" + UUID.randomUUID())
                .then()
                .statusCode(400)
                .body("errors.field", hasItem("after"));
        as("coordinator").get("/api/outbox?limit=0").then().statusCode(400).body("errors.field", hasItem("limit"));
    }

    @Test
    void onlyAMailThatWasGivenUpIsSentAgain() {
        OutboxMail mail = sentAbout(strike(), 2).get(0);

        as("coordinator").post("/api/outbox/" + mail.id + "/resend").then().statusCode(409);
        as("coordinator")
                .post("/api/outbox/" + UUID.randomUUID() + "/resend")
                .then()
                .statusCode(404);
        as("coordinator").post("/api/outbox/x/resend").then().statusCode(404);
        as("tech1").post("/api/outbox/" + mail.id + "/resend").then().statusCode(403);
    }

    private String strike() {
        return report(STRUCK);
    }

    /** Files a report of contact and returns the id of the inspection. */
    private String report(String note) {
        return as("desk")
                .body(Map.of("unit", unit, "returnedAt", "2025-11-20T10:00:00-05:00", "note", note))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .extract()
                .path("task.id");
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }

    /** Waits until so many mails about a task were sent; the limit only keeps a failing test from hanging. */
    private static List<OutboxMail> sentAbout(String task, int count) {
        return await().atMost(Duration.ofSeconds(20))
                .until(
                        () -> QuarkusTransaction.requiringNew()
                                .call(() -> OutboxMail.<OutboxMail>list(
                                        "taskId = ?1 and state = ?2 order by createdAt",
                                        UUID.fromString(task),
                                        MailState.SENT)),
                        mails -> mails.size() == count);
    }

    private static OutboxMail subject(List<OutboxMail> mails, String part) {
        return mails.stream()
                .filter(mail -> mail.subject.contains(part))
                .findFirst()
                .orElseThrow();
    }

    private MimeMessage file(OutboxMail mail) throws Exception {
        Path file = settings.folder().resolve(mail.messageId.replaceAll("[<>]", "") + ".eml");
        try (var in = Files.newInputStream(file)) {
            return new MimeMessage(Session.getInstance(new Properties()), in);
        }
    }

    private static void languages(String username, String language) {
        QuarkusTransaction.requiringNew().run(() -> Staff.<Staff>findById(username).language = language);
    }

    private static void active(String username, boolean active) {
        QuarkusTransaction.requiringNew().run(() -> Staff.<Staff>findById(username).active = active);
    }
}
