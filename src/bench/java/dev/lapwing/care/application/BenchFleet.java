package dev.lapwing.care.application;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import org.flywaydb.core.Flyway;

/**
 * A made-up fleet of one depot in a real schema: every unit was inspected once in the last 91 days, so the full-time
 * interval is all there is to count. Rentals, if asked for, are a week out of every fortnight.
 */
final class BenchFleet {
    static final String DEPOT = "bench";
    static final String ZONE = "Europe/Oslo";
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    static final int INTERVAL_DAYS = 91;

    private final Connection database;
    private final boolean h2;

    BenchFleet(Connection database, boolean h2) {
        this.database = database;
        this.h2 = h2;
    }

    static void makeTables(String url, String user, String password) {
        Flyway.configure()
                .dataSource(url, user, password)
                .locations("classpath:db/migration")
                .load()
                .migrate();
    }

    void fill(int units, int rentals) throws SQLException {
        run("insert into depot (code, name, zone, season_opens, season_closes) values ('" + DEPOT + "', 'Bench', '" + ZONE
                + "', '04-01', '10-31')");
        run("insert into unit (id, number, kind, depot_code, length_metres, height_metres, surface, footing, storage,"
                + " in_service_from, created_at, version) select " + newId() + ", " + number("n") + ", 'MOTORHOME', '"
                + DEPOT + "', 7.4, 3.2, 'EPDM', 'UNKNOWN', 'INSIDE', date '2024-01-01',"
                + " timestamp with time zone '2024-01-01 00:00:00+00', 0 from " + range(1, units));
        run("insert into care_task (id, unit_id, depot_code, kind, origin, rule_id, rule_version, why, opens, due, late,"
                + " due_at, state, touched, created_at, created_by, done_at, done_on, version) select " + newId()
                + ", id, depot_code, 'INSPECTION', 'INTERVAL', 'full-time', 1, 'earlier work', date '2026-08-01',"
                + " date '2026-08-15', date '2026-08-29', timestamp with time zone '2026-08-15 00:00:00+00', 'DONE',"
                + " true, timestamp with time zone '2026-05-15 00:00:00+00', 'sweep',"
                + " timestamp with time zone '2026-11-01 00:00:00+00', " + inspectedOn() + ", 0 from unit");
        if (rentals > 0) {
            run("insert into rental (id, unit_id, out_at, back_at) select " + newId() + ", u.id, " + weeksAgo("2 * n")
                    + ", " + weeksAgo("2 * n - 1") + " from unit u cross join " + range(1, rentals));
        }
        run("insert into sweep_run (id, state, asked_by, started_at, units, created, called_off) values ("
                + "'00000000-0000-0000-0000-000000000001', 'RUNNING', 'bench',"
                + " timestamp with time zone '2026-11-25 00:00:00+00', 0, 0, 0)");
        database.commit();
        database.setAutoCommit(true);
        run(h2 ? "analyze sample_size 1000" : "vacuum analyze");
        database.setAutoCommit(false);
    }

    /** Returns the one statement that says when the full-time interval of each unit ends. */
    static String dueDates() {
        return "select u.number, max(t.done_on) + " + INTERVAL_DAYS + " from unit u join care_task t on t.unit_id = u.id"
                + " where u.depot_code = '" + DEPOT + "' and t.kind = 'INSPECTION' and t.state = 'DONE'"
                + " group by u.number order by u.number";
    }

    /** Returns the one statement that stores the work which those dates ask for. */
    String storeWork() {
        String due = "(d.last + " + INTERVAL_DAYS + ")";
        return "insert into care_task (id, unit_id, depot_code, kind, origin, rule_id, rule_version, why, opens, due, late,"
                + " due_at, state, touched, open_key, created_at, created_by, version) select " + newId()
                + ", u.id, u.depot_code, 'INSPECTION', 'INTERVAL', 'full-time', 1,"
                + " 'wash with inspection: full-time, last done ' || d.last || ', 91 days, rule full-time v1', " + due
                + " - 14, " + due + ", " + due + " + 14, cast(" + due + " as timestamp) at time zone '" + ZONE
                + "', 'PLANNED', false, u.id || ' INSPECTION', timestamp with time zone '2026-11-25 00:00:00+00', 'sql', 0"
                + " from unit u join (select unit_id, max(done_on) last from care_task where kind = 'INSPECTION' and"
                + " state = 'DONE' group by unit_id) d on d.unit_id = u.id where u.depot_code = '" + DEPOT + "'";
    }

    /** Forgets the work that was stored, so that the next run begins as the one before. */
    void forgetWork() throws SQLException {
        run("delete from care_task_step");
        run("delete from care_task where state = 'PLANNED'");
        run("delete from use_judgement");
        database.commit();
        if (!h2) {
            database.setAutoCommit(true);
            run("vacuum analyze");
            database.setAutoCommit(false);
        }
    }

    private void run(String sql) throws SQLException {
        try (Statement statement = database.createStatement()) {
            statement.execute(sql);
        }
    }

    private String newId() {
        return h2 ? "random_uuid()" : "gen_random_uuid()";
    }

    private String range(int first, int last) {
        return h2 ? "system_range(" + first + ", " + last + ") r(n)" : "generate_series(" + first + ", " + last + ") r(n)";
    }

    private static String number(String n) {
        return "'B-' || lpad(cast(" + n + " as varchar), 8, '0')";
    }

    private static String inspectedOn() {
        return "date '2026-11-25' - mod(cast(substring(number from 3) as integer), " + INTERVAL_DAYS + ")";
    }

    private static String weeksAgo(String weeks) {
        return "timestamp with time zone '2026-11-25 10:00:00+00' - (" + weeks + ") * interval '7' day";
    }
}
