package dev.lapwing.use;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.notNullValue;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The desk writes down when a unit goes out and comes back. */
@QuarkusTest
class RentalLogTest {
    @Inject
    FleetFixture fleet;

    private String unit;

    @BeforeEach
    void aFreshUnit() {
        unit = "R-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
    }

    @Test
    void aRentalIsAnsweredInTheTimeOfTheDepot() {
        add("2025-06-02T14:00:00Z", "2025-06-09T14:00:00Z")
                .statusCode(201)
                .body("id", notNullValue())
                .body("unit", equalTo(unit))
                .body("out", equalTo("2025-06-02T10:00:00-04:00"))
                .body("reference", equalTo("R1"));
    }

    @Test
    void rentalsAreListedLatestFirstPageByPage() {
        add("2025-06-02T14:00:00Z", "2025-06-09T14:00:00Z");
        add("2025-07-02T14:00:00Z", "2025-07-09T14:00:00Z");
        add("2025-08-02T14:00:00Z", null);
        String next = asDesk().get("/api/units/" + unit + "/rentals?limit=2")
                .then()
                .statusCode(200)
                .body("total", equalTo(3))
                .body("items.out", contains("2025-08-02T10:00:00-04:00", "2025-07-02T10:00:00-04:00"))
                .extract()
                .path("next");
        asDesk().queryParam("after", next)
                .get("/api/units/" + unit + "/rentals")
                .then()
                .body("items.out", contains("2025-06-02T10:00:00-04:00"));
    }

    @ParameterizedTest
    @CsvSource({
        "2025-06-05T00:00:00Z, 2025-06-06T00:00:00Z",
        "2025-06-01T00:00:00Z, 2025-06-02T14:00:01Z",
        "2025-06-09T13:59:59Z, 2025-06-10T00:00:00Z",
        "2025-06-01T00:00:00Z, ",
        "2025-06-01T00:00:00Z, 2025-07-01T00:00:00Z",
    })
    void aUnitIsOutOnceAtATime(String out, String back) {
        add("2025-06-02T14:00:00Z", "2025-06-09T14:00:00Z").statusCode(201);
        add(out, back)
                .statusCode(400)
                .body("errors.field", contains("out"))
                .body("errors.message", contains(containsString("overlaps")));
    }

    @Test
    void aUnitCanGoOutTheMomentItIsBack() {
        add("2025-06-02T14:00:00Z", "2025-06-09T14:00:00Z").statusCode(201);
        add("2025-06-09T14:00:00Z", "2025-06-12T14:00:00Z").statusCode(201);
        add("2025-05-20T14:00:00Z", "2025-06-02T14:00:00Z").statusCode(201);
    }

    @Test
    void nothingFollowsARentalWithoutAnEndUntilItsReturnIsWrittenDown() {
        String id = add("2025-06-02T14:00:00Z", null).extract().path("id");
        add("2025-07-01T00:00:00Z", null).statusCode(400);
        asDesk().body(rental("2025-06-02T14:00:00Z", "2025-06-20T10:00:00Z"))
                .put("/api/units/" + unit + "/rentals/" + id)
                .then()
                .statusCode(200)
                .body("back", equalTo("2025-06-20T06:00:00-04:00"));
        add("2025-07-01T00:00:00Z", null).statusCode(201);
    }

    @ParameterizedTest
    @CsvSource({
        "2025-06-09T14:00:00Z, 2025-06-02T14:00:00Z, back",
        "2025-06-02T14:00:00Z, 2025-06-02T14:00:00Z, back",
        "1066-10-14T09:00:00Z, , out",
        "9999-01-01T00:00:00Z, , out",
        "2025-06-02T14:00:00Z, 9999-01-01T00:00:00Z, back",
        "2025-06-02, , out",
        ", 2025-06-02T14:00:00Z, out",
    })
    void aWrongTimeIsNamed(String out, String back, String named) {
        add(out, back).statusCode(400).body("errors.field", hasItem(named));
    }

    @Test
    void anUnknownUnitHasNoRentals() {
        asDesk().body(rental("2025-06-02T14:00:00Z", null))
                .post("/api/units/none-such/rentals")
                .then()
                .statusCode(404);
    }

    @Test
    void theSameKeyMakesOneRental() {
        var body = rental("2025-06-02T14:00:00Z", null);
        String key = UUID.randomUUID().toString();
        String first = post(body, key).statusCode(201).extract().path("id");
        String second = post(body, key).statusCode(201).extract().path("id");
        assertThat(second).isEqualTo(first);
    }

    @Test
    void ofManyOverlappingEntriesAtOnceOneGoesIn() throws Exception {
        var pool = Executors.newFixedThreadPool(8);
        Callable<Integer> entry = () ->
                add("2025-06-02T14:00:00Z", "2025-06-09T14:00:00Z").extract().statusCode();
        List<Integer> statuses;
        try {
            statuses = pool.invokeAll(java.util.Collections.nCopies(8, entry)).stream()
                    .map(RentalLogTest::get)
                    .toList();
        } finally {
            pool.shutdown();
        }
        assertThat(statuses).containsOnlyOnce(201).containsOnly(201, 400);
    }

    private static <T> T get(java.util.concurrent.Future<T> future) {
        try {
            return future.get();
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aTechDoesNotWriteTheLog() {
        as("tech1")
                .body(rental("2025-06-02T14:00:00Z", null))
                .post("/api/units/" + unit + "/rentals")
                .then()
                .statusCode(403);
    }

    private ValidatableResponse add(String out, String back) {
        return asDesk().body(rental(out, back))
                .post("/api/units/" + unit + "/rentals")
                .then();
    }

    private ValidatableResponse post(Map<String, String> body, String key) {
        return asDesk().header("Idempotency-Key", key)
                .body(body)
                .post("/api/units/" + unit + "/rentals")
                .then();
    }

    private static Map<String, String> rental(String out, String back) {
        var rental = new HashMap<String, String>();
        rental.put("out", out);
        rental.put("back", back);
        rental.put("reference", "R1");
        return rental;
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
