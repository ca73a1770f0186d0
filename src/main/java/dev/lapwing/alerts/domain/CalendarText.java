package dev.lapwing.alerts.domain;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/**
 * Writes calendar objects by RFC 5545.
 *
 * <p>Lines are folded by octets and never inside a character (section 3.1). Times are UTC, so no time zone has to be
 * carried along.
 */
public final class CalendarText {
    private static final int LONGEST_LINE = 75;
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);
    private static final DateTimeFormatter DAY = DateTimeFormatter.BASIC_ISO_DATE;

    private final StringBuilder text = new StringBuilder();

    private CalendarText() {}

    /** Returns the calendar object that asks for an appointment or withdraws it. */
    public static String of(Appointment appointment) {
        var calendar = new CalendarText();
        calendar.begin(appointment.method().name());
        calendar.event(appointment);
        calendar.line("END:VCALENDAR");
        return calendar.text.toString();
    }

    private void begin(String method) {
        line("BEGIN:VCALENDAR");
        line("VERSION:2.0");
        line("PRODID:-//Lapwing//Roof care//EN");
        line("METHOD:" + method);
    }

    private void event(Appointment appointment) {
        boolean cancelled = appointment.method() == Appointment.Method.CANCEL;
        line("BEGIN:VEVENT");
        line("UID:" + escaped(appointment.uid()));
        line("SEQUENCE:" + appointment.sequence());
        line("DTSTAMP:" + MOMENT.format(appointment.stamp()));
        when(appointment.when());
        line("SUMMARY:" + escaped(appointment.summary()));
        line("LOCATION:" + escaped(appointment.location()));
        line("DESCRIPTION:" + escaped(appointment.description()));
        line("URL:" + PlainText.oneLine(appointment.link()));
        line("ORGANIZER" + person(appointment.organizer()));
        line("ATTENDEE;ROLE=REQ-PARTICIPANT;PARTSTAT=NEEDS-ACTION;RSVP=FALSE" + person(appointment.attendee()));
        line("STATUS:" + (cancelled ? "CANCELLED" : "CONFIRMED"));
        line("TRANSP:TRANSPARENT");
        line("END:VEVENT");
    }

    /** Strike work takes an hour from when it is due; that only gives it a visible length. */
    private void when(Appointment.When when) {
        if (when.moment() != null) {
            Instant moment = when.moment();
            line("DTSTART:" + MOMENT.format(moment));
            line("DTEND:" + MOMENT.format(moment.plusSeconds(3600)));
        } else {
            LocalDate day = when.day();
            line("DTSTART;VALUE=DATE:" + DAY.format(day));
            line("DTEND;VALUE=DATE:" + DAY.format(day.plusDays(1)));
        }
    }

    private static String person(Appointment.Person person) {
        String name = PlainText.oneLine(person.name()).replace('"', '\'');
        return ";CN=\"" + name + "\":mailto:" + PlainText.oneLine(person.address());
    }

    /** Escapes a TEXT value (section 3.3.11). */
    static String escaped(String value) {
        return PlainText.lines(value)
                .replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r\n", "\\n");
    }

    private void line(String content) {
        int octets = 0;
        for (int point : content.codePoints().toArray()) {
            String character = Character.toString(point);
            int size = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > LONGEST_LINE) {
                text.append("\r\n ");
                octets = 1;
            }
            text.append(character);
            octets += size;
        }
        text.append("\r\n");
    }
}
