package dev.lapwing.demo;

import dev.lapwing.fleet.Depot;
import dev.lapwing.people.Passwords;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import dev.lapwing.people.rota.KeepingRota;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The depots of the demo and the people who serve them. */
@ApplicationScoped
class DemoPeople {
    @ConfigProperty(name = "lapwing.demo.password", defaultValue = "halden")
    String password;

    @Inject
    Passwords passwords;

    @Inject
    KeepingRota rota;

    void writeDepots(List<DemoFiles.Row> rows) {
        for (DemoFiles.Row row : rows) {
            var depot = new Depot();
            depot.code = row.text("code");
            depot.name = row.text("name");
            depot.zone = row.text("zone");
            depot.seasonOpens = row.text("seasonOpens");
            depot.seasonCloses = row.text("seasonCloses");
            depot.deskMail = row.text("deskMail");
            depot.persist();
        }
        Depot.flush();
    }

    void writeStaff(List<DemoFiles.Row> rows, Instant since) {
        for (DemoFiles.Row row : rows) {
            var staff = new Staff();
            staff.username = row.text("username");
            staff.fullName = row.text("fullName");
            staff.mail = row.text("mail");
            staff.language = row.text("language");
            staff.role = row.constant(Role.class, "role").orElseThrow();
            staff.depots = Set.of(row.text("depots").split(" "));
            staff.active = true;
            staff.createdAt = since;
            passwords.set(staff, password);
            staff.persist();
        }
    }

    /** Puts the techs on duty, and one of them on leave next week, which leaves a gap to see. */
    void writeRota(List<DemoFiles.Row> rows, LocalDate today) {
        for (DemoFiles.Row row : rows) {
            var turn = new KeepingRota.NewTurn(
                    DayOfWeek.valueOf(row.text("weekday").toUpperCase(Locale.ROOT))
                            .getValue(),
                    row.text("starts"),
                    row.text("ends"),
                    row.text("username"),
                    Integer.valueOf(row.text("place")));
            rota.add(row.text("depot"), turn);
        }
        LocalDate monday = today.with(TemporalAdjusters.next(DayOfWeek.MONDAY));
        DemoFiles.Row away = rows.get(rows.size() - 1);
        rota.add(
                away.text("depot"),
                new KeepingRota.NewAbsence(
                        away.text("username"),
                        monday.toString(),
                        monday.plusDays(6).toString(),
                        "leave"));
    }

    /** Gives everybody of the demo the password of the settings, which may have changed since the last start. */
    void renewPasswords(List<DemoFiles.Row> rows) {
        for (DemoFiles.Row row : rows) {
            Staff.activeByName(row.text("username")).ifPresent(staff -> passwords.set(staff, password));
        }
    }

    String password() {
        return password;
    }
}
