package dev.lapwing.jobs;

import static dev.lapwing.jobs.SheetDriver.as;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The sheet as a page, filled in with plain forms. */
@QuarkusTest
class SheetPageTest {
    private static final Pattern CAUTION = Pattern.compile("name=\"read\" value=\"([^\"]+)\"");

    @Inject
    FleetFixture fleet;

    private String unit;
    private String page;
    private String task;
    private String tech;

    @BeforeEach
    void aStruckUnit() {
        unit = "P-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        JsonPath report = SheetDriver.strike(unit);
        task = report.getString("task.id");
        tech = report.getString("task.assignee");
        page = "/tasks/" + task + "/sheet";
        SheetDriver.accept(task, tech);
    }

    @Test
    void theSheetShowsCautionsLadderAndCleanersAndHasNoFormBeforeTheStart() {
        as(tech).get(page)
                .then()
                .statusCode(200)
                .body(containsString("Falls kill"))
                .body(containsString("three feet (0.91 m) above the edge"))
                .body(containsString("Orchard Peel Cleaner: no."))
                .body(containsString("Start the task before"))
                .body(not(containsString("Add finding")));
        as(tech).get("/tasks/" + task).then().body(containsString(page));
    }

    @Test
    void aFindingAndASignatureAreTakenOnceEachHoweverOftenTheyAreSent() {
        SheetDriver.start(task, tech);
        String key = UUID.randomUUID().toString();
        addCrack(key, "12,5").then().statusCode(303);
        addCrack(key, "12,5").then().statusCode(303);
        assertThat(as(tech).get("/api/tasks/" + task + "/findings").<Integer>path("total"))
                .isEqualTo(1);

        Response signed = sign(cautions());

        signed.then().statusCode(303);
        as(tech).get(page)
                .then()
                .body(containsString("Verdict: fit"))
                .body(containsString("12.5 cm"))
                .body(containsString("All seams felt"));
        assertThat(SheetDriver.unit(unit).getString("hold")).isNull();
    }

    @Test
    void whatIsWrongIsSaidAndWhatWasTypedStays() {
        SheetDriver.start(task, tech);

        addCrack(UUID.randomUUID().toString(), "long")
                .then()
                .statusCode(400)
                .body(containsString("Length is not a number"))
                .body(containsString("value=\"long\""));
        List<String> allButOne = cautions().subList(1, cautions().size());
        sign(allButOne)
                .then()
                .statusCode(400)
                .body(containsString("The cautions: must be true"))
                .body(containsString("All seams felt"));

        assertThat(SheetDriver.task(task).getString("state")).isEqualTo("under way");
    }

    private Response addCrack(String key, String length) {
        return form().formParam("key", key)
                .formParam("zone", "front-left")
                .formParam("kind", "crack")
                .formParam("depth", "surface")
                .formParam("lengthCm", length)
                .post(page + "/findings");
    }

    private Response sign(List<String> read) {
        return form().formParam("key", UUID.randomUUID().toString())
                .formParam("read", read)
                .formParam("dry", "yes")
                .formParam("by", "Tess Alder")
                .formParam("statement", "All seams felt")
                .post(page + "/sign-off");
    }

    private List<String> cautions() {
        Matcher found = CAUTION.matcher(as(tech).get(page).asString());
        return found.results().map(match -> match.group(1)).toList();
    }

    private RequestSpecification form() {
        return as(tech).contentType("application/x-www-form-urlencoded")
                .redirects()
                .follow(false);
    }
}
