package dev.lapwing.fleet.imports;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A run says truly how far it is, whatever happens to it. */
@QuarkusTest
class ImportRunsTest {
    private static final UUID ANOTHER_PROCESS = new UUID(7, 7);

    @Inject
    FleetFixture fleet;

    @Inject
    StoringRows storing;

    @Inject
    ImportWorker worker;

    @Inject
    Clock clock;

    @BeforeEach
    void people() {
        fleet.people();
    }

    @Test
    void aRunWhoseProcessHasGoneQuietWasInterrupted() {
        answered(run(ANOTHER_PROCESS, clock.instant().minus(Duration.ofSeconds(31))))
                .body("state", equalTo("failed"))
                .body("problem", startsWith("interrupted"));
    }

    @Test
    void aRunOfAnotherProcessThatShowsLifeGoesOn() {
        answered(run(ANOTHER_PROCESS, clock.instant())).body("state", equalTo("running"));
    }

    @Test
    void aRunOfThisProcessMayTakeItsTime() {
        answered(run(worker.id(), clock.instant().minus(Duration.ofHours(1)))).body("state", equalTo("running"));
    }

    @Test
    void whenABatchFailsAsOneItsGoodRowsGoInOneByOne() throws IOException {
        UUID id = run(worker.id(), clock.instant());
        List<CsvRow> rows = CsvSourceTest.read("name,note\na,1\nbad,2\nc,3\nd\n");
        var table = new FailsOnBad();
        storing.store(id, table, rows, 20, "coordinator");
        storing.finish(id);
        assertThat(table.stored).containsExactly("a", "a", "c");
        answered(id)
                .body("state", equalTo("done"))
                .body("rows", equalTo(4))
                .body("accepted", equalTo(2))
                .body("rejected", equalTo(2))
                .body("errors.row", equalTo(List.of(3, 5)));
    }

    private UUID run(UUID process, Instant touched) {
        return QuarkusTransaction.requiringNew().call(() -> {
            var run = new ImportRun();
            run.id = UUID.randomUUID();
            run.kind = "units";
            run.state = ImportState.RUNNING;
            run.askedBy = "coordinator";
            run.askedAt = touched;
            run.worker = process;
            run.touchedAt = touched;
            run.delimiter = ',';
            run.header = List.of("name", "note");
            run.ignoredColumns = List.of();
            run.fileBytes = 100;
            run.persist();
            return run.id;
        });
    }

    private static ValidatableResponse answered(UUID id) {
        return given().auth()
                .preemptive()
                .basic("coordinator", FleetFixture.PASSWORD)
                .get("/api/imports/" + id)
                .then()
                .statusCode(200);
    }

    /** A table that takes a batch down with the row named bad. */
    private static final class FailsOnBad implements CsvTable {
        private final List<String> stored = new ArrayList<>();

        @Override
        public String name() {
            return "things";
        }

        @Override
        public List<Column> columns() {
            return List.of(new Column("name", true), new Column("note", false));
        }

        @Override
        public void store(List<CsvRow> rows, Instant now, String by) {
            for (CsvRow row : rows) {
                if ("bad".equals(row.text("name"))) {
                    throw new IllegalStateException("the database says no");
                }
                stored.add(row.text("name"));
            }
        }

        @Override
        public ExportPage page(String cursor) {
            throw new UnsupportedOperationException();
        }
    }
}
