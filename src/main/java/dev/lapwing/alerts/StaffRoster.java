package dev.lapwing.alerts;

import dev.lapwing.care.Tech;
import dev.lapwing.care.TechRoster;
import dev.lapwing.fleet.Depot;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import dev.lapwing.people.rota.DutyRota;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;

/** Tells the care area which techs a depot has, and who of them is on duty. */
@ApplicationScoped
class StaffRoster implements TechRoster {
    @Inject
    DutyRota duty;

    @Override
    public List<Tech> techsOf(String depotCode) {
        return Staff.at(depotCode, Role.TECH).stream().map(StaffRoster::tech).toList();
    }

    @Override
    public List<Tech> onDuty(String depotCode, Instant at) {
        Depot depot = Depot.findById(depotCode);
        return duty.onDuty(depotCode, depot.zoneId(), at).stream()
                .filter(staff -> staff.role == Role.TECH)
                .map(StaffRoster::tech)
                .toList();
    }

    private static Tech tech(Staff staff) {
        return new Tech(staff.username, staff.fullName);
    }
}
