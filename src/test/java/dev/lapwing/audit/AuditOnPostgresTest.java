package dev.lapwing.audit;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.lapwing.platform.OnPostgres;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.junit.jupiter.api.Test;

/** The same claims on the other database engine, which also refuses to empty the table at one stroke. */
@QuarkusTest
@TestProfile(OnPostgres.class)
class AuditOnPostgresTest extends AuditTest {
    @Test
    void theTrailCannotBeTruncated() {
        assertThatThrownBy(() -> QuarkusTransaction.requiringNew()
                        .run(() -> database.createNativeQuery("truncate table audit_entry")
                                .executeUpdate()))
                .hasStackTraceContaining("never changed");
    }
}
