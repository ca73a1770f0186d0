package dev.lapwing.care;

import dev.lapwing.platform.OnPostgres;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;

/** The same claims, on the other database engine. */
@QuarkusTest
@TestProfile(OnPostgres.class)
class ServiceAndRoofChangesOnPostgresTest extends ServiceAndRoofChangesTest {}
