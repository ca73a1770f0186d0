package dev.lapwing.alerts.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.CalendarComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Calendars of open work behind private addresses; what is served is read and checked by ical4j (RFC 5545). */
@QuarkusTest
class CalendarFeedTest {
    @Inject
    FleetFixture fleet;

    private String task;

    @BeforeEach
    void aStrike() {
        String unit = "F-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        task = as("desk")
                .body(Map.of(
                        "unit",
                        unit,
                        "returnedAt",
                        "2025-11-20T10:00:00-05:00",
                        "note",
                        "an oak limb scraped the roof"))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .extract()
                .path("task.id");
    }

    @Test
    void aDepotsCalendarHoldsItsOpenWork() throws Exception {
        JsonPath made = make("coordinator", Map.of("depot", FleetFixture.DEPOT));

        Calendar calendar = read(made.getString("address"));

        assertThat(calendar.validate(true).getEntries()).isEmpty();
        assertThat(uids(calendar)).contains(task + "@haldenridge.example");
    }

    @Test
    void aTechsCalendarHoldsTheirWorkOnly() throws Exception {
        String assignee = as("desk").get("/api/tasks/" + task).path("assignee");
        String other = assignee.equals("tech1") ? "tech2" : "tech1";

        Calendar own = read(make(assignee, Map.of("tech", assignee)).getString("address"));
        Calendar others = read(make(other, Map.of("tech", other)).getString("address"));

        assertThat(uids(own)).contains(task + "@haldenridge.example");
        assertThat(uids(others)).doesNotContain(task + "@haldenridge.example");
    }

    @Test
    void aRevokedAddressFindsNothing() {
        JsonPath made = make("tech1", Map.of("tech", "tech1"));
        String path = path(made.getString("address"));
        given().get(path).then().statusCode(200).contentType(startsWith("text/calendar"));

        as("tech1").delete("/api/calendar-feeds/" + made.getString("id")).then().statusCode(204);

        given().get(path).then().statusCode(404);
        as("coordinator").get("/api/calendar-feeds").then().body("items.id", not(hasItem(made.getString("id"))));
    }

    @Test
    void theAddressIsShownOnceAndCannotBeGuessed() {
        JsonPath made = make("coordinator", Map.of("tech", "tech1"));

        as("tech1")
                .get("/api/calendar-feeds")
                .then()
                .statusCode(200)
                .body("items.find { it.id == '" + made.getString("id") + "' }.address", nullValue());
        given().get("/api/calendar/" + UUID.randomUUID() + ".ics").then().statusCode(404);
        given().get("/api/calendar/x").then().statusCode(404);
    }

    @Test
    void aTechCannotMakeOrRevokeACalendarOfOthers() {
        JsonPath depots = make("coordinator", Map.of("depot", FleetFixture.DEPOT));

        as("tech1")
                .body(Map.of("tech", "tech2"))
                .post("/api/calendar-feeds")
                .then()
                .statusCode(403);
        as("tech1")
                .body(Map.of("depot", FleetFixture.DEPOT))
                .post("/api/calendar-feeds")
                .then()
                .statusCode(403);
        as("tech1")
                .delete("/api/calendar-feeds/" + depots.getString("id"))
                .then()
                .statusCode(403);
        as("desk")
                .body(Map.of("depot", FleetFixture.DEPOT))
                .post("/api/calendar-feeds")
                .then()
                .statusCode(403);
    }

    @Test
    void wrongWishesAreRefusedWithTheFieldNamed() {
        as("coordinator")
                .body(Map.of())
                .post("/api/calendar-feeds")
                .then()
                .statusCode(400)
                .body("errors.field", hasItem("tech"));
        as("coordinator")
                .body(Map.of("tech", "nobody"))
                .post("/api/calendar-feeds")
                .then()
                .statusCode(400)
                .body("errors.field", hasItem("tech"));
        as("coordinator")
                .body(Map.of("depot", "nowhere"))
                .post("/api/calendar-feeds")
                .then()
                .statusCode(400)
                .body("errors.field", hasItem("depot"));
    }

    private static JsonPath make(String by, Map<String, String> wanted) {
        return as(by).body(wanted)
                .post("/api/calendar-feeds")
                .then()
                .statusCode(201)
                .extract()
                .jsonPath();
    }

    private static Calendar read(String address) throws Exception {
        String text =
                given().get(path(address)).then().statusCode(200).extract().asString();
        return new CalendarBuilder().build(new StringReader(text));
    }

    private static String path(String address) {
        return address.substring("http://localhost:8080".length());
    }

    private static List<String> uids(Calendar calendar) {
        List<CalendarComponent> components = calendar.getComponents();
        return components.stream()
                .map(component -> component.getProperty("UID").orElseThrow().getValue())
                .toList();
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
