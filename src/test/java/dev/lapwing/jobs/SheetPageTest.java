package dev.lapwing.jobs;

import static dev.lapwing.jobs.SheetDriver.as;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The sheet as a page, filled in with plain forms. */
@QuarkusTest
class SheetPageTest {
    @Inject
    FleetFixture fleet;

    private String unit;
    private SheetForms sheet;
    private String task;
    private String tech;

    @BeforeEach
    void aStruckUnit() {
        unit = "P-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        JsonPath report = SheetDriver.strike(unit);
        task = report.getString("task.id");
        tech = report.getString("task.assignee");
        sheet = new SheetForms(task, tech);
    }

    @Test
    void theSheetShowsCautionsLadderAndCleanersAndIsStartedFromThere() {
        as(tech).get(sheet.path())
                .then()
                .statusCode(200)
                .body(containsString("Falls kill"))
                .body(containsString("three feet (0.91 m) above the edge"))
                .body(containsString("Orchard Peel Cleaner: no."))
                .body(containsString("<div id=\"work\" hidden>"));
        as(tech).get("/tasks/" + task).then().body(containsString(sheet.path()));

        sheet.readCautions().then().statusCode(303);
        as(tech).get(sheet.path()).then().body(not(containsString("<div id=\"work\" hidden>")));
        sheet.start("calm").then().statusCode(303);

        assertThat(SheetDriver.task(task).getString("state")).isEqualTo("under way");
    }

    @Test
    void oneUnreadCautionKeepsTheSheetShut() {
        sheet.post("cautions", "read", "falls-kill").then().statusCode(400).body(containsString("one by one"));
        as(tech).get(sheet.path()).then().body(containsString("<div id=\"work\" hidden>"));
    }

    @Test
    void aWetOrWindyRoofStopsTheStart() {
        sheet.readCautions();
        sheet.start("wet").then().statusCode(409).body(containsString("The roof is wet: stop."));
        sheet.start("windy").then().statusCode(409).body(containsString("It is windy: stop."));
        sheet.start("").then().statusCode(400);

        assertThat(SheetDriver.task(task).getString("state")).isEqualTo("assigned");
    }

    @Test
    void aFindingAndASignatureAreTakenOnceEachHoweverOftenTheyAreSent() {
        sheet.readCautions();
        sheet.start("calm");
        String key = UUID.randomUUID().toString();
        addCrack(key, "12,5").then().statusCode(303);
        addCrack(key, "12,5").then().statusCode(303);
        assertThat(findings().getInt("total")).isEqualTo(1);

        sheet.sign(1).then().statusCode(303);

        as(tech).get(sheet.path())
                .then()
                .body(containsString("Verdict: fit"))
                .body(containsString("12.5 cm"))
                .body(containsString("All seams felt"));
        assertThat(SheetDriver.unit(unit).getString("hold")).isNull();
    }

    @Test
    void whatIsWrongIsSaidAndWhatWasTypedStays() {
        SheetDriver.accept(task, tech);
        SheetDriver.start(task, tech);

        addCrack(UUID.randomUUID().toString(), "long")
                .then()
                .statusCode(400)
                .body(containsString("Length is not a number"))
                .body(containsString("value=\"long\""));
        sheet.sign(0)
                .then()
                .statusCode(400)
                .body(containsString("The cautions: must be true"))
                .body(containsString("All seams felt"));

        assertThat(SheetDriver.task(task).getString("state")).isEqualTo("under way");
    }

    @Test
    void aPlaceOnThePlanGetsItsZoneFromThePlan() {
        SheetDriver.accept(task, tech);
        SheetDriver.start(task, tech);
        sheet.post("findings", Map.of("kind", "puncture", "zone", "rear-left", "x", "0.220", "y", "0.500"))
                .then()
                .statusCode(303);

        assertThat(findings().getString("items[0].zone")).isEqualTo("front-centre, front vent");
        sheet.post("findings", Map.of("kind", "puncture", "zone", "rear-left", "x", "1.2", "y", "0.5"))
                .then()
                .statusCode(400);
    }

    @Test
    void aFindingIsTakenBackOrChangedAndStaysOnRecord() {
        SheetDriver.accept(task, tech);
        SheetDriver.start(task, tech);
        addCrack("a-" + task, "10");
        String first = findings().getString("items[0].id");

        sheet.post("findings", Map.of("finding", first, "kind", "tear", "zone", "rear-left"))
                .then()
                .statusCode(303);
        assertThat(findings().getList("items.kind")).containsExactly("tear");
        String second = findings().getString("items[0].id");
        sheet.post("withdrawals", "finding", second).then().statusCode(303);
        sheet.post("withdrawals", "finding", second).then().statusCode(409);

        assertThat(findings().getInt("total")).isZero();
        as(tech).get(sheet.path())
                .then()
                .body(containsString("crack, surface, in front-left, 10 cm: noted by"))
                .body(containsString("taken back by"));
        sheet.readCautions();
        sheet.sign(4).then().statusCode(303);
        as(tech).get(sheet.path()).then().body(containsString("Verdict: fit"));
    }

    @Test
    void nobodySignsForEntriesThatTheyHaveNotSeen() {
        sheet.readCautions();
        sheet.start("calm");
        SheetDriver.find(task, "coordinator", Map.of("zone", "rear-left", "kind", "tear"));

        sheet.sign(0).then().statusCode(409).body(containsString("entries that you have not seen"));
        sheet.sign(1).then().statusCode(303);
    }

    @Test
    void theScriptIsAnsweredWithTheNewState() {
        sheet.readCautions();
        sheet.start("calm");
        JsonPath answer = sheet.script("findings", "k-" + task, Map.of("kind", "void", "zone", "rear-left"));
        JsonPath again = sheet.script("findings", "k-" + task, Map.of("kind", "void", "zone", "rear-left"));

        assertThat(answer.getString("said")).isEqualTo("Noted: void, in rear-left");
        assertThat(again.getString("finding")).isEqualTo(answer.getString("finding"));
        assertThat(again.getInt("state.entries")).isEqualTo(1);
        assertThat(again.getBoolean("state.findings[0].mine")).isTrue();
    }

    private JsonPath findings() {
        return as(tech).get("/api/tasks/" + task + "/findings").jsonPath();
    }

    private Response addCrack(String key, String length) {
        return sheet.post(
                "findings",
                Map.of("key", key, "zone", "front-left", "kind", "crack", "depth", "surface", "lengthCm", length));
    }
}
