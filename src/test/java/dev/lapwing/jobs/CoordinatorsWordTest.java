package dev.lapwing.jobs;

import static dev.lapwing.jobs.RoofDriver.post;
import static dev.lapwing.jobs.SheetDriver.as;
import static dev.lapwing.jobs.SheetDriver.find;
import static dev.lapwing.jobs.SheetDriver.sign;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a coordinator decides or is told: rework or replace, stop and refer, release. Common practice, no source. */
@QuarkusTest
class CoordinatorsWordTest {
    private static final Map<String, ?> LOOSE =
            Map.of("zone", "rear-left", "kind", "adhesion", "extent", "loose-in-several");
    private static final Map<String, ?> TEAR = Map.of("zone", "middle-centre", "kind", "tear");

    @Inject
    FleetFixture fleet;

    private String unit;
    private String task;
    private String hold;
    private String tech;

    @BeforeEach
    void aStruckUnitWithAConfirmedRoof() {
        unit = "C-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        RoofDriver.confirmed(unit);
        JsonPath report = SheetDriver.strike(unit);
        task = report.getString("task.id");
        hold = report.getString("hold.id");
        tech = report.getString("task.assignee");
        SheetDriver.accept(task, tech);
    }

    @Test
    void looseInSeveralPlacesIsReworkedOrReplacedAsTheCoordinatorDecides() {
        String rework = reworkAfter(LOOSE);
        as("desk")
                .get("/api/tasks/" + rework + "/decision")
                .then()
                .statusCode(200)
                .body("options.work", equalTo(List.of("rework", "sealant-replacement")))
                .body("options[0].speaksFor", hasItem(containsString("keeps the old sealant")))
                .body("options[1].speaksFor", hasItem(containsString("holds no better than what is beneath")));
        as("coordinator").get("/tasks/" + rework).then().body(containsString("Choose sealant replacement"));
        SheetDriver.accept(rework, tech);
        as(tech).post("/api/tasks/" + rework + "/start")
                .then()
                .statusCode(409)
                .body("detail", containsString("the coordinator has to decide"));
        post(rework, tech, "decision", Map.of("choice", "rework", "reason", "quicker"))
                .then()
                .statusCode(403);
        post(rework, "coordinator", "decision", Map.of("choice", " "))
                .then()
                .statusCode(400)
                .body("errors.field", hasItems("choice", "reason"));
        post(rework, "coordinator", "decision", Map.of("choice", "membrane-repair", "reason", "why not"))
                .then()
                .statusCode(400)
                .body("errors[0].field", equalTo("choice"));

        post(rework, "coordinator", "decision", Map.of("choice", "sealant-replacement", "reason", "ten years old"))
                .then()
                .statusCode(200)
                .body("decided.choice", equalTo("sealant-replacement"))
                .body("decided.by", equalTo("coordinator"));

        JsonPath decided = SheetDriver.task(rework);
        assertThat(decided.getString("kind")).isEqualTo("sealant replacement");
        assertThat(decided.getString("steps[-1].words")).contains("ten years old");
        post(rework, "coordinator", "decision", Map.of("choice", "rework", "reason", "on second thought"))
                .then()
                .statusCode(409);
        SheetDriver.start(rework, tech);
        assertThat(RoofDriver.roof(rework).getList("material.metric", String.class))
                .anyMatch(line -> line.startsWith("all sealant of the roof, by its plan"));
    }

    @Test
    void theDueListSaysThatADecisionIsWanting() {
        String rework = reworkAfter(LOOSE);

        List<String> waits = as("coordinator")
                .queryParam("depot", FleetFixture.DEPOT)
                .queryParam("kind", "rework")
                .queryParam("limit", 500)
                .get("/api/due-list")
                .jsonPath()
                .getList("items.find { it.task == '" + rework + "' }.waits");

        assertThat(waits).anyMatch(words -> words.contains("decide between rework and sealant replacement"));
        as("coordinator")
                .queryParam("unit", unit)
                .get("/due-list")
                .then()
                .statusCode(200)
                .body(containsString("needs a decision"));
    }

    @Test
    void oneCallStopsTheWorkHoldsTheUnitAndRefersItToAWorkshop() {
        post(task, tech, "stop-and-refer", Map.of("by", " "))
                .then()
                .statusCode(400)
                .body("errors.field", hasItems("by", "why"));

        String workshop = post(
                        task,
                        tech,
                        "stop-and-refer",
                        Map.of("by", "Tess Alder", "why", "the deck gives way by the vent"))
                .then()
                .statusCode(200)
                .body("verdict", equalTo("stop-and-refer"))
                .body("released", equalTo(false))
                .body("followUps", hasSize(1))
                .extract()
                .path("followUps[0]");

        assertThat(SheetDriver.task(task).getString("state")).isEqualTo("done");
        assertThat(SheetDriver.task(workshop).getString("why")).startsWith("workshop referral: the deck gives way");
        assertThat(SheetDriver.unit(unit).getString("hold.cause")).isNotNull();
        assertThat(MailsTo.about(unit, "coordinator"))
                .contains("Unit " + unit + ": work stopped, refer the roof to a workshop");
        SheetDriver.release(hold).then().statusCode(409).body("detail", containsString("workshop referral"));
        post(task, tech, "stop-and-refer", Map.of("by", "Tess Alder", "why", "again"))
                .then()
                .statusCode(409);
    }

    @Test
    void aSoftSpotIsReferredAndMailedTheSameWay() {
        SheetDriver.start(task, tech);
        find(task, tech, Map.of("zone", "rear-right", "kind", "soft-spot"))
                .then()
                .statusCode(201);

        sign(task, tech).then().statusCode(200).body("verdict", equalTo("stop-and-refer"));

        assertThat(MailsTo.about(unit, "coordinator")).hasSize(1);
    }

    @Test
    void aReleasedUnitIsMailedToTheDeskOnce() {
        SheetDriver.start(task, tech);
        sign(task, tech).then().statusCode(200).body("released", equalTo(true));

        assertThat(MailsTo.about(unit, "desk")).containsExactly("Unit " + unit + ": released, may be rented again");
    }

    @Test
    void aHeldUnitIsNotMailedAsReleased() {
        SheetDriver.start(task, tech);
        find(task, tech, TEAR).then().statusCode(201);
        sign(task, tech).then().statusCode(200).body("released", equalTo(false));

        assertThat(MailsTo.about(unit, "desk")).isEmpty();
    }

    @Test
    void aCoordinatorWhoRepairedDoesNotReleaseEither() {
        SheetDriver.start(task, tech);
        find(task, tech, TEAR).then().statusCode(201);
        List<String> followUps =
                sign(task, tech).then().statusCode(200).extract().path("followUps");
        String repair = RoofDriver.ofKind(followUps, "membrane repair");
        post(repair, "coordinator", "call-off", Map.of("why", "no time"))
                .then()
                .statusCode(409)
                .body("detail", containsString("on hold until this work is done"));
        SheetDriver.accept(repair, tech);
        SheetDriver.start(repair, tech);
        sign(repair, "coordinator")
                .then()
                .statusCode(200)
                .body("released", equalTo(false))
                .body("reasons", hasItem(containsString("second person")));

        SheetDriver.release(hold).then().statusCode(409).body("detail", containsString("second person"));
        as("desk")
                .body(Map.of("by", "Dean Marsh", "statement", "looks fine"))
                .post("/api/holds/" + hold + "/release")
                .then()
                .statusCode(403);
    }

    private String reworkAfter(Map<?, ?>... findings) {
        SheetDriver.start(task, tech);
        find(task, tech, findings).then().statusCode(201);
        List<String> followUps =
                sign(task, tech).then().statusCode(200).extract().path("followUps");
        return RoofDriver.ofKind(followUps, "rework");
    }
}
