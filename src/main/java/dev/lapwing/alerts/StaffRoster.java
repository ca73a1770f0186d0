package dev.lapwing.alerts;

import dev.lapwing.care.Tech;
import dev.lapwing.care.TechRoster;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** Tells the care area which techs a depot has. */
@ApplicationScoped
class StaffRoster implements TechRoster {
    @Override
    public List<Tech> techsOf(String depotCode) {
        return Staff.at(depotCode, Role.TECH).stream()
                .map(staff -> new Tech(staff.username, staff.fullName))
                .toList();
    }
}
