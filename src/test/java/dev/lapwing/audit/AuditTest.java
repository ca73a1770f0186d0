package dev.lapwing.audit;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who changed what of a unit stays on record, whatever anybody does. */
@QuarkusTest
class AuditTest {
    @Inject
    FleetFixture fleet;

    @Inject
    EntityManager database;

    private String unit;

    @BeforeEach
    void aStruckUnitThatIsLookedAtAndReleased() {
        unit = "A-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        JsonPath report = as("desk")
                .body(Map.of(
                        "unit",
                        unit,
                        "returnedAt",
                        "2025-11-20T10:00:00-05:00",
                        "note",
                        "scraped the top along an oak limb at the site"))
                .post("/api/return-reports")
                .jsonPath();
        String task = "/api/tasks/" + report.getString("task.id");
        String tech = report.getString("task.assignee");
        as(tech).post(task + "/acceptance").then().statusCode(200);
        as(tech).post(task + "/start").then().statusCode(200);
        as(tech).body(Map.of("cleaner", "Bramblewash Gentle"))
                .post(task + "/roof/cleaners")
                .then()
                .statusCode(201);
        as(tech).body(List.of(Map.of("zone", "front-left", "kind", "crack", "depth", "surface")))
                .post(task + "/findings")
                .then()
                .statusCode(201);
        as(tech).body(Map.of(
                        "by", "Tess Alder", "cautionsRead", true, "dryAtInspection", true, "statement", "in order"))
                .post(task + "/sign-off")
                .then()
                .statusCode(200);
    }

    @Test
    void everythingThatHappenedIsToldWithFromAndToTheNewestFirst() {
        JsonPath history = history(null, 100);

        assertThat(history.getList("items.what", String.class))
                .contains("hold", "task: strike inspection", "sheet: cleaner", "finding", "sheet");
        Map<String, Object> released = history.getMap("items.find { it.what == 'hold' }");
        assertThat(released.get("from")).isEqualTo("open");
        assertThat((String) released.get("to")).startsWith("released (repair-unnecessary), signed Tess Alder");
        assertThat((String) released.get("who")).startsWith("tech");
        assertThat(history.getString("items.find { it.what == 'hold' }.where.area"))
                .isEqualTo("care");
        assertThat(history.getString("items[-1].from")).isNull();
        assertThat(history.getList("items.findAll { it.what == 'task: strike inspection' }.from", String.class))
                .containsExactly("under way", "accepted", "assigned", null);
        as("desk").get("/units/" + unit + "/changes").then().statusCode(200).body(containsString("Bramblewash Gentle"));
    }

    @Test
    void theHistoryIsReadPageByPageWithoutGapOrRepeat() {
        List<String> all = history(null, 100).getList("items.id");
        List<String> walked = new ArrayList<>();
        String next = null;
        do {
            JsonPath page = history(next, 3);
            assertThat(page.getInt("total")).isEqualTo(all.size());
            walked.addAll(page.getList("items.id"));
            next = page.getString("next");
        } while (next != null);

        assertThat(walked).isEqualTo(all);
        as("desk")
                .queryParam("after", "soon")
                .get("/api/units/" + unit + "/history")
                .then()
                .statusCode(400)
                .body("errors[0].field", equalTo("after"));
        as("desk").get("/api/units/nowhere/history").then().statusCode(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update audit_entry set who = 'nobody'",
                "update audit_entry set became = null where what = 'hold'",
                "delete from audit_entry",
                "truncate table audit_entry",
                "update unit_change set changed_by = 'nobody'",
                "delete from unit_change",
                "truncate table unit_change"
            })
    void theDatabaseRefusesToChangeWhatWasWritten(String sql) {
        as("coordinator")
                .body(Map.of("state", "out of service", "reason", "engine"))
                .post("/api/units/" + unit + "/service")
                .then()
                .statusCode(200);
        List<Object> before = history(null, 100).getList("items");
        List<Object> changes = changes();
        assertThat(changes).isNotEmpty();

        assertThatThrownBy(() -> QuarkusTransaction.requiringNew()
                        .run(() -> database.createNativeQuery(sql).executeUpdate()))
                .isInstanceOf(PersistenceException.class);

        assertThat(history(null, 100).<Object>getList("items")).isEqualTo(before);
        assertThat(changes()).isEqualTo(changes);
    }

    private List<Object> changes() {
        return as("coordinator")
                .get("/api/units/" + unit + "/changes")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath()
                .getList("items");
    }

    private JsonPath history(String after, int limit) {
        RequestSpecification asked = as("coordinator").queryParam("limit", limit);
        if (after != null) {
            asked.queryParam("after", after);
        }
        return asked.get("/api/units/" + unit + "/history")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
