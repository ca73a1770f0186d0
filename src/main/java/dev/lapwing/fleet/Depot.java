package dev.lapwing.fleet;

import dev.lapwing.platform.Refused;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.List;

/** A yard where units stand and are cared for. Its dates are those of its time zone. */
@Entity
public class Depot extends PanacheEntityBase {
    @Id
    public String code;

    public String name;

    /** IANA name of the time zone. */
    public String zone;

    /** First day of the season, as MM-dd. */
    @Column(name = "season_opens")
    public String seasonOpens;

    /** Last day of the season, as MM-dd; may lie before the first, across New Year. */
    @Column(name = "season_closes")
    public String seasonCloses;

    /** Address of the return desk, or null. */
    @Column(name = "desk_mail")
    public String deskMail;

    public ZoneId zoneId() {
        return ZoneId.of(zone);
    }

    public MonthDay opens() {
        return MonthDay.parse("--" + seasonOpens);
    }

    public MonthDay closes() {
        return MonthDay.parse("--" + seasonCloses);
    }

    /** Returns the season as one text, such as {@code 04-01 to 10-31}. */
    String season() {
        return seasonOpens + " to " + seasonCloses;
    }

    /** Returns the local date at an instant. */
    public LocalDate dateAt(Instant instant) {
        return instant.atZone(zoneId()).toLocalDate();
    }

    /** Returns the depot or refuses with "not found". */
    public static Depot require(String code) {
        Depot depot = findById(code);
        if (depot == null) {
            throw Refused.notFound("depot " + code);
        }
        return depot;
    }

    public static List<Depot> byName() {
        return list("order by name");
    }

    /** Returns a page of depots by code, after a code if given. */
    static List<Depot> after(String code, int limit) {
        return find("code > ?1 order by code", code == null ? "" : code)
                .range(0, limit - 1)
                .list();
    }
}
