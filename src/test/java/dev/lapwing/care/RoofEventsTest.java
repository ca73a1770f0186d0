package dev.lapwing.care;

import static dev.lapwing.care.CareDriver.as;
import static dev.lapwing.care.CareDriver.task;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Water inside, hail or windstorm, a part lost: each asks for an inspection, once, in the time that its rule gives. */
@QuarkusTest
class RoofEventsTest {
    private static final String SEEN = "2026-01-20T10:00:00Z";

    @Inject
    FleetFixture fleet;

    @Inject
    CarePast past;

    private CareDriver unit;

    @BeforeEach
    void aUnitInspectedLately() {
        fleet.people();
        String name = "e" + UUID.randomUUID().toString().substring(0, 8);
        CareDriver.depot("POST", name, "America/New_York", LocalDate.of(2027, 4, 1));
        unit = new CareDriver(name.toUpperCase(Locale.ROOT), name);
        unit.add();
        past.longInService(unit.unit);
        past.inspected(unit.unit, 5);
        unit.sweep();
    }

    private JsonPath report(String kind) {
        return unit.post("care-events", Map.of("kind", kind, "seenAt", SEEN, "note", "drops at the vent", "by", "Dean"))
                .statusCode(201)
                .extract()
                .jsonPath();
    }

    /** Hours of the shipped rules; project defaults, no source. */
    @ParameterizedTest
    @CsvSource({"water inside, 24", "storm, 72", "part lost, 24"})
    void anEventMakesAnInspectionWithinTheTimeOfItsRule(String kind, long hours) {
        JsonPath event = report(kind);

        Duration given = Duration.between(
                OffsetDateTime.parse(event.getString("reportedAt")), OffsetDateTime.parse(event.getString("task.due")));
        assertThat(given).isEqualTo(Duration.ofHours(hours));
        JsonPath task = task(event.getString("task.id"));
        assertThat(task.getString("origin")).isEqualTo(kind);
        assertThat(task.getString("kind")).isEqualTo("inspection");
        assertThat(task.getString("event")).isEqualTo(event.getString("id"));
        assertThat(unit.open()).hasSize(2);
        unit.settled();
    }

    @Test
    void anEventThatWasInspectedOrSettledIsNotAskedForAgain() {
        String inspected = report("storm").getString("task.id");
        CareDriver.doAndSign(inspected);
        String settled = report("part lost").getString("task.id");
        as("coordinator")
                .body(Map.of("why", "it was the aerial of the neighbour"))
                .post("/api/tasks/" + settled + "/call-off")
                .then()
                .statusCode(200);

        unit.sweep();

        assertThat(unit.onlyOpen()).containsEntry("kind", "inspection");
        assertThat(task(unit.onlyOpenId()).getString("origin")).isEqualTo("interval");
        unit.settled();
    }

    @Test
    void sendingAnEventTwiceWithOneKeyMakesOne() {
        var body = Map.of("kind", "storm", "seenAt", SEEN, "note", "hail like walnuts");
        String key = UUID.randomUUID().toString();
        String[] ids = new String[2];
        for (int i = 0; i < ids.length; i++) {
            ids[i] = as("tech1")
                    .header("Idempotency-Key", key)
                    .body(body)
                    .post("/api/units/" + unit.unit + "/care-events")
                    .then()
                    .statusCode(201)
                    .extract()
                    .path("id");
        }

        assertThat(ids[0]).isEqualTo(ids[1]);
        as("desk")
                .get("/api/units/" + unit.unit + "/care-events")
                .then()
                .body("total", equalTo(1))
                .body("items[0].by", equalTo("tech1"));
    }

    @Test
    void wrongFieldsAreNamedAndNothingIsStored() {
        unit.post("care-events", Map.of("kind", "strike", "seenAt", "2099-01-01T00:00:00Z", "note", " "))
                .statusCode(400)
                .body("errors.field", hasItems("kind", "seenAt", "note"))
                .body("errors[0].message", equalTo("must be one of water inside, storm, part lost"));
        as("desk").get("/api/units/" + unit.unit + "/care-events").then().body("total", equalTo(0));
    }
}
