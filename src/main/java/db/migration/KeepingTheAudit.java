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
 * Has the database refuse to change the audit and the changes of units; the two engines have no common words for a
 * trigger. Stands here because Flyway looks for migrations by their folder.
 */
public final class KeepingTheAudit implements JavaMigration {
    private static final List<String> TABLES = List.of("audit_entry", "unit_change");
    private static final List<String> POSTGRES = List.of("""
            create function %1$s_refuse() returns trigger language plpgsql as
            'begin raise exception ''what was written down is never changed''; end'
            """, """
            create trigger %1$s_kept before update or delete or truncate on %1$s
            for each statement execute function %1$s_refuse()
            """);
    /** H2 runs no trigger for truncate, but never truncates a table that another one refers to. */
    private static final List<String> H2 = List.of(
            "create trigger %1$s_kept before update, delete on %1$s for each row call '" + KeptAsWritten.class.getName()
                    + "'",
            "create table %1$s_guard (entry uuid references %1$s (id))");

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
            for (String table : TABLES) {
                for (String sql : h2 ? H2 : POSTGRES) {
                    statement.execute(sql.formatted(table));
                }
            }
        }
    }
}
