package dev.lapwing.care;

import static dev.lapwing.care.CareDriver.lastWords;
import static dev.lapwing.care.CareDriver.task;
import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.use.domain.UsePattern;
import io.quarkus.test.junit.QuarkusTest;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What inspections of any origin do to routine work, and that nothing moves what a person has in hand. */
@QuarkusTest
class InspectionsAndStrikesTest extends ChangingUnit {
    private static final int SEASON_ABOUT_TO_CLOSE = 149;

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
}
