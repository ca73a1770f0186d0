package dev.lapwing.alerts.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MailSettingsCheckTest {
    @Test
    void usualSettingsAreFine() {
        assertThat(MailSettingsCheck.problems(MailFixture.settings("Lapwing <lapwing@haldenridge.example>")))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Lapwing", "a@b.example, c@d.example", "Lapwing <lapwing>", "lapwing@", "@x.example"})
    void aSenderThatIsNoAddressIsNamed(String from) {
        assertThat(MailSettingsCheck.problems(MailFixture.settings(from)))
                .singleElement()
                .asString()
                .contains("lapwing.mail.from");
    }

    @Test
    void everythingWrongIsSaidAtOnce() {
        var smtp = new MailFixture.Server(
                " ", 0, Optional.of("sender"), Optional.empty(), MailSettings.Tls.NONE, Duration.ZERO);
        var settings = new MailFixture.Settings(
                MailSettings.Transport.SMTP,
                Path.of("target/mail"),
                "lapwing@haldenridge.example",
                smtp,
                Duration.ofMinutes(5),
                Duration.ofMinutes(1),
                Duration.ofSeconds(-1),
                0,
                Duration.ofSeconds(3),
                0,
                0,
                Duration.ofMinutes(15),
                Duration.ZERO);

        assertThat(String.join("\n", MailSettingsCheck.problems(settings)))
                .contains(
                        "lapwing.mail.attempts",
                        "lapwing.mail.senders",
                        "lapwing.mail.hourly",
                        "lapwing.mail.outage-pause",
                        "lapwing.mail.longest-pause",
                        "lapwing.mail.stale-after",
                        "lapwing.mail.smtp.host",
                        "lapwing.mail.smtp.port",
                        "lapwing.mail.smtp.timeout",
                        "lapwing.mail.smtp.password");
    }
}
