package dev.lapwing.photos.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.photos.PhotoSettings;
import dev.lapwing.photos.PhotoSource;
import dev.lapwing.photos.application.DevelopingPhotos.Developed;
import dev.lapwing.photos.storage.Photo;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Secrets;
import dev.lapwing.web.Repeats;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;

/** Takes photos of a report or task in: all of one request, or none. */
@ApplicationScoped
public class KeepingPhotos {
    private static final int MOST_AT_ONCE = 10;
    private static final int MOST_OF_A_SOURCE = 200;
    private static final int LONGEST_KEY = 200;
    private static final long MEGA = 1_000_000;

    /** What photos are added to. */
    public record Target(PhotoSource source, UUID id, Unit unit, PhotoPlace place) {}

    /**
     * The photos that the files became.
     *
     * @param added whether at least one was not there before
     */
    public record Kept(List<UUID> ids, boolean added) {}

    @Inject
    DevelopingPhotos developing;

    @Inject
    PhotoFiles files;

    @Inject
    PhotoSettings settings;

    @Inject
    Repeats repeats;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /**
     * Keeps files as photos, in their order. A file that was sent to the same report or task before becomes the same
     * photo again. Must be called outside a transaction: decoding takes long.
     *
     * @param key key of a request that may come twice, or null
     */
    public Kept keep(Target target, List<SentPhoto> sent, String by, String key) {
        check(sent, key);
        List<Developed> developed = developing.develop(
                sent,
                target.unit().depot.zoneId(),
                hash -> QuarkusTransaction.requiringNew()
                        .call(() -> Photo.sentBefore(target.id(), hash).isPresent()));
        return QuarkusTransaction.requiringNew()
                .call(() -> key == null ? store(target, developed, by) : once(target, developed, by, key.strip()));
    }

    private static void check(List<SentPhoto> sent, String key) {
        var errors = new FieldErrors();
        errors.check(!sent.isEmpty(), "photos", "holds no file");
        errors.check(sent.size() <= MOST_AT_ONCE, "photos", "holds more than " + MOST_AT_ONCE + " files");
        if (key != null && errors.present(key, "Idempotency-Key")) {
            errors.atMost(key, LONGEST_KEY, "Idempotency-Key");
        }
        errors.refuseIfAny();
    }

    private Kept once(Target target, List<Developed> developed, String by, String key) {
        String fingerprint = Secrets.hash("photos " + target.id() + target.place()
                + developed.stream().map(Developed::sentHash).toList());
        String kept = repeats.once(by, key, fingerprint, () -> {
                    Kept now = store(target, developed, by);
                    List<String> ids = now.ids().stream().map(UUID::toString).toList();
                    return new Repeats.Kept(now.added() ? 201 : 200, String.join(",", ids));
                })
                .body();
        return new Kept(Arrays.stream(kept.split(",")).map(UUID::fromString).toList(), true);
    }

    private Kept store(Target target, List<Developed> developed, String by) {
        lock(target.unit());
        Instant now = clock.instant();
        List<UUID> kept = new ArrayList<>();
        boolean added = false;
        for (Developed one : developed) {
            var before = Photo.sentBefore(target.id(), one.sentHash());
            if (before.isEmpty()) {
                added = true;
                kept.add(add(target, one, by, now).id);
            } else {
                kept.add(before.get().id);
            }
        }
        return new Kept(kept, added);
    }

    /** Lets uploads for one unit pass one after the other, so that together they keep to its quota and to one row each. */
    private static void lock(Unit unit) {
        Photo.getEntityManager()
                .createNativeQuery("select id from unit where id = :id for update", UUID.class)
                .setParameter("id", unit.id)
                .getSingleResult();
    }

    private Photo add(Target target, Developed one, String by, Instant now) {
        Darkroom.Print print = one.print();
        long bytes = (long) print.picture().length + print.thumbnail().length;
        checkRoom(target, bytes);
        files.write(one.hash(), print.picture(), print.thumbnail());
        var photo = new Photo();
        photo.id = ids.next();
        photo.unit = Unit.findById(target.unit().id);
        photo.source = target.source();
        photo.sourceId = target.id();
        photo.position = (int) Photo.count("sourceId", target.id());
        photo.sentHash = one.sentHash();
        photo.hash = one.hash();
        photo.bytes = bytes;
        photo.width = print.width();
        photo.height = print.height();
        photo.zone = target.place().zone();
        photo.finding = target.place().finding();
        photo.takenAt = one.takenAt();
        photo.addedAt = now;
        photo.addedBy = by;
        photo.persistAndFlush();
        return photo;
    }

    private void checkRoom(Target target, long bytes) {
        if (Photo.count("sourceId", target.id()) >= MOST_OF_A_SOURCE) {
            throw Refused.conflict("There are " + MOST_OF_A_SOURCE + " photos here already; more are not taken");
        }
        if (Photo.bytesOf(target.unit().id) + bytes > settings.unitMegabytes() * MEGA) {
            throw Refused.conflict("The photos of unit " + target.unit().number + " fill their "
                    + settings.unitMegabytes() + " MB; ask the coordinator to take some away");
        }
        if (Photo.bytesOf(null) + bytes > settings.fleetMegabytes() * MEGA) {
            throw Refused.conflict("The photos of the fleet fill their " + settings.fleetMegabytes()
                    + " MB; ask whoever runs the service for more room");
        }
    }
}
