package dev.lapwing.jobs;

import static dev.lapwing.jobs.SheetDriver.as;
import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Wash, drying and stop of one job by the link in its letter, with and without the script of the sheet. */
@QuarkusTest
class JobLinkPartsTest {
    private static final String COOKIE = "lapwing-job";

    @Inject
    FleetFixture fleet;

    private String unit;
    private String task;
    private String tech;
    private String token;

    @BeforeEach
    void theSheetOfAStruckUnitIsOpenByItsLink() {
        unit = "P-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        JsonPath report = SheetDriver.strike(unit);
        task = report.getString("task.id");
        tech = report.getString("task.assignee");
        token = given().redirects()
                .follow(false)
                .get(MailedLink.about(unit, tech))
                .cookie(COOKIE);
        var sheet = new SheetForms(task, () -> given().cookie(COOKIE, token));
        sheet.readCautions().then().statusCode(200);
        sheet.start("calm").then().statusCode(200);
    }

    private Response form(String of, String path, Map<String, String> fields) {
        return given().cookie(COOKIE, token)
                .accept(ContentType.HTML)
                .contentType("application/x-www-form-urlencoded")
                .formParams(fields)
                .redirects()
                .follow(false)
                .post("/tasks/" + of + path);
    }

    private Response script(String path, String key, Map<String, String> fields) {
        return given().cookie(COOKIE, token)
                .accept(ContentType.JSON)
                .header("Idempotency-Key", key)
                .contentType("application/x-www-form-urlencoded")
                .formParams(fields)
                .post("/tasks/" + task + path);
    }

    private List<Map<String, Object>> events() {
        return as("coordinator").get("/api/tasks/" + task + "/roof").jsonPath().getList("events");
    }

    @Test
    void aWashByTheLinkIsRecordedAsTheTechByLink() {
        form(task, "/roof/wash", Map.of("cleaner", "Bramblewash Gentle"))
                .then()
                .statusCode(303)
                .header("Location", containsString("/sheet#wash"));

        assertThat(events()).extracting(event -> event.get("kind")).containsExactly("cleaner", "washed");
        assertThat(events()).allSatisfy(event -> {
            assertThat(event.get("recordedBy")).isEqualTo(tech);
            assertThat(event.get("byLink")).isEqualTo(true);
        });
    }

    @Test
    void aWashThatArrivesLateAndTwiceIsNotedOnceAndCountsFromWhenItWas() {
        String fiveHoursAgo = Instant.now().minusSeconds(18_000).toString();
        Map<String, String> wash = Map.of("cleaner", "", "washedAt", fiveHoursAgo);
        String said = script("/roof/wash", "w-" + task, wash).jsonPath().getString("said");
        script("/roof/wash", "w-" + task, wash).then().statusCode(200).body(containsString(said));

        assertThat(events()).hasSize(1);
        script("/sheet/findings", "f-" + task, Map.of("kind", "dirt", "zone", "rear-left"))
                .then()
                .statusCode(200);
    }

    @Test
    void whatIsRefusedWhileTheRoofDriesIsSaidToTheScriptWithItsReason() {
        script("/roof/wash", "w-" + task, Map.of("cleaner", "")).then().statusCode(200);
        script("/sheet/findings", "f-" + task, Map.of("kind", "dirt", "zone", "rear-left"))
                .then()
                .statusCode(409)
                .body(containsString("to begin early, give a reason"));
        script("/roof/wash", "x-" + task, Map.of("cleaner", "", "washedAt", "at noon"))
                .then()
                .statusCode(400)
                .body(containsString("washedAt"));

        script("/roof/inspection", "b-" + task, Map.of("reason", "the sun dried it"))
                .then()
                .statusCode(200);
        script("/sheet/findings", "f-" + task, Map.of("kind", "dirt", "zone", "rear-left"))
                .then()
                .statusCode(200);
    }

    @Test
    void aStopByTheLinkAnswersTheSheetAndEndsTheLink() {
        form(task, "/stop-and-refer", Map.of("by", "Tess Alder", "why", "the seam gives way under the hand"))
                .then()
                .statusCode(200)
                .body(containsString("Verdict: stop and refer"))
                .body(containsString("Stopped and referred to a workshop"));

        assertThat(SheetDriver.unit(unit).getString("hold")).isNotNull();
        given().cookie(COOKIE, token)
                .accept(ContentType.HTML)
                .redirects()
                .follow(false)
                .get("/tasks/" + task + "/sheet")
                .then()
                .statusCode(303);
    }

    @Test
    void aStopWhoseAnswerWasLostGetsItOnceMore() {
        Map<String, String> stop = Map.of("by", "Tess Alder", "why", "the seam gives way under the hand");
        script("/stop-and-refer", "r-" + task, stop).then().statusCode(200);
        script("/stop-and-refer", "r-" + task, stop).then().statusCode(200).body(containsString("stop and refer"));
    }

    @Test
    void thePartsOfAnotherJobStayShut() {
        String other = "P-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(other);
        String otherTask = SheetDriver.strike(other).getString("task.id");

        for (String path : List.of("/roof/wash", "/roof/too-dirty", "/stop-and-refer", "/membrane", "/decision")) {
            assertShut(form(otherTask, path, Map.of("by", "Tess Alder", "why", "in doubt")));
        }
        assertShut(form(task, "/membrane", Map.of("system", "Hallowsheet E60", "confirmedBy", "the dealer")));
        assertShut(form(task, "/decision", Map.of("choice", "rework", "reason", "in doubt")));
        assertThat(as("coordinator").get("/api/tasks/" + otherTask).jsonPath().getString("state"))
                .isEqualTo("assigned");
    }

    private static void assertShut(Response answer) {
        assertThat(answer.statusCode()).isIn(303, 401);
        assertThat(String.valueOf(answer.header("Location"))).doesNotContain("/sheet#");
    }
}
