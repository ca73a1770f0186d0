package dev.lapwing.platform;

import static org.assertj.core.api.Assertions.assertThat;

import io.agroal.api.AgroalDataSource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;

/** What claims to run on PostgreSQL does. */
@QuarkusTest
@TestProfile(OnPostgres.class)
class OnPostgresTest {
    @Inject
    AgroalDataSource database;

    @Test
    void theDatabaseIsPostgres() throws SQLException {
        try (var connection = database.getConnection()) {
            assertThat(connection.getMetaData().getDatabaseProductName()).isEqualTo("PostgreSQL");
        }
    }
}
