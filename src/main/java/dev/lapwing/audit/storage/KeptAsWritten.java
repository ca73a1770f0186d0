package dev.lapwing.audit.storage;

import java.sql.Connection;
import java.sql.SQLException;
import org.h2.api.Trigger;

/** Refuses to change or delete rows; H2 calls it. PostgreSQL has a function of its own for it. */
public final class KeptAsWritten implements Trigger {
    /** The state that the SQL standard has for a trigger that refuses, "triggered action exception"; from memory. */
    private static final String TRIGGERED_ACTION = "09000";

    @Override
    public void fire(Connection database, Object[] before, Object[] after) throws SQLException {
        throw new SQLException("what was written down is never changed", TRIGGERED_ACTION);
    }
}
