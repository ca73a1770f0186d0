package dev.lapwing.fleet;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The register and the rental log come and go as CSV files. */
@QuarkusTest
class ImportsTest {
    private static final String UNIT_HEADER = "number,vin,kind,depot,lengthMetres,heightMetres,surface,footing,"
            + "membraneSystem,confirmedBy,confirmedOn,sealant,installedOn,usePattern,useReason\n";

    @Inject
    FleetFixture fleet;

    private String tag;

    @BeforeEach
    void people() {
        fleet.people();
        tag = UUID.randomUUID().toString().substring(0, 8);
    }

    @Test
    void goodRowsGoInAndBadOnesAreReportedWithTheirLines() {
        JsonPath run = imported(
                "units",
                UNIT_HEADER
                        + unit("1", "7.4", "EPDM")
                        + unit("2", "long", "EPDM")
                        + unit("3", "7.4", "velvet")
                        + "too,few,cells\n"
                        + unit("5", "7.45", "galvanised steel"));
        assertThat(run.getString("state")).isEqualTo("done");
        assertThat(run.getInt("rows")).isEqualTo(5);
        assertThat(run.getInt("accepted")).isEqualTo(2);
        assertThat(run.getInt("rejected")).isEqualTo(3);
        assertThat(run.getList("errors.row")).containsExactly(3, 4, 5);
        assertThat(run.getList("errors.field")).containsExactly("lengthMetres", "surface", "row");
        assertThat(run.getList("errors.value")).containsExactly("long", "velvet", null);
        asCoordinator()
                .get("/api/units/" + number("1"))
                .then()
                .statusCode(200)
                .body("roof.surface", equalTo("EPDM"))
                .body("use.pattern", equalTo("seasonal"))
                .body("use.set.reason", equalTo("hall"));
        asCoordinator().get("/api/units/" + number("2")).then().statusCode(404);
    }

    @Test
    void rejectedRowsCanBePutRightAndImportedAgain() {
        JsonPath run = imported("units", UNIT_HEADER + unit("1", "7.4", "EPDM") + unit("2", "long", "EPDM"));
        String rejected = asCoordinator()
                .get("/api/imports/" + run.getString("id") + "/rejected.csv")
                .then()
                .statusCode(200)
                .contentType(startsWith("text/csv"))
                .extract()
                .asString();
        assertThat(rejected.lines()).hasSize(2);
        assertThat(rejected.lines().skip(1))
                .allSatisfy(line -> assertThat(line)
                        .startsWith("3,\"lengthMetres is not a number")
                        .contains(number("2")));
        JsonPath again = imported("units", rejected.replace("long", "6.9"));
        assertThat(again.getInt("accepted")).isEqualTo(1);
        assertThat(again.getList("ignoredColumns")).isEqualTo(java.util.List.of("row", "reason"));
        asCoordinator().get("/api/units/" + number("2")).then().body("lengthMetres", equalTo(6.9f));
    }

    @Test
    void importingAgainChangesUnitsAndLeavesWhatTheFileDoesNotName() {
        imported("units", UNIT_HEADER + unit("1", "7.4", "EPDM"));
        JsonPath run = imported(
                "units",
                "number,kind,depot,lengthMetres,heightMetres,surface,footing\n" + number("1") + ",van,"
                        + FleetFixture.DEPOT + ",5.5,2.7,TPO,no-walk\n");
        assertThat(run.getInt("accepted")).isEqualTo(1);
        asCoordinator()
                .get("/api/units/" + number("1"))
                .then()
                .body("kind", equalTo("van"))
                .body("roof.surface", equalTo("TPO"))
                .body("roof.membraneSystem", equalTo("Marrowlay, \"45\""))
                .body("use.pattern", equalTo("seasonal"));
    }

    @Test
    void aFileWithSemicolonsDecimalCommasAndAByteOrderMarkGoesIn() {
        JsonPath run = imported(
                "units",
                "\uFEFFnumber;kind;depot;lengthMetres;heightMetres;surface;footing\r\n" + number("1") + ";motorhome;"
                        + FleetFixture.DEPOT + ";7,45;3,1;PVC;unknown\r\n");
        assertThat(run.getInt("accepted")).isEqualTo(1);
        asCoordinator().get("/api/units/" + number("1")).then().body("lengthMetres", equalTo(7.45f));
    }

    @Test
    void aFileSentAsAFormGoesIn() {
        String file = UNIT_HEADER + unit("1", "7.4", "EPDM");
        Response taken = asCoordinator()
                .multiPart("file", "fleet.csv", file.getBytes(StandardCharsets.UTF_8), "text/csv")
                .post("/api/imports/units");
        assertThat(finished(taken).getInt("accepted")).isEqualTo(1);
    }

    @Test
    void rentalsGoInOnceHoweverOftenTheyAreImported() {
        imported("units", UNIT_HEADER + unit("1", "7.4", "EPDM"));
        String rentals = "unit,out,back,reference\n"
                + number("1") + ",2025-06-02T10:00:00-04:00,2025-06-09T10:00:00-04:00,R1\n"
                + number("1") + ",2025-07-02T10:00:00-04:00,,R2\n";
        imported("rentals", rentals);
        JsonPath run = imported("rentals", rentals.replace("-04:00,,R2", "-04:00,2025-07-05T10:00:00-04:00,R2"));
        assertThat(run.getInt("accepted")).isEqualTo(2);
        asCoordinator()
                .get("/api/units/" + number("1") + "/rentals")
                .then()
                .body("total", equalTo(2))
                .body("items[0].back", equalTo("2025-07-05T10:00:00-04:00"));
    }

    @Test
    void wrongRentalsAreReportedByField() {
        imported("units", UNIT_HEADER + unit("1", "7.4", "EPDM"));
        JsonPath run = imported(
                "rentals",
                "unit,out,back\n"
                        + number("1") + ",2025-06-02T10:00:00-04:00,2025-06-09T10:00:00-04:00\n"
                        + number("1") + ",2025-06-08T10:00:00-04:00,2025-06-12T10:00:00-04:00\n"
                        + number("1") + ",2025-08-02T10:00:00-04:00,2025-08-01T10:00:00-04:00\n"
                        + "none-such,2025-06-02T10:00:00-04:00,\n"
                        + number("1") + ",yesterday,\n");
        assertThat(run.getInt("accepted")).isEqualTo(1);
        assertThat(run.getList("errors.row")).containsExactly(3, 4, 5, 6);
        assertThat(run.getList("errors.field")).containsExactly("out", "back", "unit", "out");
    }

    @Test
    void moreRowsThanOneBatchAreCounted() {
        String rows = IntStream.range(0, 1203)
                .mapToObj(i -> unit("n" + i, i % 100 == 7 ? "0" : "7.4", "TPO"))
                .collect(Collectors.joining());
        JsonPath run = imported("units", UNIT_HEADER + rows);
        assertThat(run.getInt("rows")).isEqualTo(1203);
        assertThat(run.getInt("accepted")).isEqualTo(1191);
        assertThat(run.getInt("rejected")).isEqualTo(12);
        assertThat(run.getList("errors.row", Integer.class)).hasSize(12).contains(9, 109, 1109);
        assertThat(run.getDouble("progress")).isEqualTo(1.0);
    }

    @Test
    void aFileWithoutANeededColumnIsRefusedWhole() {
        send("units", "number,kind\nx,van\n", null)
                .then()
                .statusCode(400)
                .contentType("application/problem+json")
                .body("errors.field", hasItem("lengthMetres"));
        send("units", "", null).then().statusCode(400).body("errors.field", hasItem("file"));
    }

    @Test
    void theSameKeyImportsAFileOnce() {
        String file = UNIT_HEADER + unit("1", "7.4", "EPDM");
        String first = send("units", file, tag).then().statusCode(202).extract().path("id");
        String second =
                send("units", file, tag).then().statusCode(202).extract().path("id");
        assertThat(second).isEqualTo(first);
        send("units", file + unit("2", "7.4", "EPDM"), tag).then().statusCode(422);
    }

    @Test
    void whatWasImportedIsExportedInTheSameForm() {
        imported("units", UNIT_HEADER + unit("1", "7.4", "EPDM"));
        String file = asCoordinator()
                .get("/api/exports/units.csv")
                .then()
                .statusCode(200)
                .contentType(startsWith("text/csv"))
                .header("Content-Disposition", containsString("units.csv"))
                .extract()
                .asString();
        assertThat(file.lines())
                .anySatisfy(line -> assertThat(line)
                        .startsWith(number("1")
                                + ",,motorhome,tarn-hollow,7.4,3.2,EPDM,walkable,\"Marrowlay, \"\"45\"\"\","));
    }

    @Test
    void onlyCoordinatorsImportAndUnknownTablesAreNotFound() {
        as("desk")
                .contentType("text/csv")
                .body("x")
                .post("/api/imports/units")
                .then()
                .statusCode(403);
        as("desk").get("/api/exports/units.csv").then().statusCode(403);
        send("spoons", "x", null).then().statusCode(404);
        asCoordinator().get("/api/exports/spoons.csv").then().statusCode(404);
        asCoordinator().get("/api/imports/" + UUID.randomUUID()).then().statusCode(404);
    }

    private String number(String suffix) {
        return "I-" + tag + "-" + suffix;
    }

    private String unit(String suffix, String length, String surface) {
        return number(suffix) + ",,motorhome," + FleetFixture.DEPOT + "," + length + ",3.2," + surface
                + ",walkable,\"Marrowlay, \"\"45\"\"\",,,,2020-02-29,seasonal,hall\n";
    }

    private JsonPath imported(String table, String file) {
        return finished(send(table, file, null));
    }

    private static JsonPath finished(Response taken) {
        String id = taken.then().statusCode(202).extract().path("id");
        return await().atMost(Duration.ofSeconds(60))
                .until(
                        () -> asCoordinator()
                                .get("/api/imports/" + id)
                                .then()
                                .statusCode(200)
                                .extract()
                                .jsonPath(),
                        run -> !run.getString("state").equals("running"));
    }

    private static Response send(String table, String file, String key) {
        RequestSpecification request = asCoordinator().contentType("text/csv");
        return (key == null ? request : request.header("Idempotency-Key", key))
                .body(file.getBytes(StandardCharsets.UTF_8))
                .post("/api/imports/" + table);
    }

    private static RequestSpecification asCoordinator() {
        return as("coordinator");
    }

    private static RequestSpecification as(String username) {
        return given().auth().preemptive().basic(username, FleetFixture.PASSWORD);
    }
}
