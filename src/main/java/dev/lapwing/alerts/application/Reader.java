package dev.lapwing.alerts.application;

import dev.lapwing.people.Staff;

/**
 * Someone who is written to.
 *
 * @param language two-letter code; English where we have no words in it
 */
record Reader(String name, String mail, String language) {
    static Reader of(Staff staff) {
        return new Reader(staff.fullName, staff.mail, staff.language);
    }
}
