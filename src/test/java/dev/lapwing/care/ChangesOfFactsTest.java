package dev.lapwing.care;

import static dev.lapwing.care.CareDriver.lastWords;
import static dev.lapwing.care.CareDriver.task;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import dev.lapwing.platform.FleetFixture;
import dev.lapwing.use.domain.UsePattern;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * What becomes of open work when the facts of a unit change: each change is sent as people send it, and stored. The
 * figures are those of the care rules; common practice, no source.
 */
@QuarkusTest
class ChangesOfFactsTest {
    private static final String ZONE = "America/New_York";
    private static final int INTERVAL = 91;
    private static final int UNDER_TREES = 75;
    private static final int OPENS_IN = 60;
    private static final int SEASON_ABOUT_TO_CLOSE = 149;

    @Inject
    FleetFixture fleet;

    @Inject
    CarePast past;

    private CareDriver unit;
    private LocalDate today;

    @BeforeEach
    void aUnitLongInService() {
        fleet.people();
        String name = "c" + UUID.randomUUID().toString().substring(0, 8);
        today = LocalDate.now(ZoneId.of(ZONE));
        CareDriver.depot("POST", name, ZONE, today.plusDays(OPENS_IN));
        unit = new CareDriver(name.toUpperCase(Locale.ROOT), name);
        unit.add();
        past.longInService(unit.unit);
    }

    /** Lets the unit have been inspected, and plans its next work. */
    private String inspected(int daysAgo) {
        past.inspected(unit.unit, daysAgo);
        unit.sweep();
        return unit.onlyOpenId();
    }

    private String due(int days) {
        return today.plusDays(days).toString();
    }

    @Test
    void aNewPatternMovesWorkThatIsNotYetDueAndTellsWhy() {
        String before = inspected(40);
        assertThat(unit.onlyOpen()).containsEntry("due", due(INTERVAL - 40));

        unit.seasonal();

        assertThat(task(before).getString("state")).isEqualTo("called off");
        assertThat(lastWords(before)).contains("moved from due").contains("seasonal");
        assertThat(task(unit.onlyOpenId()).getString("origin")).isEqualTo("season opening");
        assertThat(unit.onlyOpen()).containsEntry("due", due(OPENS_IN));
        assertThat(unit.get().getString("use.since")).isEqualTo(today.toString());
        unit.settled();
    }

    @Test
    void aPatternThatHasEndedGivesWayToTheJudgedOneFromThatDayOn() {
        past.inspected(unit.unit, 200);
        past.patternSet(unit.unit, UsePattern.SEASONAL, 150, 140);

        unit.sweep();

        assertThat(unit.get().getString("use.pattern")).isEqualTo("full-time");
        assertThat(unit.get().getString("use.since")).isEqualTo(due(-10));
        assertThat(unit.onlyOpen()).containsEntry("due", due(-10));
    }

    @Test
    void aPatternReplacedByTheSameOneKeepsTheDayItBegan() {
        past.patternSet(unit.unit, UsePattern.SEASONAL, 30, 60);

        unit.change(unit.depot, Map.of("pattern", "seasonal", "reason", "still so", "until", due(90)))
                .statusCode(200)
                .body("use.since", equalTo(due(-30)))
                .body("use.set.until", equalTo(due(90)));
        unit.change(unit.depot, Map.of("pattern", "full-time", "reason", "winter lets", "until", due(90)))
                .statusCode(200)
                .body("use.since", equalTo(due(0)));
        unit.change(unit.depot, Map.of("pattern", "full-time", "reason", "too late", "until", due(-1)))
                .statusCode(400)
                .body("errors[0].field", equalTo("usePattern.until"));
    }

    @Test
    void aMoveToAnotherDepotTakesTheWorkAlongAndAppliesItsSeason() {
        unit.seasonal();
        String before = inspected(20);
        String far = unit.depot + "-far";
        CareDriver.depot("POST", far, "Pacific/Auckland", today.plusDays(120));

        unit.change(far, null).statusCode(200);

        assertThat(task(before).getString("state")).isEqualTo("called off");
        assertThat(lastWords(before)).contains("moved from due ");
        assertThat(unit.onlyOpen()).containsEntry("depot", far).containsEntry("due", due(120));
        assertThat(task(unit.onlyOpenId()).getString("why")).contains("season opens");
        CareDriver.as("desk")
                .get("/api/units/" + unit.unit + "/changes")
                .then()
                .body("items[0].field", equalTo("depot"))
                .body("items[0].old", equalTo(unit.depot))
                .body("items[0].new", equalTo(far))
                .body("items[0].by", equalTo("coordinator"));
    }

    @Test
    void workThatAPersonHasInHandGoesAlongToAnotherDepotAndSaysSo() {
        String task = inspected(80);
        CareDriver.start(task);
        String far = unit.depot + "-far";
        CareDriver.depot("POST", far, "Pacific/Auckland", today.plusDays(OPENS_IN));

        unit.change(far, null).statusCode(200);

        assertThat(unit.onlyOpen())
                .containsEntry("task", task)
                .containsEntry("depot", far)
                .containsEntry("due", due(INTERVAL - 80))
                .containsEntry("assignee", "tech1");
        assertThat(lastWords(task)).contains("Moved with its unit").contains("still has it");
    }

    @Test
    void anotherSeasonOfTheDepotMovesItsSeasonalWorkAtOnce() {
        unit.seasonal();
        inspected(20);
        assertThat(unit.onlyOpen()).containsEntry("due", due(OPENS_IN));

        CareDriver.depot("PUT", unit.depot, ZONE, today.plusDays(OPENS_IN + 15));

        await().atMost(Duration.ofSeconds(30))
                .untilAsserted(() -> assertThat(unit.onlyOpen()).containsEntry("due", due(OPENS_IN + 15)));
        unit.settled();
    }

    @Test
    void anotherTimeZoneLeavesTheDatesAndShiftsTheirInstants() {
        String task = inspected(40);

        CareDriver.depot("PUT", unit.depot, "Asia/Kathmandu", today.plusDays(OPENS_IN));

        assertThat(unit.onlyOpen()).containsEntry("task", task).containsEntry("due", due(INTERVAL - 40));
        assertThat(past.dueAt(task))
                .isEqualTo(today.plusDays(INTERVAL - 40)
                        .atStartOfDay(ZoneId.of("Asia/Kathmandu"))
                        .toInstant());
    }

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

    @Test
    void anEarlyInspectionMovesTheNextOneAndALateOneToo() {
        for (int daysAgo : new int[] {70, 120}) {
            String task = inspected(daysAgo);
            CareDriver.doAndSign(task);

            unit.sweep();

            assertThat(unit.onlyOpen()).containsEntry("due", due(INTERVAL));
            anotherUnit();
        }
    }

    private void anotherUnit() {
        unit = new CareDriver(unit.unit + "-2", unit.depot);
        unit.add();
        past.longInService(unit.unit);
    }

    @Test
    void aStrikeInspectionServesRoutineWorkThatIsDueSoonAndNoOther() {
        String soon = inspected(70);
        strikeAndInspect();
        unit.sweep();
        assertThat(lastWords(soon)).contains("served by the strike inspection");
        assertThat(unit.onlyOpen()).containsEntry("due", due(INTERVAL));

        anotherUnit();
        String later = inspected(50);
        strikeAndInspect();
        unit.settled();
        assertThat(unit.onlyOpen()).containsEntry("task", later).containsEntry("due", due(INTERVAL - 50));
    }

    private void strikeAndInspect() {
        CareDriver.doAndSign(struck());
    }

    /** Flags a strike and returns its inspection. */
    private String struck() {
        unit.post("strikes", Map.of("seenAt", "2025-11-20T10:00:00Z", "note", "scraped a branch"))
                .statusCode(201);
        return (String) unit.open().stream()
                .filter(item -> item.get("kind").equals("strike inspection"))
                .findFirst()
                .orElseThrow()
                .get("task");
    }

    @Test
    void aStrikeDuringClosingWorkLeavesItInHandAndItsInspectionServesIt() {
        String code = unit.depot + "-s";
        CareDriver.depot("POST", code, ZONE, today.minusDays(SEASON_ABOUT_TO_CLOSE));
        unit = new CareDriver(unit.unit + "-S", code);
        unit.add();
        past.longInService(unit.unit);
        past.inspected(unit.unit, 100);
        past.patternSet(unit.unit, UsePattern.SEASONAL, 300, 900);
        unit.sweep();
        String closing = unit.onlyOpenId();
        assertThat(task(closing).getString("origin")).isEqualTo("season closing");
        CareDriver.start(closing);

        String inspection = struck();
        assertThat(unit.open()).hasSize(2);
        CareDriver.doAndSign(inspection);
        unit.settled();

        assertThat(task(closing).getString("state")).isEqualTo("under way");
        assertThat(task(closing).getString("question")).contains("No longer needed: served by the strike inspection");
    }

    @Test
    void whatAPersonHasInHandIsNeverMoved() {
        String task = inspected(80);
        CareDriver.start(task);

        unit.seasonal();

        assertThat(unit.onlyOpen())
                .containsEntry("task", task)
                .containsEntry("due", due(INTERVAL - 80))
                .containsEntry("state", "under way");
        assertThat(task(task).getString("question")).contains("The rules now say due");
        unit.settled();
        unit.change(unit.depot, Map.of("pattern", "full-time", "reason", "long lets"))
                .statusCode(200);
        assertThat(task(task).getString("question")).isNull();
    }

    @Test
    void aStayUnderTreesBringsTheWorkForwardWhileItLasts() {
        inspected(40);
        String from = today.minusDays(2) + "T09:00:00Z";
        String id = unit.post("stays", Map.of("kind", "storage", "from", from, "place", "under trees"))
                .statusCode(201)
                .extract()
                .path("id");
        assertThat(unit.onlyOpen()).containsEntry("due", due(UNDER_TREES - 40));
        assertThat((String) unit.onlyOpen().get("why")).contains("full-time-under-trees");

        CareDriver.as("desk")
                .body(Map.of("kind", "storage", "from", from, "until", today.minusDays(1) + "T09:00:00Z"))
                .put("/api/units/" + unit.unit + "/stays/" + id)
                .then()
                .statusCode(200);

        assertThat(unit.onlyOpen()).containsEntry("due", due(INTERVAL - 40));
        unit.settled();
    }

    @Test
    void theDueListSaysWhereTheUnitIsAndWhetherItGoesOutTooEarly() {
        inspected(10);
        assertThat(unit.onlyOpen()).containsEntry("yard", "in the yard, nothing booked");
        unit.post("rentals", Map.of("out", today.plusDays(3) + "T13:00:00Z", "back", due(200) + "T13:00:00Z"))
                .statusCode(201);

        Map<String, Object> row = unit.onlyOpen();

        assertThat((String) row.get("yard"))
                .startsWith("in the yard until ")
                .endsWith(", goes out before its work is due, not back before the work is late");
        assertThat(OffsetDateTime.parse((String) row.get("pickup")).toInstant())
                .isEqualTo(Instant.parse(today.plusDays(3) + "T13:00:00Z"));
    }

    @Test
    void whatIsChangedByHandIsKeptWithWhoDidIt() {
        unit.change(unit.depot, Map.of("pattern", "seasonal", "reason", "summer only", "until", due(30)))
                .statusCode(200);
        unit.post("use-pattern/end", Map.of("reason", "long lets after all")).statusCode(204);
        unit.post("use-pattern/end", Map.of("reason", "again")).statusCode(409);

        CareDriver.as("tech1")
                .get("/api/units/" + unit.unit + "/changes")
                .then()
                .body("total", equalTo(2))
                .body("items[0].field", equalTo("usePattern"))
                .body("items[0].old", equalTo("seasonal until " + due(30)))
                .body("items[0].reason", equalTo("long lets after all"))
                .body("items[1].new", equalTo("seasonal until " + due(30)));
        assertThat(unit.get().getString("use.pattern")).isEqualTo("full-time");
    }

    private static Map<String, String> event(String kind) {
        return Map.of("kind", kind, "seenAt", "2026-01-20T10:00:00Z", "note", "seen on the way in", "by", "Dean");
    }
}
