package dev.lapwing.care.application;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.care.SweepDepot;
import dev.lapwing.care.storage.SweepReader;
import dev.lapwing.care.storage.SweptUnit;
import dev.lapwing.fleet.Depot;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.TestTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The sweep sends as many statements for a batch of many units as for a batch of few. */
@QuarkusTest
class SweepStatementsTest {
    /** The read that finds no further units, once in every sweep. */
    private static final int LOOKING_FOR_MORE = 1;

    @Inject
    SweepDepot depots;

    @Inject
    SweepBatch batch;

    @Inject
    Rulebook rulebook;

    @Inject
    AgroalDataSource database;

    @Inject
    Clock clock;

    @Test
    @TestTransaction
    void statementsGrowWithBatchesNotWithUnits() throws SQLException {
        int forFew = statementsOfOneBatch(3);
        int forMany = statementsOfOneBatch(300);

        assertThat(forMany).isEqualTo(forFew).isPositive();
    }

    @Test
    @TestTransaction
    void aSecondSweepOnlyReads() throws SQLException {
        String depot = depotOf(40);
        int first = sweep(depot, 40);
        int second = sweep(depot, 40);

        assertThat(second).isPositive().isLessThan(first);
        assertThat(sweep(depot, 20) - LOOKING_FOR_MORE).isEqualTo((second - LOOKING_FOR_MORE) * 2);
    }

    private int statementsOfOneBatch(int units) throws SQLException {
        return sweep(depotOf(units), units);
    }

    private String depotOf(int units) {
        String depot = "st-" + UUID.randomUUID().toString().substring(0, 8);
        depots.open(depot, units);
        return depot;
    }

    /** Sweeps the depot in batches and returns how many statements were sent. */
    private int sweep(String depotCode, int size) throws SQLException {
        Depot depot = Depot.findById(depotCode);
        var counting = new CountingStatements();
        try (Connection real = database.getConnection()) {
            Connection connection = counting.over(real);
            var reader = new SweepReader(connection);
            List<SweptUnit> units = reader.unitsAfter(depotCode, "", size);
            while (!units.isEmpty()) {
                String last = batch.sweep(connection, rulebook.engine(), depot, units, clock.instant())
                        .last();
                units = reader.unitsAfter(depotCode, last, size);
            }
        }
        return counting.sent();
    }
}
