package dev.lapwing.alerts.hooks;

import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Words;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An address that is told of what happens. */
@Entity
@Table(name = "webhook_target")
public class WebhookTarget extends PanacheEntityBase {
    @Id
    UUID id;

    String address;

    /** Code of the depot it is told of, or null for all. */
    @Column(name = "depot_code")
    String depotCode;

    /** The words of what it is told of, with commas between. */
    String kinds;

    /** Key of its signatures. It signs, so it is stored as it is. */
    String secret;

    boolean paused;

    @Column(name = "made_at")
    Instant madeAt;

    @Column(name = "made_by")
    String madeBy;

    @Column(name = "removed_at")
    Instant removedAt;

    /** Returns the target unless it was removed, or refuses with "not found". */
    static WebhookTarget require(UUID id) {
        return WebhookTarget.<WebhookTarget>find("id = ?1 and removedAt is null", id)
                .firstResultOptional()
                .orElseThrow(() -> Refused.notFound("webhook " + id));
    }

    /** Returns all that were not removed, oldest first. */
    static List<WebhookTarget> present() {
        return list("removedAt is null order by madeAt, id");
    }

    /** Returns those that want to hear of something at a depot. */
    static List<WebhookTarget> hearing(HookKind kind, String depotCode) {
        return WebhookTarget.<WebhookTarget>list(
                        "removedAt is null and (depotCode is null or depotCode = ?1)", depotCode)
                .stream()
                .filter(target -> target.kinds().contains(kind))
                .toList();
    }

    List<HookKind> kinds() {
        return Stream.of(kinds.split(","))
                .map(word -> Words.parse(HookKind.class, word))
                .toList();
    }

    void kinds(Collection<HookKind> chosen) {
        kinds = chosen.stream().sorted().map(HookKind::word).collect(Collectors.joining(","));
    }
}
