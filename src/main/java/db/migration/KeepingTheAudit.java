package db.migration;

import dev.lapwing.audit.storage.KeptAsWritten;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;

/**
 * Has the database refuse to change the audit; the two engines have no common words for a trigger. Stands here because
 * Flyway looks for migrations by their folder.
 */
public final class KeepingTheAudit implements JavaMigration {
    private static final List<String> POSTGRES = List.of("""
            create function audit_entry_refuse() returns trigger language plpgsql as
            'begin raise exception ''what was written down is never changed''; end'
            """, """
            create trigger audit_entry_kept before update or delete or truncate on audit_entry
            for each statement execute function audit_entry_refuse()
            """);
    /** H2 runs no trigger for truncate, but never truncates a table that another one refers to. */
    private static final List<String> H2 = List.of(
            "create trigger audit_entry_kept before update, delete on audit_entry for each row call '"
                    + KeptAsWritten.class.getName() + "'",
            "create table audit_entry_guard (entry uuid references audit_entry (id))");

    @Override
    public MigrationVersion getVersion() {
        return MigrationVersion.fromVersion("116");
    }

    @Override
    public String getDescription() {
        return "keeping the audit";
    }

    @Override
    public Integer getChecksum() {
        return null;
    }

    @Override
    public boolean canExecuteInTransaction() {
        return true;
    }

    @Override
    public void migrate(Context context) throws SQLException {
        Connection database = context.getConnection();
        boolean h2 = "H2".equals(database.getMetaData().getDatabaseProductName());
        try (Statement statement = database.createStatement()) {
            for (String sql : h2 ? H2 : POSTGRES) {
                statement.execute(sql);
            }
        }
    }
}
