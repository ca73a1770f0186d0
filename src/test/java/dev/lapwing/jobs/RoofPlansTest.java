package dev.lapwing.jobs;

import static dev.lapwing.jobs.SheetDriver.as;
import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A unit has the roof plan of its kind until the coordinator draws its own; every version stays. */
@QuarkusTest
class RoofPlansTest {
    private static final Map<String, Object> HATCH = Map.of(
            "id",
            "h1",
            "type",
            "skylight",
            "name",
            "roof hatch",
            "x",
            0.5,
            "y",
            0.5,
            "lengthMetres",
            0.7,
            "widthMetres",
            0.5);

    @Inject
    FleetFixture fleet;

    private String unit;
    private String plan;

    @BeforeEach
    void aUnit() {
        unit = "L-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        plan = "/api/units/" + unit + "/roof-plan";
    }

    private Response save(int version, double width, Object... objects) {
        return as("coordinator")
                .body(Map.of("version", version, "widthMetres", width, "objects", List.of(objects)))
                .put(plan);
    }

    @Test
    void aUnitBeginsWithThePlanOfItsKindAtItsOwnLength() {
        // widths and vents of shared/jobs/roof-plans.csv; 7.4 m is the length of the unit
        as("tech1")
                .get(plan)
                .then()
                .statusCode(200)
                .body("version", equalTo(0))
                .body("lengthMetres", equalTo(7.4f))
                .body("widthMetres", equalTo(2.3f))
                .body("savedBy", nullValue())
                .body("nearMetres", equalTo(0.3f))
                .body("zones", hasSize(9))
                .body("zones.name", hasItems("front-left", "middle-centre", "rear-right"))
                .body("objects.name", hasItems("front vent", "air conditioner", "front edge", "left edge"));
    }

    @Test
    void aSavedPlanIsTheNextVersionAndTheOnesBeforeStay() {
        save(0, 2.4, HATCH)
                .then()
                .statusCode(200)
                .body("version", equalTo(1))
                .body("widthMetres", equalTo(2.4f))
                .body("savedBy", equalTo("coordinator"))
                .body("savedAt", notNullValue())
                .body("objects.name", hasItem("roof hatch"))
                .body("objects.name", not(hasItem("front vent")));
        save(1, 2.4).then().statusCode(200).body("version", equalTo(2)).body("objects", hasSize(4));
        as("desk").get(plan + "?version=1").then().body("objects.name", hasItem("roof hatch"));
        as("desk").get(plan + "?version=0").then().body("objects.name", hasItem("front vent"));
        as("desk").get(plan + "?version=3").then().statusCode(404);
        as("desk")
                .get(plan + "/versions")
                .then()
                .body("items.version", equalTo(List.of(2, 1)))
                .body("items.savedBy", equalTo(List.of("coordinator", "coordinator")))
                .body("items.objects", equalTo(List.of(0, 1)));
    }

    @Test
    void aPlanThatWasChangedMeanwhileIsNotOverwritten() {
        save(0, 2.3, HATCH).then().statusCode(200);
        save(0, 2.3)
                .then()
                .statusCode(409)
                .contentType("application/problem+json")
                .body("detail", containsString("changed meanwhile"));
        as("desk").get(plan).then().body("version", equalTo(1));
    }

    @Test
    void ofManyWhoSaveAtOnceOneIsTaken() {
        List<Integer> statuses = IntStream.range(0, 5)
                .mapToObj(i ->
                        CompletableFuture.supplyAsync(() -> save(0, 2.3, HATCH).statusCode()))
                .toList()
                .stream()
                .map(CompletableFuture::join)
                .toList();

        assertThat(statuses).containsOnly(200, 409).containsOnlyOnce(200);
    }

    @Test
    void onlyTheCoordinatorChangesAPlan() {
        for (String other : List.of("desk", "tech1")) {
            as(other)
                    .body(Map.of("version", 0, "widthMetres", 2.3, "objects", List.of()))
                    .put(plan)
                    .then()
                    .statusCode(403);
        }
    }

    @Test
    void everyWrongEntryIsNamedAndNothingIsSaved() {
        save(0, 2.3, HATCH, Map.of("id", "h1", "type", "chimney", "name", " ", "x", 2, "lengthMetres", 99))
                .then()
                .statusCode(400)
                .body("errors.field", hasItems("objects[1].type", "objects[1].y", "objects[1].widthMetres"));
        save(
                        0,
                        2.3,
                        HATCH,
                        Map.of(
                                "id",
                                "h1",
                                "type",
                                "vent",
                                "name",
                                " ",
                                "x",
                                2,
                                "y",
                                0.5,
                                "lengthMetres",
                                0.1,
                                "widthMetres",
                                99))
                .then()
                .statusCode(400)
                .body(
                        "errors.field",
                        hasItems("objects[1].id", "objects[1].name", "objects[1].x", "objects[1].widthMetres"));
        save(0, 9, HATCH).then().statusCode(400).body("errors.field", hasItem("widthMetres"));
        as("coordinator").body("{}").put(plan).then().statusCode(400).body("errors", hasSize(3));
        as("coordinator")
                .body("{\"version\":0,\"widthMetres\":2.3,\"objects\":[null]}")
                .put(plan)
                .then()
                .statusCode(400);
        Object[] many = IntStream.range(0, 121)
                .mapToObj(i -> Map.of(
                        "id",
                        "o" + i,
                        "type",
                        "vent",
                        "name",
                        "vent",
                        "x",
                        0.5,
                        "y",
                        0.5,
                        "lengthMetres",
                        0.1,
                        "widthMetres",
                        0.1))
                .toArray();
        save(0, 2.3, many).then().statusCode(400).body("errors.field", equalTo(List.of("objects")));
        as("desk").get(plan).then().body("version", equalTo(0));
    }

    @Test
    void aPlanFollowsTheUnitWhenItsLengthIsCorrected() {
        Map<String, Object> rail = Map.of(
                "id",
                "r",
                "type",
                "awning",
                "name",
                "rail",
                "x",
                0.5,
                "y",
                0.9,
                "lengthMetres",
                7,
                "widthMetres",
                0.06);
        save(0, 2.3, rail).then().statusCode(200);
        as("coordinator")
                .body(Map.of(
                        "number",
                        unit,
                        "kind",
                        "motorhome",
                        "depot",
                        FleetFixture.DEPOT,
                        "lengthMetres",
                        5,
                        "heightMetres",
                        3.2,
                        "roof",
                        Map.of("surface", "EPDM", "footing", "unknown")))
                .put("/api/units/" + unit)
                .then()
                .statusCode(200);
        as("desk")
                .get(plan)
                .then()
                .statusCode(200)
                .body("lengthMetres", equalTo(5.0f))
                .body("objects.find { it.id == 'r' }.lengthMetres", equalTo(5.0f));
    }

    /* --- the page, as a browser without scripts sends it */

    private RequestSpecification form(String act) {
        return given().auth()
                .preemptive()
                .basic("coordinator", FleetFixture.PASSWORD)
                .accept("text/html")
                .redirects()
                .follow(false)
                .formParam("version", "0")
                .formParam("width", "2.3")
                .formParam("id", "o1")
                .formParam("type", "skylight")
                .formParam("name", "roof hatch")
                .formParam("along", "0,5")
                .formParam("across", "0.5")
                .formParam("act", act);
    }

    private String page() {
        return "/units/" + unit + "/roof-plan";
    }

    @Test
    void theFormOfThePageSavesInMetres() {
        form("save")
                .formParam("front", "3.7")
                .formParam("left", "1.15")
                .post(page())
                .then()
                .statusCode(303);
        as("desk")
                .get(plan)
                .then()
                .body("version", equalTo(1))
                .body("objects.find { it.id == 'o1' }.x", equalTo(0.5f))
                .body("objects.find { it.id == 'o1' }.y", equalTo(0.5f))
                .body("objects.find { it.id == 'o1' }.lengthMetres", equalTo(0.5f));
        given().auth()
                .preemptive()
                .basic("coordinator", FleetFixture.PASSWORD)
                .redirects()
                .follow(false)
                .formParam("version", "1")
                .formParam("act", "undo")
                .post(page())
                .then()
                .statusCode(303);
        as("desk").get(plan).then().body("version", equalTo(2)).body("objects.name", hasItem("front vent"));
    }

    @Test
    void wrongFieldsAreNamedBesideThemAndWhatWasTypedStays() {
        form("save")
                .formParam("front", "9")
                .formParam("left", "two")
                .post(page())
                .then()
                .statusCode(400)
                .body(containsString("This is from 0 to 7.4 m"))
                .body(containsString("This is not a number of metres"))
                .body(containsString("value=\"two\""));
        as("desk").get(plan).then().body("version", equalTo(0));
    }

    @Test
    void thingsAreAddedAndRemovedBeforeAnythingIsSaved() {
        form("add")
                .formParam("addType", "air-conditioner")
                .formParam("front", "3.7")
                .formParam("left", "1.15")
                .post(page())
                .then()
                .statusCode(200)
                .body(containsString("name=\"id\" value=\"o1\""))
                .body(containsString("name=\"id\" value=\"o2\""))
                .body(containsString("value=\"air conditioner\""));
        form("remove-0")
                .formParam("front", "3.7")
                .formParam("left", "1.15")
                .post(page())
                .then()
                .statusCode(200)
                .body(not(containsString("name=\"id\" value=\"o1\"")));
        as("desk").get(plan).then().body("version", equalTo(0));
    }
}
