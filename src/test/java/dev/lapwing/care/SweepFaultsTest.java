package dev.lapwing.care;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import dev.lapwing.care.storage.SweepRun;
import dev.lapwing.platform.FleetFixture;
import io.agroal.api.AgroalDataSource;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;

/** What goes wrong with one unit or at one time leaves the rest of the sweep whole. */
@QuarkusTest
class SweepFaultsTest {
    private static final int UNITS = 7;

    @Inject
    SweepDepot depots;

    @Inject
    Scheduler scheduler;

    @Inject
    AgroalDataSource database;

    private String depot;

    @BeforeEach
    void aDepot() {
        depot = "sp-" + UUID.randomUUID().toString().substring(0, 8);
        depots.open(depot, UNITS);
    }

    @Test
    void aUnitThatCannotBeReadIsReportedAndTheOthersAreSwept() {
        String broken = SweepDepot.number(depot, 4);
        depots.breakUnit(broken, true);
        try {
            JsonPath run = sweep();

            assertThat(run.getString("state")).as(run.prettify()).isEqualTo("done");
            assertThat(run.getInt("units")).isEqualTo(UNITS);
            assertThat(run.getInt("unitsInAll")).isEqualTo(UNITS);
            assertThat(run.getInt("created")).isEqualTo(UNITS - 1);
            assertThat(run.getList("failed.unit")).isEqualTo(List.of(broken));
            assertThat(run.getString("failed[0].message")).startsWith("could not be swept: ");
            assertThat(depots.openTasks(broken)).isZero();
            assertThat(depots.openTasks(SweepDepot.number(depot, UNITS))).isEqualTo(1);
        } finally {
            depots.breakUnit(broken, false);
        }
        JsonPath again = sweep();
        assertThat(again.getInt("created")).isEqualTo(1);
        assertThat(again.getList("failed")).isEmpty();
    }

    @Test
    void aNightThatPassedWhileTheScheduleStoodStillIsCaughtUpOnce() throws SchedulerException, SQLException {
        scheduler.standby();
        long missed = System.currentTimeMillis() - Duration.ofHours(3).toMillis();
        try (var connection = database.getConnection();
                var update = connection.prepareStatement("update qrtz_triggers set next_fire_time = ?"
                        + " where trigger_group = 'sweep' and trigger_name = ?")) {
            update.setLong(1, missed);
            update.setString(2, "nightly " + depot);
            assertThat(update.executeUpdate()).isEqualTo(1);
        }
        assertThat(runs()).isEmpty();

        scheduler.start();

        await().atMost(Duration.ofSeconds(45))
                .until(() -> runs().stream().anyMatch(run -> run.state == SweepRun.State.DONE));
        await().during(Duration.ofSeconds(12)).atMost(Duration.ofSeconds(20)).until(() -> runs().size() == 1);
        SweepRun caughtUp = runs().get(0);
        assertThat(caughtUp.cause).isEqualTo(SweepRun.Cause.CAUGHT_UP);
        assertThat(caughtUp.units).isEqualTo(UNITS);
    }

    private List<SweepRun> runs() {
        return QuarkusTransaction.requiringNew().call(() -> SweepRun.list("depotCode", depot));
    }

    private JsonPath sweep() {
        String id = given().auth()
                .preemptive()
                .basic("coordinator", FleetFixture.PASSWORD)
                .contentType("application/json")
                .body(Map.of("depot", depot))
                .post("/api/sweeps")
                .then()
                .statusCode(202)
                .extract()
                .path("id");
        return await().atMost(Duration.ofSeconds(30))
                .until(
                        () -> given().auth()
                                .preemptive()
                                .basic("coordinator", FleetFixture.PASSWORD)
                                .get("/api/sweeps/" + id)
                                .jsonPath(),
                        run -> !run.getString("state").equals("running"));
    }
}
