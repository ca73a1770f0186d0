package dev.lapwing.jobs;

import static dev.lapwing.jobs.SheetDriver.as;

import dev.lapwing.fleet.Unit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** What people do on a roof beside noting findings. */
final class RoofDriver {
    static final String SYSTEM = "Hallowsheet E60";
    static final String OWN_SEALANT = "Ouselwick Lap Sealant E60";
    static final String FOREIGN_SEALANT = "Ouselwick Seam Seal T60";

    private RoofDriver() {}

    static Response post(String task, String who, String step, Map<String, ?> body) {
        return as(who).body(body).post("/api/tasks/" + task + "/" + step);
    }

    static JsonPath roof(String task) {
        return as("desk")
                .get("/api/tasks/" + task + "/roof")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    /** Records the membrane system of a unit as confirmed, as the register would. */
    static void confirmed(String unit) {
        QuarkusTransaction.requiringNew().run(() -> {
            Unit known = Unit.require(unit);
            known.roof.membraneSystem = SYSTEM;
            known.roof.confirmedBy = "Noor Hathersage";
            known.roof.confirmedOn = LocalDate.of(2026, 1, 15);
        });
    }

    /** Returns the task of a kind among others. */
    static String ofKind(List<String> tasks, String kind) {
        return ofWhy(tasks, kind, "");
    }

    /** Returns the task of a kind whose reason begins with some words. */
    static String ofWhy(List<String> tasks, String kind, String words) {
        return tasks.stream()
                .filter(id -> kind.equals(SheetDriver.task(id).getString("kind")))
                .filter(id -> SheetDriver.task(id).getString("why").startsWith(words))
                .findFirst()
                .orElseThrow();
    }
}
