package dev.lapwing.care;

import dev.lapwing.platform.FleetFixture;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;

/** A unit long in service at a depot of its own, whose season opens in sixty days. */
abstract class ChangingUnit {
    static final String ZONE = "America/New_York";

    /** Days of the shipped rules; common practice, no source. */
    static final int INTERVAL = 91;

    static final int OPENS_IN = 60;

    @Inject
    FleetFixture fleet;

    @Inject
    CarePast past;

    CareDriver unit;
    LocalDate today;

    @BeforeEach
    void aUnitLongInService() {
        fleet.people();
        String name = "c" + UUID.randomUUID().toString().substring(0, 8);
        today = LocalDate.now(ZoneId.of(ZONE));
        CareDriver.depot("POST", name, ZONE, today.plusDays(OPENS_IN));
        unit = new CareDriver(name.toUpperCase(Locale.ROOT), name);
        unit.add();
        past.longInService(unit.unit);
    }

    /** Lets the unit have been inspected, and plans its next work. */
    String inspected(int daysAgo) {
        past.inspected(unit.unit, daysAgo);
        unit.sweep();
        return unit.onlyOpenId();
    }

    String due(int days) {
        return today.plusDays(days).toString();
    }

    void anotherUnit() {
        unit = new CareDriver(unit.unit + "-2", unit.depot);
        unit.add();
        past.longInService(unit.unit);
    }
}
