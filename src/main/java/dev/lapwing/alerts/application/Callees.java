package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.Rung;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import dev.lapwing.people.rota.DutyRota;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Knows whom each rung of the ladder calls. */
@ApplicationScoped
class Callees {
    private record Asked(Rung rung, String depot, String assignee) {}

    /** Answers for one look at the ladder, at one instant, and asks the database for nobody twice. */
    final class Look {
        private final Map<Asked, List<Reader>> known = new HashMap<>();
        private final Instant now;

        private Look(Instant now) {
            this.now = now;
        }

        /** Returns who is called, without doubles; empty when there is nobody. */
        List<Reader> of(Rung rung, CareTask task) {
            var asked = new Asked(rung, task.depot.code, task.assignee);
            return known.computeIfAbsent(asked, any -> find(rung, task, now));
        }
    }

    @Inject
    DutyRota duty;

    @Inject
    LadderSettings settings;

    Look lookAt(Instant now) {
        return new Look(now);
    }

    private List<Reader> find(Rung rung, CareTask task, Instant now) {
        Stream<Reader> called =
                switch (rung) {
                    case TOLD -> Stream.concat(assigned(task), staff(task, Role.COORDINATOR));
                    case NEXT_ON_DUTY -> Stream.concat(nextOnDuty(task, now).map(Reader::of).stream(), desk(task));
                    case COORDINATORS -> staff(task, Role.COORDINATOR);
                    case LAST_RESORT -> lastResort(task);
                };
        return called.distinct().toList();
    }

    /** Returns the first on duty who does not have the task; where nobody else is, the next tech of the depot. */
    private Optional<Staff> nextOnDuty(CareTask task, Instant now) {
        List<Staff> inOrder = new ArrayList<>(duty.onDuty(task.depot.code, task.depot.zoneId(), now));
        List<Staff> techs = Staff.at(task.depot.code, Role.TECH);
        int has = techs.stream().map(tech -> tech.username).toList().indexOf(task.assignee);
        inOrder.addAll(techs.subList(has + 1, techs.size()));
        inOrder.addAll(techs);
        return inOrder.stream()
                .filter(someone -> !someone.username.equals(task.assignee))
                .findFirst();
    }

    private Stream<Reader> desk(CareTask task) {
        return task.depot.deskMail == null
                ? staff(task, Role.DESK)
                : Stream.of(new Reader(task.depot.name, task.depot.deskMail, settings.language()));
    }

    /** Where no address is kept for it, every coordinator of the fleet. */
    private Stream<Reader> lastResort(CareTask task) {
        return settings.addressOf(task.depot.code)
                .map(address -> Stream.of(new Reader(address, address, settings.language())))
                .orElseGet(() -> Staff.inRole(Role.COORDINATOR).stream().map(Reader::of));
    }

    private static Stream<Reader> assigned(CareTask task) {
        return Optional.ofNullable(task.assignee).flatMap(Staff::activeByName).map(Reader::of).stream();
    }

    private static Stream<Reader> staff(CareTask task, Role role) {
        return Staff.at(task.depot.code, role).stream().map(Reader::of);
    }
}
