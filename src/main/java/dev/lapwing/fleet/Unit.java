package dev.lapwing.fleet;

import dev.lapwing.platform.Refused;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** One rental vehicle. */
@Entity
public class Unit extends PanacheEntityBase {
    @Id
    public UUID id;

    /** The number painted on it; unique in the fleet. */
    public String number;

    public String vin;

    @Enumerated(EnumType.STRING)
    public UnitKind kind;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "depot_code")
    public Depot depot;

    @Column(name = "length_metres")
    public BigDecimal lengthMetres;

    /** Travel height: the highest point on the road, roof equipment included. */
    @Column(name = "height_metres")
    public BigDecimal heightMetres;

    @Embedded
    public Roof roof;

    @Enumerated(EnumType.STRING)
    public Storage storage;

    /** First day of its own season as MM-dd, or null for the depot's. */
    @Column(name = "season_opens")
    public String seasonOpens;

    @Column(name = "season_closes")
    public String seasonCloses;

    /** First day the present season, its own or the depot's, counted for it; null when it always did. */
    @Column(name = "season_since")
    public LocalDate seasonSince;

    /** First day of the present time in service. */
    @Column(name = "in_service_from")
    public LocalDate inServiceFrom;

    /** Day it had left before the present time in service, or null when it was never away. */
    @Column(name = "away_since")
    public LocalDate awaySince;

    /** First day it is no longer in service, or null while it stays. */
    @Column(name = "out_of_service_on")
    public LocalDate outOfServiceOn;

    /** Whether it leaves for good. */
    public boolean sold;

    @Column(name = "out_of_service_why")
    public String outOfServiceWhy;

    @Column(name = "created_at")
    public Instant createdAt;

    @Version
    public int version;

    /** Returns whether it is in service on a local day of its depot, and if not why. */
    public ServiceState serviceState(LocalDate day) {
        if (outOfServiceOn != null && !day.isBefore(outOfServiceOn)) {
            return sold ? ServiceState.SOLD : ServiceState.OUT_OF_SERVICE;
        }
        return day.isBefore(inServiceFrom) ? ServiceState.OUT_OF_SERVICE : ServiceState.IN_SERVICE;
    }

    public static Optional<Unit> byNumber(String number) {
        return find("from Unit u join fetch u.depot where u.number = ?1", number)
                .firstResultOptional();
    }

    /** Returns the units that have one of the numbers. */
    public static List<Unit> withNumbers(Collection<String> numbers) {
        return numbers.isEmpty() ? List.of() : list("from Unit u join fetch u.depot where u.number in ?1", numbers);
    }

    /** Returns the unit or refuses with "not found". */
    public static Unit require(String number) {
        return byNumber(number).orElseThrow(() -> Refused.notFound("unit " + number));
    }

    /** Returns a page of units by number, after a number if given. */
    public static List<Unit> after(String number, String depotCode, int limit) {
        return find(
                        "from Unit u join fetch u.depot where u.number > ?1 and (?2 is null or u.depot.code = ?2)"
                                + " order by u.number",
                        number == null ? "" : number,
                        depotCode)
                .range(0, limit - 1)
                .list();
    }

    /** Returns units whose number contains the text, best first. */
    public static List<Unit> matching(String text, int limit) {
        return find(
                        "from Unit u join fetch u.depot where lower(u.number) like ?1 escape '!' order by u.number",
                        numberPattern(text))
                .range(0, limit - 1)
                .list();
    }

    /** Returns a page of the units whose number contains a text, by number, after a number; null lets all through. */
    public static List<Unit> page(String text, String depotCode, String after, int limit) {
        return find(
                        "from Unit u join fetch u.depot where lower(u.number) like ?1 escape '!'"
                                + " and (?2 is null or u.depot.code = ?2) and u.number > ?3 order by u.number",
                        numberPattern(text),
                        depotCode,
                        after == null ? "" : after)
                .range(0, limit - 1)
                .list();
    }

    /** Returns how many units {@link #page} goes through. */
    public static long countMatching(String text, String depotCode) {
        return count(
                "from Unit u where lower(u.number) like ?1 escape '!' and (?2 is null or u.depot.code = ?2)",
                numberPattern(text),
                depotCode);
    }

    /** Notes for the units of a depot without a season of their own that another season counts from a day on. */
    static void seasonChangedAt(String depotCode, LocalDate day) {
        update("seasonSince = ?1 where depot.code = ?2 and seasonOpens is null", day, depotCode);
    }

    /** Returns the pattern, for {@code like} with {@code escape '!'}, of small-letter numbers that contain the text. */
    public static String numberPattern(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        return "%" + plain.replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%";
    }
}
