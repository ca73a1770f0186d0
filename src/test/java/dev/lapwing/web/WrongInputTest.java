package dev.lapwing.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;

import dev.lapwing.platform.FleetFixture;
import dev.lapwing.returns.storage.ReturnReport;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wrong input gets a problem answer (RFC 9457) that names each wrong field, and nothing is stored. */
@QuarkusTest
class WrongInputTest {
    private static final String UNIT = "W-1";
    private static final String THEN = "\"returnedAt\": \"2025-11-20T10:00:00Z\"";

    @Inject
    FleetFixture fleet;

    private long before;

    @BeforeEach
    void aUnit() {
        fleet.unit(UNIT);
        before = reports();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "unit        | {\"unit\": \"nowhere\", THEN, \"note\": \"fine\"}",
                "unit        | {THEN, \"note\": \"fine\"}",
                "returnedAt  | {\"unit\": \"W-1\", \"note\": \"fine\"}",
                "returnedAt  | {\"unit\": \"W-1\", \"returnedAt\": \"2099-01-01T00:00:00Z\", \"note\": \"fine\"}",
                "returnedAt  | {\"unit\": \"W-1\", \"returnedAt\": \"yesterday\", \"note\": \"fine\"}",
                "returnedAt  | {\"unit\": \"W-1\", \"returnedAt\": \"2025-11-20T10:00:00\", \"note\": \"fine\"}",
                "note        | {\"unit\": \"W-1\", THEN, \"note\": \"  \"}",
                "note        | {\"unit\": \"W-1\", THEN}",
                "note        | {\"unit\": \"W-1\", THEN, \"note\": 7}",
                "note        | {\"unit\": \"W-1\", THEN, \"note\": [\"fine\"]}",
                "note        | {\"unit\": \"W-1\", THEN, \"note\": \"a\\u0000b\"}",
                "language    | {\"unit\": \"W-1\", THEN, \"note\": \"fine\", \"language\": \"xx\"}",
                "odometerKm  | {\"unit\": \"W-1\", THEN, \"note\": \"fine\", \"odometerKm\": -1}",
                "odometerKm  | {\"unit\": \"W-1\", THEN, \"note\": \"fine\", \"odometerKm\": \"many\"}",
                "odometerKm  | {\"unit\": \"W-1\", THEN, \"note\": \"fine\", \"odometerKm\": 1.5}",
                "marks[0].x  | {\"unit\": \"W-1\", THEN, \"marks\": [{\"x\": 1.2, \"y\": 0.5, \"kind\": \"dent\"}]}",
                "marks[0].kind | {\"unit\": \"W-1\", THEN, \"marks\": [{\"x\": 0.2, \"y\": 0.5}]}",
                "marks[1]    | {\"unit\": \"W-1\", THEN, \"marks\": [{\"x\": 0, \"y\": 0, \"kind\": \"dent\"}, null]}",
                "marks       | {\"unit\": \"W-1\", THEN, \"note\": \"fine\", \"marks\": \"none\"}",
                "body        | null"
            })
    void eachWrongFieldOfAReportIsNamed(String field, String body) {
        refused(asDesk().body(body.replace("THEN", THEN))).body("errors.field", hasItem(field));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "[]", "not json", "{\"unit\": \"W-1\"} and more", "", "\"text\""})
    void aBodyThatIsNotTheExpectedJsonIsRefused(String body) {
        refused(asDesk().body(body));
    }

    @Test
    void allWrongFieldsAreNamedAtOnce() {
        refused(asDesk().body("{\"note\": \"\", \"odometerKm\": -3}"))
                .body("errors.field", hasItems("unit", "returnedAt", "note", "odometerKm"));
    }

    @Test
    void aNoteOverTwentyThousandCharactersIsRefusedAndOneOfThatLengthIsNot() {
        refused(asDesk().body(Map.of("unit", UNIT, "returnedAt", "2025-11-20T10:00:00Z", "note", "x".repeat(20_001))))
                .body("errors[0].field", equalTo("note"));

        asDesk().body(Map.of("unit", UNIT, "returnedAt", "2025-11-20T10:00:00Z", "note", "x".repeat(20_000)))
                .post("/api/return-reports")
                .then()
                .statusCode(201);
    }

    @Test
    void aVinWithAFailingCheckDigitIsTakenWithAWarning() {
        asCoordinator()
                .body(Map.of(
                        "number",
                        "W-VIN-" + System.identityHashCode(this),
                        "vin",
                        "1G4AH59H45G118331",
                        "kind",
                        "trailer",
                        "depot",
                        FleetFixture.DEPOT,
                        "lengthMetres",
                        5.5,
                        "heightMetres",
                        2.6,
                        "roof",
                        Map.of("surface", "galvanised steel", "footing", "walkable")))
                .post("/api/units")
                .then()
                .statusCode(201)
                .body("warnings[0].field", equalTo("vin"));
    }

    @Test
    void wrongWordsOfAUnitAreNamedWithTheAllowedOnes() {
        asCoordinator()
                .body(Map.of(
                        "number",
                        "W 2/3",
                        "kind",
                        "boat",
                        "depot",
                        "atlantis",
                        "lengthMetres",
                        90,
                        "heightMetres",
                        2.6,
                        "roof",
                        Map.of("surface", "thatch", "footing", "walkable")))
                .post("/api/units")
                .then()
                .statusCode(400)
                .body("errors.field", hasItems("number", "kind", "depot", "lengthMetres", "roof.surface"))
                .body("errors.message", hasItem("must be one of motorhome, van, trailer"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/tasks/7",
                "/api/tasks/00000000-0000-0000-0000-000000000000",
                "/api/return-reports/nothing",
                "/api/units/none",
                "/api/nowhere"
            })
    void whatIsNotThereIsAProblemToo(String path) {
        asCoordinator()
                .get(path)
                .then()
                .statusCode(404)
                .contentType(Problem.MEDIA_TYPE)
                .body("status", equalTo(404));
    }

    @Test
    void wrongFiltersAreNamed() {
        asCoordinator()
                .queryParam("from", "soon")
                .queryParam("kind", "polish")
                .queryParam("after", "%%%")
                .get("/api/due-list")
                .then()
                .statusCode(400)
                .body("errors.field", hasItems("from", "kind", "after"));
    }

    @Test
    void withoutASignInNothingIsDoneAndARoleDoesOnlyItsOwn() {
        given().contentType(ContentType.JSON)
                .body("{}")
                .post("/api/return-reports")
                .then()
                .statusCode(401)
                .contentType(Problem.MEDIA_TYPE);
        as("tech1")
                .body("{}")
                .post("/api/return-reports")
                .then()
                .statusCode(403)
                .contentType(Problem.MEDIA_TYPE);
        given().auth()
                .preemptive()
                .basic("desk", "wrong")
                .get("/api/units")
                .then()
                .statusCode(401);
        given().header("Authorization", "Basic ???").get("/api/units").then().statusCode(401);
    }

    private ValidatableResponse refused(RequestSpecification request) {
        ValidatableResponse answer = request.post("/api/return-reports")
                .then()
                .statusCode(400)
                .contentType(Problem.MEDIA_TYPE)
                .body("title", equalTo("Bad Request"))
                .body("detail", not(equalTo("")));
        assertThat(reports()).as("stored reports").isEqualTo(before);
        return answer;
    }

    @Transactional
    long reports() {
        return ReturnReport.count();
    }

    private static RequestSpecification asDesk() {
        return as("desk");
    }

    private static RequestSpecification asCoordinator() {
        return as("coordinator");
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
