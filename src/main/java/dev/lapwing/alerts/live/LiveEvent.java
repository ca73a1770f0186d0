package dev.lapwing.alerts.live;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Page;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** Something that happened to work or a hold. */
@Entity
@Table(name = "live_event")
public class LiveEvent extends PanacheEntityBase {
    /** In the order of writing, which is not the order in which transactions end. */
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    Long written;

    /** Its place among all events, or null until it is numbered. */
    Long position;

    @Enumerated(EnumType.STRING)
    LiveKind kind;

    @Column(name = "unit_number")
    String unitNumber;

    @Column(name = "depot_code")
    String depotCode;

    @Column(name = "task_id")
    UUID taskId;

    @Column(name = "hold_id")
    UUID holdId;

    Instant at;

    /** Returns the numbered events after a place, in order. */
    static List<LiveEvent> after(long position, int most) {
        return LiveEvent.<LiveEvent>find("position > ?1 order by position", position)
                .page(Page.ofSize(most))
                .list();
    }

    /** Returns the place of the first event of the last {@code count}, less one. */
    static long placeBeforeLast(int count) {
        return Math.max(0, LiveNumbering.last() - count);
    }
}
