package dev.lapwing.audit.storage;

import dev.lapwing.audit.Audited;
import dev.lapwing.platform.Ids;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;

/** Writes many changes of one doer and moment in one batch, in the transaction of the connection. */
public final class AuditBatch implements AutoCloseable {
    private final PreparedStatement insert;
    private final Ids ids;
    private final String who;
    private final Instant at;

    public AuditBatch(Connection database, Ids ids, String who, Instant at) throws SQLException {
        this.ids = ids;
        this.who = who;
        this.at = at;
        insert = database.prepareStatement(
                "insert into audit_entry (id, unit_id, at, who, what, area, subject, was, became)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?)");
    }

    public void add(Audited change) throws SQLException {
        insert.setObject(1, ids.next());
        insert.setObject(2, change.unitId());
        insert.setObject(3, at.atOffset(ZoneOffset.UTC));
        insert.setString(4, who);
        insert.setString(5, change.what());
        insert.setString(6, change.area());
        insert.setString(7, change.subject());
        insert.setString(8, change.was());
        insert.setString(9, change.became());
        insert.addBatch();
    }

    public void write() throws SQLException {
        insert.executeBatch();
    }

    @Override
    public void close() throws SQLException {
        insert.close();
    }
}
