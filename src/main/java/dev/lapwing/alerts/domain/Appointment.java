package dev.lapwing.alerts.domain;

import java.time.Instant;
import java.time.LocalDate;

/**
 * Work of one task in one tech's calendar.
 *
 * @param uid the same for all that is ever said about the task's appointment
 * @param sequence grows with every change; a withdrawal counts as one
 * @param stamp when this was written
 * @param when when the work is due
 * @param link address of the task's page
 */
public record Appointment(
        String uid,
        int sequence,
        Method method,
        Instant stamp,
        When when,
        String summary,
        String location,
        String description,
        String link,
        Person organizer,
        Person attendee) {

    /** What the calendar is asked to do (RFC 5546 section 1.4). */
    public enum Method {
        REQUEST,
        CANCEL
    }

    /** Someone with a mail address. */
    public record Person(String name, String address) {}

    /** A moment at which strike work is due, or a day for dated work; exactly one is given. */
    public record When(Instant moment, LocalDate day) {
        public When {
            if ((moment == null) == (day == null)) {
                throw new IllegalArgumentException("either a moment or a day, were " + moment + " and " + day);
            }
        }

        public static When at(Instant moment) {
            return new When(moment, null);
        }

        public static When on(LocalDate day) {
            return new When(null, day);
        }
    }
}
