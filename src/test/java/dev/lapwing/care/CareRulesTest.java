package dev.lapwing.care;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import dev.lapwing.care.application.Rulebook;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.RulesEdition;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Other rules are tried on the fleet before they are adopted, and what was adopted counts from then on. */
@QuarkusTest
class CareRulesTest {
    private static final int UNITS = 5;
    private static final Pattern FULL_TIME = Pattern.compile(
            "(\"id\": \"full-time\",\\s+\"version\": )(\\d+)(.*?\"every\": \")(\\d+)( days\")", Pattern.DOTALL);

    @Inject
    SweepDepot depots;

    @Inject
    Rulebook rulebook;

    private String depot;
    private String before;

    @BeforeEach
    void aSweptDepot() {
        depot = "cr-" + UUID.randomUUID().toString().substring(0, 8);
        depots.open(depot, UNITS);
        sweepAll();
        before = inForce();
    }

    /** Other tests share the database and expect the rules of the file. */
    @AfterEach
    void theUsualInterval() {
        if (!inForce().equals(before)) {
            adopt(tried(withFullTimeEvery(91)), "back to the usual interval").statusCode(201);
            sweepAll();
        }
    }

    @Test
    void aTrialListsWhatWouldChangeAndDoesNothing() {
        long tasks = tasks();

        JsonPath trial = tried(withFullTimeEvery(60));

        assertThat(trial.getString("state")).as(trial.prettify()).isEqualTo("done");
        assertThat(trial.getInt("units")).isEqualTo(trial.getInt("unitsInAll")).isGreaterThanOrEqualTo(UNITS);
        List<Map<String, Object>> changes = trial.getList("changes.items");
        assertThat(trial.getInt("changes.total")).isEqualTo(trial.getInt("different"));
        assertThat(tasks()).isEqualTo(tasks);
        assertThat(inForce()).isEqualTo(before);
        String file = coordinator()
                .get("/api/care-rules/trials/" + trial.getString("id") + "/changes.csv")
                .then()
                .statusCode(200)
                .contentType("text/csv;charset=utf-8;header=present")
                .extract()
                .asString();
        assertThat(file.lines().count()).isEqualTo(trial.getInt("different") + 1L);
        assertThat(file).startsWith("unit,depot,dueNow,dueTried,tasksCreated,tasksCalledOff,why");
        assertThat(changes).hasSizeLessThanOrEqualTo(500);
    }

    @Test
    void adoptedRulesOutrankTheFileAndMakeTheWorkThatFollows() {
        inspected(SweepDepot.number(depot, 1));
        sweepAll();
        int edition = rulebook.inForce().number();
        JsonPath trial = tried(withFullTimeEvery(60));
        assertThat(unitsOf(trial)).contains(SweepDepot.number(depot, 1)).doesNotContain(SweepDepot.number(depot, 2));

        JsonPath adopted =
                adopt(trial, "a leak in the autumn").statusCode(201).extract().jsonPath();

        assertThat(adopted.getInt("edition")).isEqualTo(edition + 1);
        finished("/api/sweeps/" + adopted.getString("sweep"));
        assertThat(rulebook.inForce().number()).isEqualTo(edition + 1);
        coordinator()
                .get("/api/care-rules")
                .then()
                .body("inForce.adoptedBy", equalTo("coordinator"))
                .body("inForce.reason", equalTo("a leak in the autumn"))
                .body("history.edition", hasItem(edition))
                .body("rules.rules[0].every", equalTo("60 days"));
        CareTask open = open(SweepDepot.number(depot, 1));
        assertThat(open.ruleId).isEqualTo("full-time");
        assertThat(open.ruleVersion).isEqualTo(versionOf(inForce()));
        adopt(trial, "once more").statusCode(409).body("detail", containsString("Other rules were adopted"));
    }

    @Test
    void aRuleChangedUnderItsVersionIsRefused() {
        String same = FULL_TIME.matcher(inForce()).replaceFirst("$1$2$3" + 77 + "$5");

        post(same)
                .statusCode(400)
                .body("errors[0].field", equalTo("rules"))
                .body("errors[0].message", containsString("full-time: changed, so its version must be above"));
    }

    @Test
    void rulesOnceInForceComeBackOnlyUnderANewVersion() {
        adopt(tried(withFullTimeEvery(61)), "for a while").statusCode(201);
        post(first().content)
                .statusCode(400)
                .body("errors[0].message", containsString("full-time: changed, so its version must be above"));
    }

    @Test
    void whatIsWrongIsNamedWithItsFieldAndLine() {
        String broken = inForce().replaceFirst("\"14 days\"", "\"often\"");
        int line = (int) broken.substring(0, broken.indexOf("often")).lines().count();

        post(broken)
                .statusCode(400)
                .body("errors[0].field", equalTo("rules[0] (full-time).opensBefore"))
                .body("errors[0].message", containsString("(line " + line + ")"));
        post("{").statusCode(400).body("errors[0].message", containsString("not JSON at line 1"));
    }

    @Test
    void onlyTriedRulesAreAdoptedAndOnlyWithAReason() {
        coordinator()
                .body(Map.of("reason", "just so"))
                .post("/api/care-rules/adoptions")
                .then()
                .statusCode(400)
                .body("errors[0].field", equalTo("trial"));
        JsonPath trial = tried(withFullTimeEvery(62));
        adopt(trial, " ").statusCode(400).body("errors[0].field", equalTo("reason"));
        given().auth()
                .preemptive()
                .basic("tech1", FleetFixture.PASSWORD)
                .get("/api/care-rules")
                .then()
                .statusCode(403);
    }

    private RulesEdition first() {
        return QuarkusTransaction.requiringNew().call(() -> RulesEdition.require(1));
    }

    private String inForce() {
        return QuarkusTransaction.requiringNew().call(() -> RulesEdition.require(RulesEdition.latestNumber()).content);
    }

    private String withFullTimeEvery(int days) {
        Matcher rule = FULL_TIME.matcher(inForce());
        assertThat(rule.find()).isTrue();
        int version = Integer.parseInt(rule.group(2)) + 1;
        return rule.replaceFirst("$1" + version + "$3" + days + "$5");
    }

    private static int versionOf(String json) {
        Matcher rule = FULL_TIME.matcher(json);
        assertThat(rule.find()).isTrue();
        return Integer.parseInt(rule.group(2));
    }

    private static ValidatableResponse post(String rules) {
        return coordinator().body(rules).post("/api/care-rules/trials").then();
    }

    private static JsonPath tried(String rules) {
        String id = post(rules).statusCode(202).extract().path("id");
        return finished("/api/care-rules/trials/" + id + "?limit=500");
    }

    private static List<String> unitsOf(JsonPath trial) {
        return trial.getList("changes.items.unit");
    }

    private static ValidatableResponse adopt(JsonPath trial, String reason) {
        return coordinator()
                .body(Map.of("trial", trial.getString("id"), "reason", reason))
                .post("/api/care-rules/adoptions")
                .then();
    }

    private static void sweepAll() {
        String id = coordinator()
                .body("{}")
                .post("/api/sweeps")
                .then()
                .statusCode(202)
                .extract()
                .path("id");
        finished("/api/sweeps/" + id);
    }

    private static JsonPath finished(String path) {
        return await().atMost(Duration.ofSeconds(60))
                .until(
                        () -> coordinator()
                                .get(path)
                                .then()
                                .statusCode(200)
                                .extract()
                                .jsonPath(),
                        run -> !run.getString("state").equals("running"));
    }

    private static long tasks() {
        return QuarkusTransaction.requiringNew().call(() -> CareTask.count());
    }

    /** Ends the unit's intake as signed off some weeks ago, so that the full-time interval counts. */
    private static void inspected(String unit) {
        QuarkusTransaction.requiringNew().run(() -> {
            CareTask task = CareTask.<CareTask>find("unit.number", unit).firstResult();
            task.state = TaskState.DONE;
            task.openKey = null;
            task.doneOn = task.depot.dateAt(task.createdAt).minusDays(20);
        });
    }

    private static CareTask open(String unit) {
        return QuarkusTransaction.requiringNew()
                .call(() -> CareTask.<CareTask>find("unit.number = ?1 and openKey is not null", unit)
                        .firstResult());
    }

    private static RequestSpecification coordinator() {
        return given().auth()
                .preemptive()
                .basic("coordinator", FleetFixture.PASSWORD)
                .contentType("application/json");
    }
}
