package dev.lapwing.care;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import dev.lapwing.platform.FleetFixture;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.time.Duration;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What people send about one unit at a depot of its own, and what they are answered. */
final class CareDriver {
    private static final int SEASON_DAYS = 150;

    final String unit;
    final String depot;

    CareDriver(String unit, String depot) {
        this.unit = unit;
        this.depot = depot;
    }

    static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }

    /** Makes or changes a depot whose season opens on a day and lasts five months. */
    static void depot(String method, String code, String zone, LocalDate opens) {
        var body = Map.of(
                "code",
                code,
                "name",
                "Yard " + code,
                "zone",
                zone,
                "season",
                Map.of("opens", monthDay(opens), "closes", monthDay(opens.plusDays(SEASON_DAYS))));
        if (method.equals("POST")) {
            as("coordinator").body(body).post("/api/depots").then().statusCode(201);
        } else {
            as("coordinator").body(body).put("/api/depots/" + code).then().statusCode(200);
        }
    }

    private static String monthDay(LocalDate day) {
        MonthDay plain = MonthDay.from(day);
        return plain.toString().substring(2);
    }

    void add() {
        Map<String, Object> body = facts(depot, null);
        body.put("number", unit);
        as("coordinator").body(body).post("/api/units").then().statusCode(201);
    }

    ValidatableResponse change(String toDepot, Map<String, ?> usePattern) {
        return as("coordinator")
                .body(facts(toDepot, usePattern))
                .put("/api/units/" + unit)
                .then();
    }

    private static Map<String, Object> facts(String depot, Map<String, ?> usePattern) {
        var body = new HashMap<String, Object>(Map.of(
                "kind",
                "motorhome",
                "depot",
                depot,
                "lengthMetres",
                7.4,
                "heightMetres",
                3.2,
                "storage",
                "inside",
                "roof",
                Map.of("surface", "EPDM", "footing", "walkable")));
        body.put("usePattern", usePattern);
        return body;
    }

    void seasonal() {
        change(depot, Map.of("pattern", "seasonal", "reason", "summer only")).statusCode(200);
    }

    ValidatableResponse post(String path, Map<String, ?> body) {
        return as("coordinator")
                .body(body)
                .post("/api/units/" + unit + "/" + path)
                .then();
    }

    JsonPath get() {
        return as("desk").get("/api/units/" + unit).jsonPath();
    }

    /** Returns the open work of the unit, as the due list has it. */
    List<Map<String, Object>> open() {
        List<Map<String, Object>> items = as("desk")
                .queryParam("limit", 500)
                .get("/api/due-list")
                .jsonPath()
                .getList("items");
        return items.stream().filter(item -> item.get("unit").equals(unit)).toList();
    }

    Map<String, Object> onlyOpen() {
        List<Map<String, Object>> open = open();
        assertThat(open).hasSize(1);
        return open.get(0);
    }

    String onlyOpenId() {
        return (String) onlyOpen().get("task");
    }

    static JsonPath task(String id) {
        return as("desk").get("/api/tasks/" + id).jsonPath();
    }

    /** Returns what the last step of a task says. */
    static String lastWords(String task) {
        return task(task).getString("steps[-1].words");
    }

    static void start(String task) {
        as("tech1").post("/api/tasks/" + task + "/acceptance").then().statusCode(200);
        as("tech1").post("/api/tasks/" + task + "/start").then().statusCode(200);
    }

    static void sign(String task) {
        var body = Map.of(
                "by",
                "Tess Alder",
                "cautionsRead",
                true,
                "dryAtInspection",
                true,
                "statement",
                "Looked at every seam by hand");
        as("tech1").body(body).post("/api/tasks/" + task + "/sign-off").then().statusCode(200);
    }

    static void doAndSign(String task) {
        start(task);
        sign(task);
    }

    /** Sweeps the depot and returns the run. */
    JsonPath sweep() {
        String id = as("coordinator")
                .body(Map.of("depot", depot))
                .post("/api/sweeps")
                .then()
                .statusCode(202)
                .extract()
                .path("id");
        JsonPath run = await().atMost(Duration.ofSeconds(30))
                .until(
                        () -> as("coordinator").get("/api/sweeps/" + id).jsonPath(),
                        answer -> !"running".equals(answer.getString("state")));
        assertThat(run.getString("state")).as(run.prettify()).isEqualTo("done");
        assertThat(run.getList("failed")).isEmpty();
        return run;
    }

    /** Claims that the facts call for no further change: a sweep on them changes nothing. */
    void settled() {
        JsonPath run = sweep();
        assertThat(run.getInt("created")).isZero();
        assertThat(run.getInt("calledOff")).isZero();
    }
}
