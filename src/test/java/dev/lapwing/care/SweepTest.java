package dev.lapwing.care;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.notNullValue;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.quartz.CronTrigger;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.quartz.TriggerKey;

/** The sweep plans what is due, and the second one finds nothing to do. */
@QuarkusTest
class SweepTest {
    @Inject
    FleetFixture fleet;

    @Inject
    Scheduler scheduler;

    private String unit;

    @BeforeEach
    void aUnitThatNobodySwept() {
        unit = "S-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
    }

    @Test
    void aSecondSweepOnTheSameFactsCreatesNothing() {
        JsonPath first = sweep();
        assertThat(first.getInt("created")).isPositive();
        assertThat(first.getList("failed")).isEmpty();

        JsonPath second = sweep();

        assertThat(second.getInt("created")).isZero();
        assertThat(second.getInt("calledOff")).isZero();
        assertThat(second.getInt("units")).isEqualTo(first.getInt("units"));
        coordinator()
                .get("/api/units/" + unit)
                .then()
                .body("nextDue.kind", equalTo("inspection"))
                .body("nextDue.why", containsString("rule"));
        assertThat(openRoutineTasks()).isEqualTo(1);
    }

    @Test
    void aUnitIsPlannedForAsSoonAsItIsAdded() {
        String added = unit + "-new";

        coordinator()
                .body(Map.of(
                        "number",
                        added,
                        "kind",
                        "van",
                        "depot",
                        FleetFixture.DEPOT,
                        "lengthMetres",
                        6.1,
                        "heightMetres",
                        2.8,
                        "roof",
                        Map.of("surface", "TPO", "footing", "no-walk"),
                        "usePattern",
                        Map.of("pattern", "seasonal", "reason", "summer only")))
                .post("/api/units")
                .then()
                .statusCode(201)
                .body("use.pattern", equalTo("seasonal"))
                .body("nextDue.task", notNullValue());
    }

    @Test
    void eachDepotHasANightlyTriggerInItsOwnZone() throws SchedulerException {
        coordinator()
                .body(Map.of(
                        "code",
                        "cinder-flats-" + unit.toLowerCase(Locale.ROOT),
                        "name",
                        "Cinder Flats",
                        "zone",
                        "America/Phoenix",
                        "season",
                        Map.of("opens", "10-01", "closes", "04-30")))
                .post("/api/depots")
                .then()
                .statusCode(201);

        var key = new TriggerKey("nightly cinder-flats-" + unit.toLowerCase(Locale.ROOT), "sweep");
        var trigger = (CronTrigger) scheduler.getTrigger(key);
        assertThat(trigger.getTimeZone().getID()).isEqualTo("America/Phoenix");
        assertThat(trigger.getMisfireInstruction()).isEqualTo(CronTrigger.MISFIRE_INSTRUCTION_FIRE_ONCE_NOW);
        assertThat(scheduler.getMetaData().isJobStoreSupportsPersistence()).isTrue();
    }

    @Test
    void aSweepOfAnUnknownDepotIsRefused() {
        coordinator()
                .body(Map.of("depot", "nowhere"))
                .post("/api/sweeps")
                .then()
                .statusCode(400)
                .body("errors[0].field", equalTo("depot"));
    }

    private JsonPath sweep() {
        String id = coordinator()
                .body(Map.of("depot", FleetFixture.DEPOT))
                .post("/api/sweeps")
                .then()
                .statusCode(202)
                .extract()
                .path("id");
        await().atMost(Duration.ofSeconds(20))
                .until(() ->
                        !"running".equals(coordinator().get("/api/sweeps/" + id).path("state")));
        JsonPath answer = coordinator().get("/api/sweeps/" + id).jsonPath();
        assertThat(answer.getString("state")).as(answer.prettify()).isEqualTo("done");
        return answer;
    }

    private long openRoutineTasks() {
        List<String> units = coordinator()
                .queryParam("kind", "inspection")
                .queryParam("limit", 500)
                .get("/api/due-list")
                .path("items.unit");
        return units.stream().filter(unit::equals).count();
    }

    private static RequestSpecification coordinator() {
        return given().auth()
                .preemptive()
                .basic("coordinator", FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
