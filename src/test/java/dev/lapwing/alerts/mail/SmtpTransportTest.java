package dev.lapwing.alerts.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import dev.lapwing.alerts.domain.Failure;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SmtpTransportTest {
    private UnrulySmtpServer server;

    @BeforeEach
    void start() throws IOException {
        server = new UnrulySmtpServer(0);
    }

    @AfterEach
    void stop() throws IOException {
        server.close();
    }

    @Test
    void severalMailsGoOverOneRoute() throws MailNotSent {
        try (var route = new SmtpTransport(MailFixture.server(server.port())).route()) {
            route.send(MailFixture.builder().build(MailFixture.anyMail()));
            route.send(MailFixture.builder().build(MailFixture.anyMail()));
        }

        assertThat(server.taken()).hasSize(2);
    }

    /** Codes of 5xx are permanent, of 4xx passing: RFC 5321 section 4.2.1; 530 is RFC 4954 section 6. */
    @ParameterizedTest
    @CsvSource({
        "REFUSES, PERMANENT, no such person",
        "REFUSES_TEXT, PERMANENT, not that",
        "PUTS_OFF, PASSING, later please",
        "DROPS_IN_TEXT, PASSING, ''",
        "STALLS, UNREACHABLE, no connection to the mail server",
        "WANTS_SIGN_IN, UNREACHABLE, sign in first"
    })
    void theAnswerTellsWhetherItMayWorkLater(UnrulySmtpServer.Manner manner, Failure failure, String words) {
        server.behave(manner);

        var notSent = catchThrowableOfType(MailNotSent.class, () -> sendOne(server.port()));

        assertThat(notSent.failure()).isEqualTo(failure);
        assertThat(notSent).hasMessageContaining(words);
        assertThat(server.taken()).isEmpty();
    }

    @Test
    void aRefusedMailDoesNotHoldUpTheNextOnTheSameRoute() throws MailNotSent {
        server.refuse("gone@haldenridge.example");
        var gone = MailFixture.anyMail();
        gone.recipient = "gone@haldenridge.example";
        try (var route = new SmtpTransport(MailFixture.server(server.port())).route()) {
            route.send(MailFixture.builder().build(MailFixture.anyMail()));
            var notSent = catchThrowableOfType(
                    MailNotSent.class, () -> route.send(MailFixture.builder().build(gone)));
            route.send(MailFixture.builder().build(MailFixture.anyMail()));

            assertThat(notSent.failure()).isEqualTo(Failure.PERMANENT);
        }

        assertThat(server.recipients()).containsExactly("tess@haldenridge.example", "tess@haldenridge.example");
    }

    @Test
    void nobodyAtThePortIsAnOutage() throws IOException {
        int free;
        try (var socket = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            free = socket.getLocalPort();
        }

        var notSent = catchThrowableOfType(MailNotSent.class, () -> sendOne(free));

        assertThat(notSent.failure()).isEqualTo(Failure.UNREACHABLE);
    }

    @Test
    void aServerWithoutTlsGetsNothingWhenTlsIsDemanded() {
        var settings = new MailFixture.Server(
                "127.0.0.1",
                server.port(),
                Optional.empty(),
                Optional.empty(),
                MailSettings.Tls.STARTTLS,
                Duration.ofSeconds(2));

        var notSent = catchThrowableOfType(MailNotSent.class, () -> send(settings));

        assertThat(notSent.failure()).isEqualTo(Failure.UNREACHABLE);
        assertThat(notSent).hasMessageContaining("STARTTLS");
        assertThat(server.taken()).isEmpty();
    }

    @Test
    void signsInWithNameAndPassword() throws Exception {
        var greenMail = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
        greenMail.start();
        try {
            greenMail.setUser("tess@haldenridge.example", "sender", "secret");
            send(signIn(greenMail.getSmtp().getPort(), "secret"));
            var wrong = catchThrowableOfType(
                    MailNotSent.class, () -> send(signIn(greenMail.getSmtp().getPort(), "wrong")));

            assertThat(greenMail.getReceivedMessages()).hasSize(1);
            assertThat(wrong.failure()).isEqualTo(Failure.UNREACHABLE);
            assertThat(wrong.getMessage()).doesNotContain("wrong");
        } finally {
            greenMail.stop();
        }
    }

    private static MailFixture.Server signIn(int port, String password) {
        return new MailFixture.Server(
                "127.0.0.1",
                port,
                Optional.of("sender"),
                Optional.of(password),
                MailSettings.Tls.NONE,
                Duration.ofSeconds(2));
    }

    private static void sendOne(int port) throws MailNotSent {
        send(MailFixture.server(port));
    }

    private static void send(MailSettings.Smtp settings) throws MailNotSent {
        try (var route = new SmtpTransport(settings).route()) {
            route.send(MailFixture.builder().build(MailFixture.anyMail()));
        }
    }
}
