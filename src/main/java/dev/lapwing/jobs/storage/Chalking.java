package dev.lapwing.jobs.storage;

import io.quarkus.hibernate.orm.panache.Panache;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** Reads which roofs chalk. */
public final class Chalking {
    private Chalking() {}

    /**
     * Returns those of the units on whose roof chalking was found and, since the last time, no treatment has held. A
     * roof that was laid later does not count.
     */
    public static List<UUID> untreatedOf(Collection<UUID> unitIds) {
        if (unitIds.isEmpty()) {
            return List.of();
        }
        return Panache.getEntityManager()
                .createQuery("""
                        select distinct t.unit.id from RecordedFinding f, CareTask t
                        where f.taskId = t.id and f.kind = CHALKING and t.unit.id in :units
                          and f.id not in (select w.findingId from WithdrawnFinding w)
                          and (t.unit.roof.installedOn is null or t.unit.roof.installedOn <= cast(f.recordedAt as LocalDate))
                          and not exists (select 1 from RecordedEvent e, CareTask o where e.taskId = o.id
                            and o.unit.id = t.unit.id and e.kind = TREATED and e.recordedAt >= f.recordedAt)
                        """, UUID.class)
                .setParameter("units", unitIds)
                .getResultList();
    }
}
