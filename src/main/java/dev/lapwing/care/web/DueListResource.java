package dev.lapwing.care.web;

import dev.lapwing.care.WorkWaits;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.DueList;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestQuery;

@Path("/api/due-list")
class DueListResource {
    @Inject
    WorkWaits waits;

    @Inject
    Clock clock;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<DueItem> list(
            @RestQuery String depot,
            @RestQuery String from,
            @RestQuery String until,
            @RestQuery String kind,
            @RestQuery String assignee,
            @RestQuery Integer limit,
            @RestQuery String after) {
        var errors = new FieldErrors();
        var filter = new DueList.Filter(
                depot,
                date(from, "from", errors),
                date(until, "until", errors),
                errors.word(TaskKind.class, kind, "kind").orElse(null),
                assignee,
                null);
        DueList.Place place = Cursors.read(after, errors);
        errors.refuseIfAny();
        int size = Page.limit(limit);
        List<CareTask> found = DueList.after(filter, place, size + 1);
        Page<CareTask> page =
                Page.of(found, size, DueList.count(filter), task -> Cursors.write(DueList.Place.of(task)));
        return items(page);
    }

    private Page<DueItem> items(Page<CareTask> page) {
        Instant now = clock.instant();
        List<UUID> unitIds = page.items().stream().map(task -> task.unit.id).toList();
        Map<UUID, Hold> holds = Hold.openOf(unitIds).stream()
                .collect(Collectors.toMap(hold -> hold.unit.id, hold -> hold, (oldest, later) -> oldest));
        var yard = YardNotes.of(page.items(), now);
        Map<UUID, List<WorkWaits.Wait>> first = waits.of(page.items());
        return page.map(
                task -> DueItem.of(task, holds.get(task.unit.id), yard, first.getOrDefault(task.id, List.of()), now));
    }

    private static LocalDate date(String text, String field, FieldErrors errors) {
        return errors.read(text, LocalDate::parse, field, "is not a valid date (yyyy-mm-dd)");
    }
}
