package dev.lapwing.returns;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.oneOf;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A unit comes back, and what is said of it is acted on in one transaction. */
@QuarkusTest
class StrikePathTest {
    private static final String STRUCK = "scraped the top along an oak limb at the site";
    private static final String UNCLEAR =
            "There was a loud bang somewhere on the way, not sure if we touched anything.";

    @Inject
    FleetFixture fleet;

    @Inject
    Clock clock;

    private String unit;

    @BeforeEach
    void aFreshUnit() {
        unit = "H-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
    }

    @Test
    void contactHoldsTheUnitAndOpensAnInspectionDueThatInstantInOneAnswer() {
        Instant before = clock.instant();
        var answer = asDesk().body(report(STRUCK))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .body("unit", equalTo(unit))
                .body("reading.verdict", equalTo("contact"))
                .body("reading.evidence.text", hasItem("limb"))
                .body("hold.id", notNullValue())
                .body("strike.id", notNullValue())
                .body("task.assignee", oneOf("tech1", "tech2"))
                .body("question", nullValue())
                .extract()
                .jsonPath();

        Instant due = OffsetDateTime.parse(answer.getString("task.due")).toInstant();
        assertThat(due).isBetween(before, clock.instant());
        asDesk().get("/api/tasks/" + answer.getString("task.id"))
                .then()
                .statusCode(200)
                .body("kind", equalTo("strike inspection"))
                .body("state", equalTo("assigned"))
                .body("standing", equalTo("strike"))
                .body("why", containsString("oak limb"));
        asDesk().get("/api/units/" + unit)
                .then()
                .body("hold.id", equalTo(answer.getString("hold.id")))
                .body("hold.state", equalTo("open"));
    }

    @Test
    void aMarkOnTheRoofPlanIsAStrikeWhateverTheNoteSays() {
        asDesk().body(Map.of(
                        "unit",
                        unit,
                        "returnedAt",
                        "2025-11-20T10:00:00-05:00",
                        "note",
                        "",
                        "marks",
                        List.of(Map.of("x", 0.4, "y", 0.5, "kind", "tear"))))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .body("reading.verdict", equalTo("none"))
                .body("strike.id", notNullValue())
                .body("task.id", notNullValue());
    }

    @Test
    void aNoteWithoutContactLeavesTheUnitFree() {
        asDesk().body(report("All fine, lovely trip, tank is empty and the fridge is clean."))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .body("reading.verdict", equalTo("none"))
                .body("strike", nullValue())
                .body("hold", nullValue())
                .body("task", nullValue());
    }

    @Test
    void anUnclearNoteHoldsTheUnitUntilTheDeskAnswersNo() {
        String id = unclearReport();
        asDesk().get("/api/units/" + unit).then().body("hold.cause", equalTo("question"));

        answer(id, false)
                .then()
                .statusCode(200)
                .body("question.contact", is(false))
                .body("strike", nullValue());

        asDesk().get("/api/units/" + unit).then().body("hold", nullValue());
        answer(id, true).then().statusCode(409).contentType("application/problem+json");
    }

    @Test
    void anUnclearNoteAnsweredYesBecomesAStrikeWithItsOwnHold() {
        String id = unclearReport();

        answer(id, true)
                .then()
                .statusCode(200)
                .body("strike.id", notNullValue())
                .body("task.assignee", notNullValue());

        asDesk().get("/api/units/" + unit).then().body("hold.cause", equalTo("strike"));
    }

    @Test
    void aStrikeCanBeFlaggedWithoutAReport() {
        asDesk().body(Map.of("seenAt", "2025-11-20T10:00:00Z", "note", "dent in the front cap", "by", "Yard hand"))
                .post("/api/units/" + unit + "/strikes")
                .then()
                .statusCode(201)
                .body("hold.id", notNullValue())
                .body("task.due", notNullValue());
    }

    @Test
    void theSameKeyAndWordsMakeOneStrikeAndTheSameKeyWithOtherWordsIsRefused() {
        String key = UUID.randomUUID().toString();
        String first = sendWithKey(key, STRUCK).then().statusCode(201).extract().asString();

        String second =
                sendWithKey(key, STRUCK).then().statusCode(201).extract().asString();

        assertThat(second).isEqualTo(first);
        sendWithKey(key, STRUCK + "!").then().statusCode(422).contentType("application/problem+json");
        assertThat(openHoldsOfUnit()).isEqualTo(1);
    }

    @Test
    void theSameKeySentManyTimesAtOnceMakesOneStrike() throws Exception {
        String key = UUID.randomUUID().toString();
        Callable<String> sending =
                () -> sendWithKey(key, STRUCK).then().statusCode(201).extract().path("id");
        var pool = Executors.newFixedThreadPool(6);

        List<Future<String>> answers = pool.invokeAll(List.of(sending, sending, sending, sending, sending, sending));
        pool.shutdown();

        String first = answers.get(0).get();
        for (Future<String> answer : answers) {
            assertThat(answer.get()).isEqualTo(first);
        }
        assertThat(openHoldsOfUnit()).isEqualTo(1);
    }

    @Test
    void aHeldUnitIsNotReleasedBeforeItsRoofWasInspected() {
        String hold = asDesk().body(report(STRUCK))
                .post("/api/return-reports")
                .then()
                .extract()
                .path("hold.id");

        as("coordinator")
                .body(Map.of("by", "Cora Vale", "statement", "Looks fine from here"))
                .post("/api/holds/" + hold + "/release")
                .then()
                .statusCode(409)
                .contentType("application/problem+json");
    }

    @Test
    void theTechAcceptsAndStartsAndNoStepIsSkipped() {
        var filed = asDesk().body(report(STRUCK))
                .post("/api/return-reports")
                .then()
                .extract()
                .jsonPath();
        String task = "/api/tasks/" + filed.getString("task.id");
        String tech = filed.getString("task.assignee");
        String other = tech.equals("tech1") ? "tech2" : "tech1";

        as(tech).post(task + "/start").then().statusCode(409);
        as(other).post(task + "/start").then().statusCode(409);
        as(tech).post(task + "/acceptance").then().statusCode(200).body("state", equalTo("accepted"));
        as(other).post(task + "/acceptance").then().statusCode(409);
        as(tech).post(task + "/start").then().statusCode(200).body("state", equalTo("under way"));
        as("coordinator")
                .body(Map.of("why", "not needed"))
                .post(task + "/call-off")
                .then()
                .statusCode(409);
    }

    @Test
    void strikesStandFirstInTheDueList() {
        asDesk().body(report(STRUCK)).post("/api/return-reports").then().statusCode(201);

        as("coordinator")
                .queryParam("depot", FleetFixture.DEPOT)
                .queryParam("limit", 500)
                .get("/api/due-list")
                .then()
                .statusCode(200)
                .body("items[0].standing", equalTo("strike"))
                .body("items[0].hold.state", equalTo("open"))
                .body("items.unit", hasItem(unit));
    }

    private String unclearReport() {
        return asDesk().body(report(UNCLEAR))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .body("reading.verdict", equalTo("unclear"))
                .body("question.text", notNullValue())
                .body("hold.id", notNullValue())
                .body("strike", nullValue())
                .extract()
                .path("id");
    }

    private Response answer(String report, boolean contact) {
        return asDesk().body(Map.of("contact", contact, "by", "Dean Marsh", "why", "asked the customer"))
                .post("/api/return-reports/" + report + "/answer");
    }

    private Response sendWithKey(String key, String note) {
        return asDesk().header("Idempotency-Key", key).body(report(note)).post("/api/return-reports");
    }

    private long openHoldsOfUnit() {
        List<String> units = as("coordinator")
                .queryParam("state", "open")
                .queryParam("limit", 500)
                .get("/api/holds")
                .then()
                .extract()
                .path("items.unit");
        return units.stream().filter(unit::equals).count();
    }

    private Map<String, Object> report(String note) {
        return Map.of("unit", unit, "returnedAt", "2025-11-20T10:00:00-05:00", "note", note);
    }

    private static RequestSpecification asDesk() {
        return as("desk");
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
