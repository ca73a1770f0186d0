package dev.lapwing.jobs;

import static dev.lapwing.jobs.RoofDriver.post;
import static dev.lapwing.jobs.SheetDriver.as;
import static dev.lapwing.jobs.SheetDriver.find;
import static dev.lapwing.jobs.SheetDriver.sign;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.nullValue;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What must come before work on a roof. The facts of the trade are common practice, no source. */
@QuarkusTest
class SheetRulesTest {
    private static final Map<String, ?> DEEP_CRACK =
            Map.of("zone", "rear-left", "kind", "crack", "depth", "deep", "lengthCm", 12);
    private static final Map<String, ?> VOID = Map.of("zone", "front-left", "kind", "void");
    private static final Map<String, ?> CHALKING = Map.of("zone", "middle-centre", "kind", "chalking");
    private static final Map<String, ?> CALM = Map.of("wet", false, "windy", false);

    @Inject
    FleetFixture fleet;

    @Inject
    Clock clock;

    private String unit;
    private String task;
    private String tech;

    @BeforeEach
    void aStruckUnitWhoseInspectionIsUnderWay() {
        unit = "R-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        JsonPath report = SheetDriver.strike(unit);
        task = report.getString("task.id");
        tech = report.getString("task.assignee");
        SheetDriver.accept(task, tech);
        SheetDriver.start(task, tech);
    }

    @Test
    void aCleanerThatTheSurfaceDoesNotBearIsRefusedWithTheReasonAndNotRecorded() {
        post(task, tech, "roof/cleaners", Map.of("cleaner", "Orchard Peel Cleaner"))
                .then()
                .statusCode(400)
                .body("errors[0].field", equalTo("cleaner"))
                .body("errors[0].message", containsString("citrus oil attacks synthetic rubber"));
        post(task, tech, "roof/cleaners", Map.of("cleaner", "Nobody's Soap"))
                .then()
                .statusCode(400)
                .body("errors[0].message", containsString("not on the list"));
        assertThat(RoofDriver.roof(task).getList("events")).isEmpty();

        post(task, tech, "roof/cleaners", Map.of("cleaner", "Bramblewash Gentle"))
                .then()
                .statusCode(201);

        JsonPath roof = RoofDriver.roof(task);
        assertThat(roof.getString("events[0].subject")).isEqualTo("Bramblewash Gentle");
        assertThat(roof.getString("events[0].recordedBy")).isEqualTo(tech);
        assertThat(roof.getList("cleaners.findAll { it.allowed }.name", String.class))
                .contains("Bramblewash Gentle")
                .doesNotContain("Orchard Peel Cleaner", "Coldharbour Tar Lift", "Gritstone Scouring Cream");
    }

    @Test
    void aRoofTooDirtyToSeeIsWashedAndDriesBeforeAnyoneLooksAtIt() {
        post(task, tech, "roof/too-dirty", Map.of()).then().statusCode(201);
        find(task, tech, VOID).then().statusCode(409).body("detail", containsString("too dirty to see"));
        sign(task, tech).then().statusCode(409);
        post(task, tech, "roof/inspection", Map.of("wet", false, "windy", false, "reason", "in a hurry"))
                .then()
                .statusCode(409);
        post(task, tech, "roof/wash", Map.of("cleaner", "Coldharbour Tar Lift"))
                .then()
                .statusCode(400);
        assertThat(RoofDriver.roof(task).getBoolean("tooDirty")).isTrue();

        post(task, tech, "roof/wash", Map.of("cleaner", "Bramblewash Gentle"))
                .then()
                .statusCode(201);

        find(task, tech, VOID).then().statusCode(409).body("detail", containsString("dries"));
        post(task, tech, "roof/inspection", CALM).then().statusCode(409).body("detail", containsString("reason"));
        post(task, tech, "roof/inspection", Map.of("wet", false, "windy", false, "reason", "rain comes in an hour"))
                .then()
                .statusCode(201)
                .body("kind", equalTo("begun-early"));
        find(task, tech, VOID).then().statusCode(201);
        as(tech).get("/tasks/" + task + "/sheet").then().body(containsString("rain comes in an hour"));
    }

    @Test
    void aRoofThatHasDriedNeedsNoReason() {
        String fiveHoursAgo = clock.instant().minus(Duration.ofHours(5)).toString();
        post(task, tech, "roof/wash", Map.of("washedAt", fiveHoursAgo)).then().statusCode(201);

        find(task, tech, VOID).then().statusCode(201);

        String tomorrow = clock.instant().plus(Duration.ofDays(1)).toString();
        post(task, tech, "roof/wash", Map.of("washedAt", tomorrow))
                .then()
                .statusCode(400)
                .body("errors[0].field", equalTo("washedAt"));
    }

    @Test
    void windStopsTheInspectionAndTheTaskStaysOpen() {
        post(task, tech, "roof/inspection", Map.of("wet", true, "windy", true))
                .then()
                .statusCode(201)
                .body("kind", equalTo("stopped"))
                .body("words", containsString("wet and it is windy"));
        find(task, tech, VOID).then().statusCode(409).body("detail", containsString("windy: stop"));
        assertThat(SheetDriver.task(task).getString("state")).isEqualTo("under way");
        post(task, tech, "roof/inspection", Map.of())
                .then()
                .statusCode(400)
                .body("errors.field", hasItems("wet", "windy"));

        post(task, tech, "roof/inspection", CALM).then().statusCode(201).body("kind", equalTo("begun"));

        find(task, tech, VOID).then().statusCode(201);
    }

    @Test
    void sealantWorkWaitsUntilTheDealerHasConfirmedTheSystem() {
        List<String> followUps = signedWith(DEEP_CRACK, VOID);
        String confirm = RoofDriver.ofKind(followUps, "confirm membrane");
        String touchUp = RoofDriver.ofKind(followUps, "touch-up");
        SheetDriver.accept(touchUp, tech);
        as(tech).post("/api/tasks/" + touchUp + "/start")
                .then()
                .statusCode(409)
                .body("detail", containsString("confirm the membrane system with the dealer or maker first"));
        SheetDriver.accept(confirm, tech);
        SheetDriver.start(confirm, tech);
        sign(confirm, tech).then().statusCode(409);
        post(confirm, tech, "membrane", Map.of("system", " "))
                .then()
                .statusCode(400)
                .body("errors.field", hasItems("system", "confirmedBy"));
        post(confirm, tech, "membrane", Map.of("system", "X", "confirmedBy", "Y", "confirmedOn", "2999-01-01"))
                .then()
                .statusCode(400)
                .body("errors[0].field", equalTo("confirmedOn"));
        post(touchUp, tech, "membrane", Map.of("system", "X", "confirmedBy", "Y"))
                .then()
                .statusCode(409);

        post(confirm, tech, "membrane", Map.of("system", RoofDriver.SYSTEM, "confirmedBy", "Fell Trailers, the dealer"))
                .then()
                .statusCode(200)
                .body("membraneSystem", equalTo(RoofDriver.SYSTEM))
                .body("taskState", equalTo("done"));

        assertThat(SheetDriver.unit(unit).getString("roof.confirmedBy")).isEqualTo("Fell Trailers, the dealer");
        SheetDriver.start(touchUp, tech);
        sign(touchUp, tech).then().statusCode(409).body("detail", containsString("Name the sealant"));
        post(touchUp, tech, "roof/sealants", Map.of("sealant", RoofDriver.FOREIGN_SEALANT))
                .then()
                .statusCode(400)
                .body("errors[0].message", containsString("only sealant of the roof's own system"));
        post(touchUp, tech, "roof/sealants", Map.of("sealant", RoofDriver.OWN_SEALANT))
                .then()
                .statusCode(201);
        sign(touchUp, tech).then().statusCode(200);
    }

    @Test
    void aCoordinatorVouchesForTheSystemByNameAndSource() {
        List<String> followUps = signedWith(DEEP_CRACK);
        String confirm = RoofDriver.ofKind(followUps, "confirm membrane");
        String touchUp = RoofDriver.ofKind(followUps, "touch-up");
        Map<String, String> word = Map.of("system", RoofDriver.SYSTEM, "source", "plate inside the front locker");
        post(confirm, tech, "membrane/overrule", word).then().statusCode(403);
        post(confirm, "coordinator", "membrane/overrule", Map.of("system", "X"))
                .then()
                .statusCode(400)
                .body("errors[0].field", equalTo("source"));

        post(confirm, "coordinator", "membrane/overrule", word)
                .then()
                .statusCode(200)
                .body("membraneSystem", nullValue());

        SheetDriver.accept(touchUp, tech);
        SheetDriver.start(touchUp, tech);
        post(touchUp, tech, "roof/sealants", Map.of("sealant", RoofDriver.FOREIGN_SEALANT))
                .then()
                .statusCode(400);
        post(touchUp, tech, "roof/sealants", Map.of("sealant", RoofDriver.OWN_SEALANT))
                .then()
                .statusCode(201)
                .body("words", containsString("plate inside the front locker"));
        assertThat(SheetDriver.task(confirm).getString("steps[-1].words")).contains("Overruled", "Cora Vale");
    }

    @Test
    void noSealantGoesOnAChalkingSurfaceBeforeItIsTreatedAndATestHolds() {
        RoofDriver.confirmed(unit);
        List<String> followUps = signedWith(DEEP_CRACK, CHALKING);
        String treatment = RoofDriver.ofWhy(followUps, "touch-up", "surface treatment");
        String touchUp = RoofDriver.ofWhy(followUps, "touch-up", "touch up");
        SheetDriver.accept(touchUp, tech);
        as(tech).post("/api/tasks/" + touchUp + "/start")
                .then()
                .statusCode(409)
                .body("detail", containsString("the surface chalks"));
        SheetDriver.accept(treatment, tech);
        SheetDriver.start(treatment, tech);
        post(treatment, tech, "roof/sealants", Map.of("sealant", RoofDriver.OWN_SEALANT))
                .then()
                .statusCode(409);
        post(treatment, tech, "roof/treatments", Map.of("held", false, "words", "scrubbed, primed; the strip came off"))
                .then()
                .statusCode(201);
        sign(treatment, tech).then().statusCode(409).body("detail", containsString("test that held"));

        post(treatment, tech, "roof/treatments", Map.of("held", true, "words", "primed twice; the strip held"))
                .then()
                .statusCode(201);

        sign(treatment, tech).then().statusCode(200);
        SheetDriver.start(touchUp, tech);
    }

    @Test
    void materialIsWorkedOutFromWhatWasFoundInBothSystemsOfUnits() {
        RoofDriver.confirmed(unit);
        String touchUp = RoofDriver.ofKind(signedWith(DEEP_CRACK, VOID), "touch-up");

        JsonPath roof = RoofDriver.roof(touchUp);

        // by hand: 420 mm x 25 mm x 6 mm = 63 mL, with 15 % waste 72.45 mL, of 300 mL a tube: 1 tube
        assertThat(roof.getList("material.metric", String.class))
                .contains(
                        "bead length: 12 cm + 30 cm = 42 cm",
                        "bead: 420 mm × 25 mm × 6 mm = 63 mL",
                        "with 15 % waste: 63 mL × 1.15 = 72.45 mL");
        // 72.45 mL / 29.5735295625 mL = 2.45 US fl oz
        assertThat(roof.getList("material.us", String.class)).anyMatch(line -> line.contains("2.45 US fl oz"));
        assertThat(roof.getInt("material.tubes")).isEqualTo(1);
        assertThat(roof.getString("material.tubeOf")).isEqualTo(RoofDriver.OWN_SEALANT);
        as(tech).get("/tasks/" + touchUp)
                .then()
                .body(containsString("1 tube of 300 mL"))
                .body(containsString("with 15 % waste"));
    }

    private List<String> signedWith(Map<?, ?>... findings) {
        find(task, tech, findings).then().statusCode(201);
        return sign(task, tech).then().statusCode(200).extract().path("followUps");
    }
}
