package dev.lapwing.platform;

import java.sql.Connection;
import java.sql.Driver;
import java.sql.DriverPropertyInfo;
import java.sql.SQLException;
import java.util.Properties;
import java.util.logging.Logger;

/**
 * Opens H2 or PostgreSQL connections by the JDBC URL.
 *
 * <p>The framework fixes the driver when the service is built; this one leaves the choice of the engine to whoever
 * starts it. H2 is always run in its PostgreSQL mode, and each commit is on disk before it is answered: a strike that
 * was acknowledged must survive a crash.
 */
public final class EitherDatabaseDriver implements Driver {
    private static final String H2_PREFIX = "jdbc:h2:";
    private static final String H2_SETTINGS = ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
            + ";DB_CLOSE_ON_EXIT=FALSE;DB_CLOSE_DELAY=-1;WRITE_DELAY=0;LOCK_TIMEOUT=10000";

    private final Driver h2 = new org.h2.Driver();
    private final Driver postgres = new org.postgresql.Driver();

    @Override
    public Connection connect(String url, Properties info) throws SQLException {
        if (url == null || !url.startsWith(H2_PREFIX)) {
            return postgres.connect(url, sendingRowsTogether(info));
        }
        var credentials = new Properties();
        for (String name : new String[] {"user", "password"}) {
            if (info.getProperty(name) != null) {
                credentials.setProperty(name, info.getProperty(name));
            }
        }
        return h2.connect(url + H2_SETTINGS, credentials);
    }

    /** A batch of inserts goes to PostgreSQL as one statement of many rows; it then does not count them one by one. */
    private static Properties sendingRowsTogether(Properties info) {
        var settings = new Properties();
        settings.putAll(info);
        settings.setProperty("reWriteBatchedInserts", "true");
        return settings;
    }

    @Override
    public boolean acceptsURL(String url) throws SQLException {
        return h2.acceptsURL(url) || postgres.acceptsURL(url);
    }

    @Override
    public DriverPropertyInfo[] getPropertyInfo(String url, Properties info) {
        return new DriverPropertyInfo[0];
    }

    @Override
    public int getMajorVersion() {
        return 1;
    }

    @Override
    public int getMinorVersion() {
        return 0;
    }

    @Override
    public boolean jdbcCompliant() {
        return false;
    }

    @Override
    public Logger getParentLogger() {
        return Logger.getLogger(EitherDatabaseDriver.class.getName());
    }
}
