package dev.lapwing.care.application;

import dev.lapwing.care.domain.DueEngine;
import dev.lapwing.care.domain.RuleFile;
import dev.lapwing.care.storage.SweepReader;
import dev.lapwing.care.storage.SweepTally;
import dev.lapwing.care.storage.SweptUnit;
import dev.lapwing.fleet.Depot;
import dev.lapwing.fleet.Surface;
import dev.lapwing.platform.EitherDatabaseDriver;
import dev.lapwing.use.domain.PatternThresholds;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * Times the sweep of a fleet beside one SQL statement that gives the same due dates, and checks that they are the same.
 * Arguments: {@code h2} or {@code postgres}, units, rentals per unit, folder for the H2 file. See
 * {@code docs/care-benchmark.md}.
 */
public final class SweepBenchmark {
    private static final int BATCH = 500;
    private static final UUID RUN = new UUID(0, 1);
    private static final Instant NOW = BenchFleet.TODAY
            .atTime(LocalTime.of(2, 30))
            .atZone(ZoneId.of(BenchFleet.ZONE))
            .toInstant();

    private final Connection database;
    private final BenchFleet fleet;
    private final SweepBatch batch = new SweepBatch();
    private final DueEngine engine;
    private final Depot depot = new Depot();

    private SweepBenchmark(Connection database, boolean h2) throws IOException {
        this.database = database;
        fleet = new BenchFleet(database, h2);
        var surfaces = Arrays.stream(Surface.values()).map(Surface::word).collect(Collectors.toSet());
        engine = new DueEngine(RuleFile.read(Files.readString(Path.of("shared/care/rules.json")), surfaces));
        batch.thresholds = PatternThresholds.DEFAULT;
        batch.ids = UUID::randomUUID;
        depot.code = BenchFleet.DEPOT;
        depot.zone = BenchFleet.ZONE;
        depot.seasonOpens = "04-01";
        depot.seasonCloses = "10-31";
    }

    public static void main(String[] arguments) throws IOException, SQLException {
        boolean h2 = arguments[0].equals("h2");
        int units = Integer.parseInt(arguments[1]);
        int rentals = Integer.parseInt(arguments[2]);
        if (h2) {
            Path folder = Files.createTempDirectory(Path.of(arguments[3]), "lapwing-bench-");
            measure("jdbc:h2:file:" + folder.toAbsolutePath() + "/fleet", "sa", "", true, units, rentals);
        } else {
            try (var server = EmbeddedPostgres.start()) {
                measure(server.getJdbcUrl("postgres", "postgres"), "postgres", "postgres", false, units, rentals);
            }
        }
    }

    private static void measure(String url, String user, String password, boolean h2, int units, int rentals)
            throws IOException, SQLException {
        var login = new Properties();
        login.setProperty("user", user);
        login.setProperty("password", password);
        try (Connection database = new EitherDatabaseDriver().connect(url, login)) {
            BenchFleet.makeTables(h2 ? url + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH" : url, user, password);
            database.setAutoCommit(false);
            var benchmark = new SweepBenchmark(database, h2);
            benchmark.fleet.fill(units, rentals);
            benchmark.compare(h2 ? "H2" : "PostgreSQL", units, rentals);
        }
    }

    private void compare(String name, int units, int rentals) throws SQLException {
        var cpu = new CpuTime(name.equals("H2") ? 0 : count("select pg_backend_pid()"));
        Time store = timed(cpu, this::storeBySql);
        fleet.forgetWork();
        try (var heap = new HeapWatch()) {
            Time first = timed(cpu, this::sweep);
            require(differences() == 0, "the sweep and the statement give the same due dates");
            Time again = timed(cpu, this::sweep);
            Time select = timed(cpu, this::dueDatesBySql);
            require(tasks() == units, "a second sweep makes nothing");
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %,d | %d | %s | %s | %s | %s | %s | %s | %d | %d |%n",
                    name, units, rentals, store, first, first.over(store), select, again, again.over(select),
                    heap.mostMegabytes(), heap.keptMegabytes());
        }
    }

    /** Something to time. */
    private interface Work {
        void run() throws SQLException;
    }

    /** What something took. */
    private record Time(double elapsed, double processor) {
        String over(Time other) {
            return String.format(
                    Locale.ROOT, "%.1f (%.1f)", elapsed / other.elapsed, processor / other.processor);
        }

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%.1f (%.1f)", elapsed, processor);
        }
    }

    private static Time timed(CpuTime cpu, Work work) throws SQLException {
        double processor = cpu.seconds();
        long start = System.nanoTime();
        work.run();
        return new Time((System.nanoTime() - start) / 1e9, cpu.seconds() - processor);
    }

    private void sweep() throws SQLException {
        String last = "";
        while (last != null) {
            List<SweptUnit> units = new SweepReader(database).unitsAfter(depot.code, last, BATCH);
            SweepBatch.Outcome outcome = batch.sweep(database, engine, depot, units, NOW);
            new SweepTally(database).add(RUN, outcome.units(), outcome.created(), outcome.calledOff());
            require(outcome.failures().isEmpty(), "no unit fails");
            database.commit();
            last = outcome.last();
        }
    }

    private void storeBySql() throws SQLException {
        try (Statement statement = database.createStatement()) {
            statement.executeUpdate(fleet.storeWork());
        }
        database.commit();
    }

    private void dueDatesBySql() throws SQLException {
        long days = 0;
        try (Statement statement = database.createStatement()) {
            statement.setFetchSize(BATCH);
            try (ResultSet row = statement.executeQuery(BenchFleet.dueDates())) {
                while (row.next()) {
                    days += row.getObject(2, LocalDate.class).toEpochDay() + row.getString(1).length();
                }
            }
        }
        database.commit();
        require(days > 0, "there are due dates");
    }

    private long differences() throws SQLException {
        return count("select count(*) from (" + BenchFleet.dueDates() + ") d (number, due) left join unit u"
                + " on u.number = d.number left join care_task t on t.unit_id = u.id and t.state = 'PLANNED'"
                + " where t.due is null or t.due <> d.due");
    }

    private long tasks() throws SQLException {
        return count("select count(*) from care_task where state = 'PLANNED'");
    }

    private long count(String sql) throws SQLException {
        try (Statement statement = database.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            row.next();
            return row.getLong(1);
        }
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException("does not hold: " + what);
        }
    }
}
