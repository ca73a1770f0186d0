package dev.lapwing.demo;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import dev.lapwing.fleet.Unit;
import dev.lapwing.use.storage.Rental;
import dev.lapwing.use.storage.SetPattern;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.path.json.JsonPath;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What is exported from a fleet of every kind imports again unchanged. */
@QuarkusTest
@TestProfile(DemoProfile.class)
class ExportImportTest {
    private static final String NASTY = " '=1+1, \"quoted\"; ünï\r\n@second line";

    @Test
    void importingAnExportOfUnitsChangesNothing() {
        makeNasty();
        String exported = exported("units");
        Map<String, Integer> versions = versions();
        JsonPath run = imported("units", exported);
        assertThat(run.getInt("accepted")).isEqualTo(60);
        assertThat(run.getInt("rejected")).isZero();
        assertThat(exported("units")).isEqualTo(exported);
        assertThat(versions()).isEqualTo(versions);
    }

    @Test
    void importingAnExportBringsBackUnitsThatWereChangedSince() {
        makeNasty();
        String exported = exported("units");
        QuarkusTransaction.requiringNew().run(() -> {
            SetPattern.deleteAll();
            Unit.update("roof.sealant = null, roof.membraneSystem = 'x', roof.installedOn = null, vin = 'x',"
                    + " lengthMetres = 5.001, storage = INSIDE, seasonOpens = null, outOfServiceOn = null");
        });
        assertThat(exported("units")).isNotEqualTo(exported);
        imported("units", exported);
        assertThat(exported("units")).isEqualTo(exported);
    }

    @Test
    void importingAnExportBringsBackRentalsThatWereLost() {
        String exported = exported("rentals");
        QuarkusTransaction.requiringNew().run(() -> Rental.delete("outAt < instant"));
        assertThat(exported("rentals").length()).isLessThan(exported.length());
        JsonPath run = imported("rentals", exported);
        assertThat(run.getInt("rejected")).isZero();
        assertThat(exported("rentals").lines().sorted().toList())
                .isEqualTo(exported.lines().sorted().toList());
    }

    private static void makeNasty() {
        QuarkusTransaction.requiringNew().run(() -> {
            Unit unit = Unit.require("HR-101");
            unit.roof.sealant = NASTY.strip();
            unit.roof.confirmedBy = "=cmd|'/c calc'!A1";
            unit.seasonOpens = "09-01";
            unit.seasonCloses = "02-28";
            unit.outOfServiceOn = unit.inServiceFrom.plusYears(50);
            unit.outOfServiceWhy = "-sold-";
        });
    }

    private static Map<String, Integer> versions() {
        return QuarkusTransaction.requiringNew().call(() -> {
            Map<String, Integer> versions = new TreeMap<>();
            Unit.<Unit>listAll().forEach(unit -> versions.put(unit.number, unit.version));
            return versions;
        });
    }

    private static String exported(String table) {
        return as().get("/api/exports/" + table + ".csv")
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    private static JsonPath imported(String table, String file) {
        String id = as().contentType("text/csv")
                .body(file.getBytes(StandardCharsets.UTF_8))
                .post("/api/imports/" + table)
                .then()
                .statusCode(202)
                .extract()
                .path("id");
        return await().atMost(Duration.ofSeconds(60))
                .until(
                        () -> as().get("/api/imports/" + id).jsonPath(),
                        run -> !run.getString("state").equals("running"));
    }

    private static RequestSpecification as() {
        return given().auth().preemptive().basic("coordinator", "halden");
    }
}
