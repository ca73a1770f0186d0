package dev.lapwing.people;

import dev.lapwing.web.PersonNames;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;

@ApplicationScoped
class StaffNames implements PersonNames {
    @Override
    @Transactional
    public String of(String username) {
        Staff staff = username == null ? null : Staff.findById(username);
        return staff == null ? username : staff.fullName;
    }
}
