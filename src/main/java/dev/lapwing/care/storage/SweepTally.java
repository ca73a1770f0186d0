package dev.lapwing.care.storage;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Map;
import java.util.UUID;

/** Writes down how far a sweep is, in the transaction of the work it counts, so that the counts are true at any moment. */
public final class SweepTally {
    private static final int LONGEST_MESSAGE = 1000;

    private final Connection database;

    /** @param database an open connection inside a transaction; the caller closes it */
    public SweepTally(Connection database) {
        this.database = database;
    }

    /** Adds to the counts of a run. */
    public void add(UUID run, int units, int created, int calledOff) throws SQLException {
        try (PreparedStatement update = database.prepareStatement("update sweep_run set units = units + ?,"
                + " created = created + ?, called_off = called_off + ? where id = ?")) {
            update.setInt(1, units);
            update.setInt(2, created);
            update.setInt(3, calledOff);
            update.setObject(4, run);
            update.executeUpdate();
        }
    }

    /** Writes down what went wrong with single units, by number. */
    public void fail(UUID run, Map<String, String> failures) throws SQLException {
        if (failures.isEmpty()) {
            return;
        }
        try (PreparedStatement insert = database.prepareStatement("insert into sweep_failure (sweep_id, unit_number,"
                + " message) values (?, ?, ?) on conflict do nothing")) {
            for (var failure : failures.entrySet()) {
                insert.setObject(1, run);
                insert.setString(2, failure.getKey());
                insert.setString(3, cut(failure.getValue()));
                insert.addBatch();
            }
            insert.executeBatch();
        }
    }

    private static String cut(String message) {
        return message.length() <= LONGEST_MESSAGE ? message : message.substring(0, LONGEST_MESSAGE);
    }
}
