package dev.lapwing.returns;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Notes read on their own, in batches, and corrected by people. */
@QuarkusTest
class ReadingsTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @Inject
    FleetFixture fleet;

    private String unit;

    @BeforeEach
    void aUnit() {
        unit = "R-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
    }

    @Test
    void aNoteIsReadWithItsEvidenceWhereItStands() {
        String note = "Nice trip. A branch scraped the roof near the lake.";

        JsonPath reading = as("desk")
                .body(Map.of("note", note))
                .post("/api/contact-readings")
                .then()
                .statusCode(200)
                .body("verdict", equalTo("contact"))
                .body("language", equalTo("en"))
                .body("reason", notNullValue())
                .extract()
                .jsonPath();

        List<Map<String, Object>> evidence = reading.getList("evidence");
        assertThat(evidence)
                .isNotEmpty()
                .allSatisfy(piece -> assertThat(note.substring((int) piece.get("start"), (int) piece.get("end")))
                        .isEqualTo(piece.get("text")));
    }

    @Test
    void aBatchIsAnsweredLineByLineInOrderAndABadLineStopsNothing() throws IOException {
        String lines =
                "{\"note\": \"a branch scraped the roof\"}\nnot json\n\n{\"note\": \"all fine\"}\n{\"note\": 7}\n{}\n";

        String[] answers = batch(lines).split("\n");

        assertThat(answers).hasSize(5);
        assertThat(JSON.readTree(answers[0]).path("verdict").asText()).isEqualTo("contact");
        assertThat(JSON.readTree(answers[1]).path("line").asInt()).isEqualTo(2);
        assertThat(JSON.readTree(answers[2]).path("verdict").asText()).isEqualTo("none");
        assertThat(JSON.readTree(answers[3]).path("line").asInt()).isEqualTo(5);
        assertThat(JSON.readTree(answers[4])
                        .path("errors")
                        .path(0)
                        .path("field")
                        .asText())
                .isEqualTo("note");
    }

    @Test
    void manyNotesComeBackInTheirOrder() throws IOException {
        int count = 5_000;
        var lines = new StringBuilder();
        for (int i = 0; i < count; i++) {
            lines.append(
                    i % 2 == 0 ? "{\"note\": \"a branch scraped the roof\"}\n" : "{\"note\": \"all fine, thanks\"}\n");
        }

        String[] answers = batch(lines.toString()).split("\n");

        assertThat(answers).hasSize(count);
        for (int i = 0; i < count; i++) {
            JsonNode answer = JSON.readTree(answers[i]);
            assertThat(answer.path("verdict").asText()).as("line " + i).isEqualTo(i % 2 == 0 ? "contact" : "none");
        }
    }

    @Test
    void aReadingThatMissedAContactIsOverruledIntoAStrike() {
        String report = file("All fine, lovely trip, the tank is empty.");

        as("desk")
                .body(Map.of("contact", true, "by", "Dean Marsh", "why", "the customer now says a bough lay on it"))
                .post("/api/return-reports/" + report + "/correction")
                .then()
                .statusCode(201)
                .body("strike.id", notNullValue())
                .body("hold.id", notNullValue())
                .body("task.assignee", notNullValue());

        as("coordinator")
                .get("/api/reading-corrections")
                .then()
                .statusCode(200)
                .body("items[0].report", equalTo(report))
                .body("items[0].read", equalTo("none"))
                .body("items[0].source", equalTo("overruled"));
    }

    @Test
    void aFalseAlarmIsNotedButEndsNoHold() {
        String report = file("scraped the top along an oak limb at the site");

        as("desk")
                .body(Map.of("contact", false, "by", "Dean Marsh", "why", "that was the table"))
                .post("/api/return-reports/" + report + "/correction")
                .then()
                .statusCode(201);

        as("desk").get("/api/units/" + unit).then().body("hold.state", equalTo("open"));
        as("desk")
                .body(Map.of("contact", true, "by", "Dean Marsh", "why", "it was not"))
                .post("/api/return-reports/" + report + "/correction")
                .then()
                .statusCode(409);
    }

    @Test
    void anAnsweredQuestionIsExportedAsALabelledNote() throws IOException {
        String note = "There was a loud bang somewhere on the way, not sure if we touched anything. " + unit;
        String report = file(note);
        as("desk")
                .body(Map.of("contact", false, "by", "Dean Marsh", "why", "a drawer had opened"))
                .post("/api/return-reports/" + report + "/answer")
                .then()
                .statusCode(200)
                .body("strike", nullValue());

        String exported = as("coordinator")
                .get("/api/reading-corrections/labelled-notes")
                .then()
                .statusCode(200)
                .extract()
                .asString();

        JsonNode line = exported.lines()
                .filter(text -> text.contains(unit))
                .map(ReadingsTest::tree)
                .findFirst()
                .orElseThrow();
        assertThat(line.path("note").asText()).isEqualTo(note);
        assertThat(line.path("verdict").asText()).isEqualTo("none");
        assertThat(line.path("language").asText()).isEqualTo("en");
        assertThat(line.path("travelHeightMetres").asDouble()).isEqualTo(3.2);
    }

    @Test
    void aCorrectionWithoutReasonIsRefused() {
        String report = file("All fine.");

        as("desk")
                .body(Map.of("contact", true))
                .post("/api/return-reports/" + report + "/correction")
                .then()
                .statusCode(400)
                .body("errors.field", hasItem("why"));
    }

    private String file(String note) {
        return as("desk")
                .body(Map.of("unit", unit, "returnedAt", "2025-11-20T10:00:00-05:00", "note", note))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
    }

    private static String batch(String lines) {
        return as("desk")
                .contentType("application/x-ndjson")
                .body(lines.getBytes(StandardCharsets.UTF_8))
                .post("/api/contact-readings/batch")
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    private static JsonNode tree(String line) {
        try {
            return JSON.readTree(line);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
