package dev.lapwing.fleet;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.nullValue;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A coordinator keeps the list of depots. */
@QuarkusTest
class DepotsTest {
    @Inject
    FleetFixture fleet;

    private final String code = "d-" + UUID.randomUUID().toString().substring(0, 8);

    @BeforeEach
    void people() {
        fleet.people();
    }

    @Test
    void aDepotThatWasAddedIsListed() {
        asCoordinator()
                .body(depot(Map.of()))
                .post("/api/depots")
                .then()
                .statusCode(201)
                .body("code", equalTo(code))
                .body("zone", equalTo("America/Phoenix"))
                .body("season.opens", equalTo("10-01"))
                .body("deskMail", nullValue());
        as("tech1").get("/api/depots?limit=500").then().statusCode(200).body("items.code", hasItem(code));
    }

    @Test
    void aCodeIsTakenOnce() {
        asCoordinator().body(depot(Map.of())).post("/api/depots").then().statusCode(201);
        asCoordinator().body(depot(Map.of())).post("/api/depots").then().statusCode(409);
    }

    @Test
    void aDepotCanChangeItsSeasonAndMail() {
        asCoordinator().body(depot(Map.of())).post("/api/depots");
        var changed = depot(
                Map.of("season", Map.of("opens", "03-01", "closes", "11-15"), "deskMail", "desk@haldenridge.example"));
        asCoordinator()
                .body(changed)
                .put("/api/depots/" + code)
                .then()
                .statusCode(200)
                .body("season.closes", equalTo("11-15"))
                .body("deskMail", equalTo("desk@haldenridge.example"));
    }

    @ParameterizedTest
    @CsvSource({
        "code, Tarn Hollow, code",
        "code, -x, code",
        "name, '', name",
        "zone, Mars/Olympus, zone",
        "zone, +02:00, zone",
        "zone, '', zone",
        "deskMail, desk at tarn, deskMail",
    })
    void aWrongFieldIsNamed(String field, String value, String named) {
        refused(Map.of(field, value), named);
    }

    @ParameterizedTest
    @CsvSource({
        "13-01, 10-31, season.opens",
        "04-01, 02-30, season.closes",
        "4-1, 10-31, season.opens",
        "'', 10-31, season.opens",
        "04-01, 04-20, season",
    })
    void aSeasonIsMadeOfDaysOfTheYear(String opens, String closes, String named) {
        refused(Map.of("season", Map.of("opens", opens, "closes", closes)), named);
    }

    @Test
    void onlyACoordinatorChangesDepots() {
        as("desk").body(depot(Map.of())).post("/api/depots").then().statusCode(403);
        as("tech1")
                .body(depot(Map.of()))
                .put("/api/depots/" + FleetFixture.DEPOT)
                .then()
                .statusCode(403);
    }

    @Test
    void anUnknownDepotCannotBeChanged() {
        asCoordinator().body(depot(Map.of())).put("/api/depots/" + code).then().statusCode(404);
    }

    private void refused(Map<String, Object> changes, String named) {
        asCoordinator()
                .body(depot(changes))
                .post("/api/depots")
                .then()
                .statusCode(400)
                .contentType("application/problem+json")
                .body("errors.field", hasItem(named));
    }

    private Map<String, Object> depot(Map<String, Object> changes) {
        var depot = new HashMap<String, Object>(Map.of(
                "code",
                code,
                "name",
                "Cinder Flats",
                "zone",
                "America/Phoenix",
                "season",
                Map.of("opens", "10-01", "closes", "04-30")));
        depot.putAll(changes);
        return depot;
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
