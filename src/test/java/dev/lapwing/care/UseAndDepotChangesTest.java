package dev.lapwing.care;

import static dev.lapwing.care.CareDriver.lastWords;
import static dev.lapwing.care.CareDriver.task;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.equalTo;

import dev.lapwing.use.domain.UsePattern;
import io.quarkus.test.junit.QuarkusTest;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What becomes of open work when use, depot, season or time zone of a unit change, sent as people send it. */
@QuarkusTest
class UseAndDepotChangesTest extends ChangingUnit {
    /** Days of a shipped rule; a project default, no source. */
    private static final int UNDER_TREES = 75;

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
}
