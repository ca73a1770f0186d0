package dev.lapwing.platform;

import dev.lapwing.fleet.Depot;
import dev.lapwing.fleet.Footing;
import dev.lapwing.fleet.Roof;
import dev.lapwing.fleet.Storage;
import dev.lapwing.fleet.Surface;
import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitKind;
import dev.lapwing.people.Passwords;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;

/** Puts a small fleet into the test database: one depot, its people, and units as asked for. Safe to call again. */
@ApplicationScoped
public class FleetFixture {
    public static final String DEPOT = "tarn-hollow";
    public static final String PASSWORD = "a long password";

    @Inject
    Passwords passwords;

    @Inject
    Clock clock;

    @Transactional
    public void people() {
        if (Depot.findById(DEPOT) != null) {
            return;
        }
        var depot = new Depot();
        depot.code = DEPOT;
        depot.name = "Tarn Hollow";
        depot.zone = "America/New_York";
        depot.seasonOpens = "04-01";
        depot.seasonCloses = "10-31";
        depot.persist();
        staff("coordinator", "Cora Vale", Role.COORDINATOR);
        staff("desk", "Dean Marsh", Role.DESK);
        staff("tech1", "Tess Alder", Role.TECH);
        staff("tech2", "Tom Birch", Role.TECH);
    }

    private void staff(String username, String fullName, Role role) {
        var staff = new Staff();
        staff.username = username;
        staff.fullName = fullName;
        staff.mail = username + "@haldenridge.example";
        staff.language = "en";
        staff.role = role;
        staff.active = true;
        staff.createdAt = clock.instant();
        staff.depots = Set.of(DEPOT);
        passwords.set(staff, PASSWORD);
        staff.persist();
    }

    /** Adds a unit, 3.20 m high, unless it is there. */
    @Transactional
    public void unit(String number) {
        people();
        if (Unit.byNumber(number).isPresent()) {
            return;
        }
        var unit = new Unit();
        unit.id = UUID.randomUUID();
        unit.number = number;
        unit.kind = UnitKind.MOTORHOME;
        unit.depot = Depot.findById(DEPOT);
        unit.lengthMetres = new BigDecimal("7.400");
        unit.heightMetres = new BigDecimal("3.200");
        unit.roof = new Roof();
        unit.roof.surface = Surface.EPDM;
        unit.roof.footing = Footing.UNKNOWN;
        unit.storage = Storage.OUTSIDE;
        unit.inServiceFrom = LocalDate.of(2025, 1, 1);
        unit.createdAt = clock.instant();
        unit.persist();
    }
}
