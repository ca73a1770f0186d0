package dev.lapwing.jobs.storage;

import dev.lapwing.jobs.domain.roof.ObjectType;
import dev.lapwing.jobs.domain.roof.PlacedObject;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** One version of a unit's own roof plan. Never changed; the highest version counts. */
@Entity
@Immutable
@Table(name = "roof_plan")
public class PlanVersion extends PanacheEntityBase {
    @Id
    public UUID id;

    @Column(name = "unit_id")
    public UUID unitId;

    /** From 1. */
    public int version;

    @Column(name = "width_metres")
    public double widthMetres;

    @Column(name = "saved_at")
    public Instant savedAt;

    /** Sign-in name of who saved it. */
    @Column(name = "saved_by")
    public String savedBy;

    /** What is on the roof, without its edges. */
    @Immutable
    @ElementCollection
    @CollectionTable(name = "roof_plan_object", joinColumns = @JoinColumn(name = "plan_id"))
    @OrderColumn(name = "position")
    public List<StoredObject> objects = new ArrayList<>();

    /** One object of a stored plan. */
    @Embeddable
    public static class StoredObject {
        @Column(name = "object_id")
        public String objectId;

        @Enumerated(EnumType.STRING)
        public ObjectType type;

        public String name;
        public double x;
        public double y;

        @Column(name = "length_metres")
        public double lengthMetres;

        @Column(name = "width_metres")
        public double widthMetres;

        /** Returns an object as it is stored. */
        public static StoredObject of(PlacedObject object) {
            var stored = new StoredObject();
            stored.objectId = object.id();
            stored.type = object.type();
            stored.name = object.name();
            stored.x = object.x();
            stored.y = object.y();
            stored.lengthMetres = object.lengthMetres();
            stored.widthMetres = object.widthMetres();
            return stored;
        }

        PlacedObject placed() {
            return new PlacedObject(objectId, type, name, x, y, lengthMetres, widthMetres);
        }
    }

    /** Returns the version that counts, or empty while the unit has no plan of its own. */
    public static Optional<PlanVersion> latest(UUID unitId) {
        return find("unitId = ?1 order by version desc", unitId).firstResultOptional();
    }

    public static Optional<PlanVersion> of(UUID unitId, int version) {
        return find("unitId = ?1 and version = ?2", unitId, version).firstResultOptional();
    }

    /** Returns all versions of a unit, the newest first. */
    public static List<PlanVersion> all(UUID unitId) {
        return list("unitId = ?1 order by version desc", unitId);
    }

    public List<PlacedObject> placed() {
        return objects.stream().map(StoredObject::placed).toList();
    }
}
