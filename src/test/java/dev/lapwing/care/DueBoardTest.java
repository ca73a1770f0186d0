package dev.lapwing.care;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.care.domain.Standing;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.DueBoard;
import dev.lapwing.care.storage.DueList;
import dev.lapwing.fleet.Depot;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.TestTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The due list by standing, where standing is a matter of each depot's own date. */
@QuarkusTest
class DueBoardTest {
    /** Late on 10 March in New York and early on 11 March in Auckland. */
    private static final Instant NOW = Instant.parse("2031-03-10T20:00:00Z");

    private static final LocalDate TENTH = LocalDate.of(2031, 3, 10);

    @Inject
    FleetFixture fleet;

    private String unit;
    private DueList.Filter onlyThisUnit;

    @BeforeEach
    void aUnit() {
        unit = "B-" + UUID.randomUUID().toString().substring(0, 6);
        onlyThisUnit = new DueList.Filter(null, null, null, null, null, unit.toLowerCase(Locale.ROOT));
        fleet.unit(unit);
    }

    private CareTask task(TaskKind kind, LocalDate opens, LocalDate late) {
        var task = new CareTask();
        task.id = UUID.randomUUID();
        task.unit = Unit.require(unit);
        task.depot = task.unit.depot;
        task.kind = kind;
        task.origin = TaskOrigin.BY_HAND;
        task.why = "asked for by a test";
        task.opens = opens;
        task.due = late;
        task.late = late;
        task.dueAt = late.atStartOfDay(task.depot.zoneId()).toInstant();
        task.state = TaskState.PLANNED;
        task.createdAt = NOW;
        task.createdBy = "test";
        return task;
    }

    private void persistOneOfEach() {
        task(TaskKind.STRIKE_INSPECTION, TENTH, TENTH).persist();
        task(TaskKind.INSPECTION, TENTH.minusDays(9), TENTH.minusDays(1)).persist();
        task(TaskKind.INSPECTION, TENTH, TENTH).persist();
        task(TaskKind.INSPECTION, TENTH.plusDays(1), TENTH.plusDays(9)).persist();
    }

    @Test
    @TestTransaction
    void theCountsAddUpToTheList() {
        persistOneOfEach();

        var counts = new DueBoard(NOW).counts(onlyThisUnit);

        assertThat(counts.values()).containsExactly(1L, 1L, 1L, 1L);
        assertThat(counts.values().stream().mapToLong(Long::longValue).sum()).isEqualTo(DueList.count(onlyThisUnit));
    }

    @Test
    @TestTransaction
    void whatIsListedStandsAsItSays() {
        persistOneOfEach();
        var board = new DueBoard(NOW);

        for (Standing standing : Standing.values()) {
            List<CareTask> found = board.after(standing, onlyThisUnit, DueList.Place.START, 10);
            assertThat(found).hasSize(1).allMatch(task -> task.standingAt(NOW) == standing);
        }
    }

    @Test
    @TestTransaction
    void theSameDatesAreLateWhereTheNextDayHasBegun() {
        var auckland = new Depot();
        auckland.code = "far-" + unit.toLowerCase(Locale.ROOT);
        auckland.name = "Far Yard";
        auckland.zone = "Pacific/Auckland";
        auckland.seasonOpens = "10-01";
        auckland.seasonCloses = "04-30";
        auckland.persist();
        task(TaskKind.INSPECTION, TENTH, TENTH).persist();
        CareTask far = task(TaskKind.INSPECTION, TENTH, TENTH);
        far.depot = auckland;
        far.persist();

        var board = new DueBoard(NOW);

        assertThat(board.after(Standing.LATE, onlyThisUnit, DueList.Place.START, 10))
                .extracting(task -> task.id)
                .containsExactly(far.id);
        assertThat(board.counts(onlyThisUnit)).containsEntry(Standing.DUE, 1L).containsEntry(Standing.LATE, 1L);
    }
}
