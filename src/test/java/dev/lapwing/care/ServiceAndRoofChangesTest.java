package dev.lapwing.care;

import static dev.lapwing.care.CareDriver.lastWords;
import static dev.lapwing.care.CareDriver.task;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What becomes of open work when a unit leaves, comes back or gets a new roof, sent as people send it. */
@QuarkusTest
class ServiceAndRoofChangesTest extends ChangingUnit {
    @Test
    void aSoldUnitHasNoWork() {
        String task = inspected(100);

        unit.post("service", Map.of("state", "sold", "reason", "end of its time"))
                .statusCode(200);

        assertThat(unit.open()).isEmpty();
        assertThat(lastWords(task)).contains("the unit was sold on");
        assertThat(unit.get().getString("service.state")).isEqualTo("sold");
        unit.settled();
        unit.post("care-events", event("storm")).statusCode(409);
        unit.post("service", Map.of("state", "sold", "reason", "again")).statusCode(409);
    }

    @Test
    void whatAPersonHasInHandStaysWhenTheUnitIsSoldAndAsks() {
        String task = inspected(85);
        CareDriver.start(task);

        unit.post("service", Map.of("state", "sold", "reason", "end of its time"))
                .statusCode(200);

        assertThat(unit.onlyOpen()).containsEntry("task", task).containsEntry("state", "under way");
        assertThat((String) unit.onlyOpen().get("question")).contains("Still needed? the unit was sold on");
    }

    @Test
    void aUnitOutOfServiceHasNoDueWorkAndComesBackToItsInterval() {
        inspected(150);
        unit.post("service", Map.of("state", "out of service", "on", due(-100), "reason", "engine"))
                .statusCode(200);
        assertThat(unit.open()).isEmpty();
        unit.settled();

        unit.post("service", Map.of("state", "in service", "reason", "mended"))
                .statusCode(200)
                .body("service.awaySince", equalTo(due(-100)));

        assertThat(task(unit.onlyOpenId()).getString("origin")).isEqualTo("interval");
        assertThat(unit.onlyOpen()).containsEntry("due", due(0));
        unit.post("service", Map.of("state", "in service", "reason", "again")).statusCode(409);
    }

    @Test
    void aUnitLongAwayGetsAnIntakeInspection() {
        inspected(300);
        unit.post("service", Map.of("state", "out of service", "on", due(-181), "reason", "engine"))
                .statusCode(200);

        unit.post("service", Map.of("state", "in service", "on", due(0), "reason", "mended"))
                .statusCode(200);

        assertThat(task(unit.onlyOpenId()).getString("origin")).isEqualTo("intake");
        assertThat(unit.onlyOpen()).containsEntry("due", due(14));
        assertThat((String) unit.onlyOpen().get("why")).contains("back after long away");
        unit.settled();
    }

    @Test
    void aLeavingOrAReturnThatMakesNoSenseIsRefused() {
        unit.post("service", Map.of("state", "away", "reason", "x"))
                .statusCode(400)
                .body("errors[0].field", equalTo("state"));
        unit.post("service", Map.of("state", "sold")).statusCode(400).body("errors[0].field", equalTo("reason"));
        unit.post("service", Map.of("state", "sold", "on", due(-900), "reason", "x"))
                .statusCode(400)
                .body("errors[0].field", equalTo("on"));
        unit.post("service", Map.of("state", "out of service", "on", due(-5), "reason", "x"))
                .statusCode(200);
        unit.post("service", Map.of("state", "in service", "on", due(-6), "reason", "x"))
                .statusCode(400)
                .body("errors[0].message", containsString("before the unit left"));
    }

    @Test
    void aNewRoofStartsTheCountAnewAndEndsWorkOnTheOldOne() {
        String routine = inspected(100);
        String untouched = past.followUp(unit.unit, 100, false).toString();
        String inHand = past.followUp(unit.unit, 100, true).toString();

        unit.post(
                        "roof-replacements",
                        Map.of(
                                "on", due(-1),
                                "reason", "hail",
                                "roof", Map.of("surface", "TPO", "footing", "no-walk")))
                .statusCode(200)
                .body("roof.surface", equalTo("TPO"))
                .body("roof.installedOn", equalTo(due(-1)));

        assertThat(lastWords(routine)).contains("the roof was replaced on");
        assertThat(lastWords(untouched)).contains("the roof was replaced on");
        assertThat(task(inHand).getString("question")).contains("Still needed? the roof was replaced on");
        List<Object> due = unit.open().stream()
                .filter(item -> item.get("kind").equals("inspection"))
                .map(item -> item.get("due"))
                .toList();
        assertThat(due).containsExactly(due(INTERVAL - 1));
        CareDriver.as("desk")
                .get("/api/units/" + unit.unit + "/changes")
                .then()
                .body("items.find { it.field == 'roof.surface' }.new", equalTo("TPO"))
                .body("items.find { it.field == 'roof.surface' }.reason", equalTo("hail"));
        unit.settled();
    }

    @Test
    void aRoofReplacedWhileTheUnitWasAwayCountsToo() {
        inspected(150);
        unit.post("service", Map.of("state", "out of service", "on", due(-100), "reason", "new roof"))
                .statusCode(200);
        unit.post("roof-replacements", Map.of("on", due(-20), "reason", "worn", "roof", Map.of("surface", "TPO")))
                .statusCode(200);

        unit.post("service", Map.of("state", "in service", "reason", "done")).statusCode(200);

        assertThat(unit.onlyOpen()).containsEntry("due", due(INTERVAL - 20));
    }

    private static Map<String, String> event(String kind) {
        return Map.of("kind", kind, "seenAt", "2026-01-20T10:00:00Z", "note", "seen on the way in", "by", "Dean");
    }
}
