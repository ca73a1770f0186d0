package dev.lapwing.jobs;

import static dev.lapwing.jobs.SheetDriver.as;
import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;

import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The link in a letter opens the sheet of one job to the tech who has it, and nothing else. */
@QuarkusTest
class JobLinkTest {
    private static final String COOKIE = "lapwing-job";

    @Inject
    FleetFixture fleet;

    @Inject
    EntityManager database;

    @Inject
    Clock clock;

    private String unit;
    private String task;
    private String tech;
    private String link;

    @BeforeEach
    void aLetterAboutAStruckUnit() {
        unit = "L-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        JsonPath report = SheetDriver.strike(unit);
        task = report.getString("task.id");
        tech = report.getString("task.assignee");
        link = MailedLink.about(unit, tech);
    }

    @Test
    void theWholeSheetIsDoneByTheLinkAndRecordedAsTheTechByLink() {
        SheetForms sheet = new SheetForms(task, byLink());
        sheet.readCautions().then().statusCode(200).body(containsString("Cautions read"));
        sheet.start("calm").then().statusCode(200);
        sheet.post("findings", Map.of("kind", "dirt", "zone", "rear-left"))
                .then()
                .statusCode(200)
                .body(containsString("(by link)"));
        sheet.sign(1).then().statusCode(200).body(containsString("Verdict: fit"));

        JsonPath findings =
                as("coordinator").get("/api/tasks/" + task + "/findings").jsonPath();
        assertThat(findings.getString("items[0].recordedBy")).isEqualTo(tech);
        assertThat(findings.getBoolean("items[0].byLink")).isTrue();
        assertThat(SheetDriver.unit(unit).getString("hold")).isNull();
        as("coordinator").get("/tasks/" + task).then().body(containsString("Started, by the link in the mail"));
    }

    @Test
    void aSignatureWhoseAnswerWasLostGetsItOnceMoreAndNothingElseDoes() {
        String token = token();
        SheetForms sheet = new SheetForms(task, () -> given().cookie(COOKIE, token));
        sheet.readCautions();
        sheet.start("calm");
        Map<String, String> signature =
                Map.of("dry", "yes", "by", "Tess Alder", "statement", "All seams felt", "seen", "0");
        JsonPath first = sheet.script("sign-off", "s-" + task, signature);
        JsonPath second = sheet.script("sign-off", "s-" + task, signature);

        assertThat(second.getString("said")).isEqualTo(first.getString("said")).startsWith("Signed off, verdict fit");
        sheet.post("sign-off", signature).then().statusCode(409);
        sheet.get().then().statusCode(303).header("Location", containsString("/sign-in"));
        open(link).then().statusCode(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/tasks/%s",
                "/tasks/%s/",
                "/tasks/%s/sheet/..",
                "/tasks/%s/sheet/../../../due-list",
                "/tasks/%s/sheet%%2F..",
                "/tasks/%s//sheet",
                "/tasks/%s/call-off",
                "/api/tasks/%s",
                "/api/tasks/%s/findings",
                "/work",
                "/units",
                "/outbox"
            })
    void everyOtherAddressAnswersAsToAStranger(String path) throws IOException, InterruptedException {
        String token = token();
        HttpResponse<?> stranger = request(path, "");
        HttpResponse<?> linked = request(path, COOKIE + "=" + token);

        assertThat(stranger.statusCode()).isIn(303, 401, 404, 405);
        assertThat(linked.statusCode()).isEqualTo(stranger.statusCode());
        assertThat(linked.headers().firstValue("Location"))
                .isEqualTo(stranger.headers().firstValue("Location"));
    }

    /** Asks for a path exactly as it is written. */
    private HttpResponse<?> request(String path, String cookie) throws IOException, InterruptedException {
        URI address = URI.create("http://localhost:" + RestAssured.port + path.formatted(task));
        var request = HttpRequest.newBuilder(address).header("Accept", "text/html, */*");
        if (!cookie.isEmpty()) {
            request.header("Cookie", cookie);
        }
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.discarding());
    }

    @Test
    void theSheetOfAnotherJobStaysShut() {
        String token = token();
        String other = "L-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(other);
        String otherTask = SheetDriver.strike(other).getString("task.id");

        new SheetForms(otherTask, () -> given().cookie(COOKIE, token))
                .get()
                .then()
                .statusCode(303);
    }

    @Test
    void aLinkEndsWhenTheJobChangesHandsAndStaysEndedWhenItComesBack() {
        String token = token();
        String otherTech = tech.equals("tech1") ? "tech2" : "tech1";
        give(otherTech);
        assertShut(token);
        give(tech);
        assertShut(token);
    }

    @Test
    void aLinkEndsWithTime() {
        String token = token();
        QuarkusTransaction.requiringNew()
                .run(() -> database.createNativeQuery("update job_link set expires_at = :past where job_id = :job")
                        .setParameter("past", clock.instant().minus(Duration.ofSeconds(1)))
                        .setParameter("job", UUID.fromString(task))
                        .executeUpdate());
        assertShut(token);
    }

    private void assertShut(String token) {
        new SheetForms(task, () -> given().cookie(COOKIE, token)).get().then().statusCode(303);
        open(link).then().statusCode(404).body(containsString("opens no sheet"));
    }

    private void give(String to) {
        as("coordinator")
                .body(Map.of("tech", to))
                .post("/api/tasks/" + task + "/assignment")
                .then()
                .statusCode(200);
    }

    @Test
    void onlyTheHashOfTheTokenIsStoredOnceTheLetterIsSent() {
        String token = link.substring("/job/".length());
        List<OutboxMail> mails = QuarkusTransaction.requiringNew()
                .call(() -> OutboxMail.<OutboxMail>list("taskId", UUID.fromString(task)));

        assertThat(mails)
                .allSatisfy(mail -> assertThat(mail.textBody + mail.htmlBody + mail.calendarPart)
                        .doesNotContain(token));
        List<?> hashes = database.createNativeQuery("select token_hash from job_link where job_id = :job")
                .setParameter("job", UUID.fromString(task))
                .getResultList();
        assertThat(hashes)
                .hasSize(1)
                .allSatisfy(hash -> assertThat(hash).asString().hasSize(64).isNotEqualTo(token));
    }

    @Test
    void noLogLineHoldsTheToken() {
        List<String> lines = new ArrayList<>();
        var listener = new Handler() {
            @Override
            public void publish(LogRecord line) {
                lines.add(line.getMessage()
                        + List.of(line.getParameters() == null ? new Object[0] : line.getParameters()));
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        Logger root = Logger.getLogger("");
        root.addHandler(listener);
        try {
            Logger.getLogger("dev.lapwing.jobs").warning("the listener hears");
            String token = token();
            new SheetForms(task, () -> given().cookie(COOKIE, token))
                    .get()
                    .then()
                    .statusCode(200);
            open(link + "x").then().statusCode(404);
            assertThat(lines).anyMatch(line -> line.contains("the listener hears"));
            assertThat(lines).noneMatch(line -> line.contains(token));
        } finally {
            root.removeHandler(listener);
        }
    }

    private String token() {
        Response opened = open(link);
        opened.then().statusCode(303).header("Location", endsWith("/tasks/" + task + "/sheet"));
        assertThat(opened.detailedCookie(COOKIE).getPath()).isEqualTo("/tasks/" + task);
        assertThat(opened.detailedCookie(COOKIE).isHttpOnly()).isTrue();
        return opened.cookie(COOKIE);
    }

    private Supplier<RequestSpecification> byLink() {
        String token = token();
        return () -> given().cookie(COOKIE, token);
    }

    private static Response open(String path) {
        return given().accept(ContentType.HTML).redirects().follow(false).get(path);
    }
}
