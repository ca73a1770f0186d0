package dev.lapwing.use;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The coordinator sets how a unit is used, over what the rental log says. */
@QuarkusTest
class UsePatternTest {
    @Inject
    FleetFixture fleet;

    private String unit;

    @BeforeEach
    void aFreshUnit() {
        unit = "P-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
    }

    @Test
    void aUnitWithoutALogIsCaredForAsFullTime() {
        as("desk").get("/api/units/" + unit).then().statusCode(200).body("use.pattern", equalTo("full-time"));
    }

    @Test
    void aPatternThatWasSetIsAnsweredWithItsReason() {
        put(Map.of("pattern", "seasonal", "reason", "stays in the hall", "until", "2099-03-01"))
                .statusCode(200)
                .body("use.pattern", equalTo("seasonal"))
                .body("use.reason", containsString("stays in the hall"))
                .body("use.set.by", equalTo("coordinator"))
                .body("use.set.until", equalTo("2099-03-01"));
    }

    @Test
    void aChangeThatDoesNotNameThePatternLeavesIt() {
        put(Map.of("pattern", "seasonal", "reason", "stays in the hall")).statusCode(200);
        put(null).statusCode(200).body("use.pattern", equalTo("seasonal"));
    }

    @Test
    void aWrongWordIsRefusedAndNothingIsStored() {
        put(Map.of("pattern", "sometimes", "reason", "who knows"))
                .statusCode(400)
                .body("errors.field", contains("usePattern.pattern"));
        as("desk").get("/api/units/" + unit).then().body("lengthMetres", equalTo(7.4f));
    }

    @Test
    void aPatternNeedsAReason() {
        put(Map.of("pattern", "seasonal")).statusCode(400).body("errors.field", contains("usePattern.reason"));
    }

    private ValidatableResponse put(Map<String, String> pattern) {
        var body = new HashMap<String, Object>(Map.of(
                "kind",
                "motorhome",
                "depot",
                FleetFixture.DEPOT,
                "lengthMetres",
                8,
                "heightMetres",
                3.2,
                "roof",
                Map.of("surface", "EPDM", "footing", "walkable")));
        body.put("usePattern", pattern);
        return as("coordinator").body(body).put("/api/units/" + unit).then();
    }

    private static io.restassured.specification.RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
