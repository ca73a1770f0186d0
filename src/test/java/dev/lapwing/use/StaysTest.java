package dev.lapwing.use;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.startsWith;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** When a unit was in storage or in the workshop, beside its rentals. */
@QuarkusTest
class StaysTest {
    @Inject
    FleetFixture fleet;

    private String unit;

    @BeforeEach
    void aFreshUnit() {
        unit = "ST-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
    }

    @Test
    void aStayIsAddedEndedAndListed() {
        String id = stay("storage", "2026-01-05T09:00:00-05:00", null, "under trees")
                .statusCode(201)
                .body("place", equalTo("under trees"))
                .body("by", equalTo("desk"))
                .extract()
                .path("id");

        as("desk")
                .body(Map.of("kind", "storage", "from", "2026-01-05T09:00:00-05:00", "until", "2026-03-01T09:00:00Z"))
                .put("/api/units/" + unit + "/stays/" + id)
                .then()
                .statusCode(200)
                .body("until", equalTo("2026-03-01T04:00:00-05:00"));
        as("tech1")
                .get("/api/units/" + unit + "/stays")
                .then()
                .body("total", equalTo(1))
                .body("items", hasSize(1))
                .body("items[0].kind", equalTo("storage"));
    }

    @Test
    void aStaySharesNoTimeWithAnotherNorWithARental() {
        stay("workshop", "2026-02-01T09:00:00Z", "2026-02-10T09:00:00Z", null).statusCode(201);
        rental("2026-03-01T09:00:00Z", "2026-03-08T09:00:00Z");

        stay("storage", "2026-02-05T09:00:00Z", "2026-02-20T09:00:00Z", null)
                .statusCode(400)
                .body("errors[0].field", equalTo("from"))
                .body("errors[0].message", startsWith("overlaps the workshop from 2026-02-01T09:00:00Z to"));
        stay("storage", "2026-02-20T09:00:00Z", "2026-03-02T09:00:00Z", null)
                .statusCode(400)
                .body("errors[0].message", containsString("overlaps the rental from 2026-03-01T09:00:00Z"));
        stay("storage", "2026-03-02T09:00:00Z", null, null).statusCode(400);
        stay("storage", "2026-02-10T09:00:00Z", "2026-03-01T09:00:00Z", null).statusCode(201);
    }

    @Test
    void storageUntilFurtherNoticeIsInterruptedByTheRentalsThatFollow() {
        rental("2026-03-01T09:00:00Z", "2026-03-08T09:00:00Z");

        stay("storage", "2026-02-10T09:00:00Z", null, null).statusCode(201);
        rental("2026-04-01T09:00:00Z", "2026-04-08T09:00:00Z");
    }

    @Test
    void wrongFieldsAreNamed() {
        stay("garage", "2026-03-02T09:00:00Z", "2026-03-01T09:00:00Z", "under water")
                .statusCode(400)
                .body("errors.field", hasItems("kind", "until", "place"));
        stay("workshop", "2026-03-02T09:00:00Z", null, "inside")
                .statusCode(400)
                .body("errors.field", hasItems("place"));
    }

    private ValidatableResponse stay(String kind, String from, String until, String place) {
        var body = new HashMap<String, String>();
        body.put("kind", kind);
        body.put("from", from);
        body.put("until", until);
        body.put("place", place);
        return as("desk").body(body).post("/api/units/" + unit + "/stays").then();
    }

    private void rental(String out, String back) {
        as("desk")
                .body(Map.of("out", out, "back", back))
                .post("/api/units/" + unit + "/rentals")
                .then()
                .statusCode(201);
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
