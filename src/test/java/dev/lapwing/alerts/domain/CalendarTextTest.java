package dev.lapwing.alerts.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** RFC 5545 sections 3.1 and 3.3.11; what is written is read back by ical4j, which is not our code. */
class CalendarTextTest {
    private static final Instant STAMP = Instant.parse("2026-05-03T14:05:00Z");

    @Property(tries = 300)
    void anyTextIsReadBackAndKeepsTheLineRules(@ForAll @StringLength(max = 200) String text) throws Exception {
        String written = CalendarText.of(about(text, Appointment.When.at(STAMP), Appointment.Method.REQUEST));

        assertThat(written.replace("\r\n", "")).doesNotContain("\r", "\n");
        for (String line : written.split("\r\n", -1)) {
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
            assertThat(StandardCharsets.UTF_8.newEncoder().canEncode(line)).isTrue();
        }
        VEvent event = read(written).<VEvent>getComponent("VEVENT").orElseThrow();
        // The reader leaves out white space at the ends.
        String read = value(event, "SUMMARY").strip();
        assertThat(read).isEqualTo(PlainText.lines(text).replace("\r\n", "\n").strip());
    }

    @Test
    void aBreakInATextCannotStartAProperty() throws Exception {
        String written = CalendarText.of(
                about("H-1\r\nATTENDEE:mailto:x@evil.example", Appointment.When.at(STAMP), Appointment.Method.REQUEST));

        assertThat(read(written).<VEvent>getComponent("VEVENT").orElseThrow().getProperties("ATTENDEE"))
                .hasSize(1);
        assertThat(written).contains("SUMMARY:H-1\\nATTENDEE:mailto:x@evil.example\r\n");
    }

    @ParameterizedTest
    @EnumSource(Appointment.Method.class)
    void icalFindsNothingWrong(Appointment.Method method) throws Exception {
        var day = Appointment.When.on(LocalDate.of(2026, 5, 4));
        for (Appointment.When when : new Appointment.When[] {day, Appointment.When.at(STAMP)}) {
            Calendar calendar = read(CalendarText.of(about("Unit H-104; wash, due", when, method)));

            assertThat(calendar.validate(true).getEntries()).isEmpty();
            assertThat(calendar.getMethod().getValue()).isEqualTo(method.name());
        }
    }

    @Test
    void datedWorkFillsItsDay() {
        assertThat(CalendarText.of(
                        about("wash", Appointment.When.on(LocalDate.of(2026, 12, 31)), Appointment.Method.REQUEST)))
                .contains("DTSTART;VALUE=DATE:20261231\r\n", "DTEND;VALUE=DATE:20270101\r\n");
    }

    private static Appointment about(String text, Appointment.When when, Appointment.Method method) {
        return new Appointment(
                "7@haldenridge.example",
                2,
                method,
                STAMP,
                when,
                text,
                text,
                text,
                "http://localhost:8080/tasks/7",
                new Appointment.Person("Lapwing", "lapwing@haldenridge.example"),
                new Appointment.Person("Tess \"T\" Alder", "tess@haldenridge.example"));
    }

    private static Calendar read(String text) throws IOException, ParserException {
        return new CalendarBuilder().build(new StringReader(text));
    }

    private static String value(VEvent event, String name) {
        return event.getProperty(name).orElseThrow().getValue();
    }
}
