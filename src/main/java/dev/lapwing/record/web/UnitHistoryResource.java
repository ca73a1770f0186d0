package dev.lapwing.record.web;

import dev.lapwing.audit.storage.AuditEntry;
import dev.lapwing.fleet.Unit;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Answers the audit of a unit: who changed what, from what to what, the newest first. */
@Path("/api/units/{number}/history")
class UnitHistoryResource {
    /** The thing that changed: the area that owns it, and its id there. */
    record Where(String area, String id) {}

    /** One change; the time is that of the unit's depot, and {@code from} or {@code to} is null for what is new or gone. */
    record Entry(UUID id, OffsetDateTime at, String who, String what, String from, String to, Where where) {
        static Entry of(AuditEntry entry, ZoneId zone) {
            return new Entry(
                    entry.id,
                    entry.at.atZone(zone).toOffsetDateTime(),
                    entry.who,
                    entry.what,
                    entry.was,
                    entry.became,
                    new Where(entry.area, entry.subject));
        }
    }

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<Entry> list(@RestPath String number, @RestQuery Integer limit, @RestQuery String after) {
        Unit unit = Unit.require(number);
        int size = Page.limit(limit);
        List<AuditEntry> found = AuditEntry.ofUnit(unit.id, AuditCursor.place(after), size + 1);
        return Page.of(found, size, AuditEntry.countOf(unit.id), entry -> entry.position.toString())
                .map(entry -> Entry.of(entry, unit.depot.zoneId()));
    }
}
