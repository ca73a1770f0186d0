package dev.lapwing.alerts.application;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.equalTo;

import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.alerts.mail.MailFixture;
import dev.lapwing.alerts.mail.UnrulySmtpServer;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.time.Clock;
import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The outbox and a mail server that misbehaves. */
@QuarkusTest
@TestProfile(UnrulyServerTest.Smtp.class)
class UnrulyServerTest {
    private static final int PORT = freePort();

    /** Sends by SMTP and tries again soon. */
    public static class Smtp implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.ofEntries(
                    Map.entry("quarkus.datasource.jdbc.url", "jdbc:h2:mem:unruly"),
                    Map.entry("lapwing.mail.transport", "smtp"),
                    Map.entry("lapwing.mail.smtp.host", "127.0.0.1"),
                    Map.entry("lapwing.mail.smtp.port", String.valueOf(PORT)),
                    Map.entry("lapwing.mail.smtp.tls", "none"),
                    Map.entry("lapwing.mail.smtp.timeout", "1s"),
                    Map.entry("lapwing.mail.first-pause", "200ms"),
                    Map.entry("lapwing.mail.longest-pause", "400ms"),
                    Map.entry("lapwing.mail.attempts", "3"),
                    Map.entry("lapwing.mail.hourly", "2"),
                    Map.entry("lapwing.mail.tick", "1s"));
        }
    }

    @Inject
    Event<MailWritten> written;

    @Inject
    FleetFixture fleet;

    @Inject
    Clock clock;

    private UnrulySmtpServer server;

    @BeforeEach
    void start() throws IOException {
        fleet.people();
        server = new UnrulySmtpServer(PORT);
    }

    @AfterEach
    void stop() throws IOException {
        server.close();
        QuarkusTransaction.requiringNew().run(() -> OutboxMail.deleteAll());
    }

    @Test
    void aMailRefusedForGoodIsGivenUpAtOnceShownAndSentAgainOnDemand() {
        server.refuse("gone@haldenridge.example");
        UUID id = write("gone@haldenridge.example");

        OutboxMail mail = awaitState(id, MailState.GIVEN_UP);
        assertThat(mail.attempts).isEqualTo(1);
        assertThat(mail.lastError).contains("550 5.1.1 no such person");
        given().get("/q/health/well").then().statusCode(503).body("checks[0].data.'given up'", equalTo(1));

        server.refuse("nobody");
        given().auth()
                .preemptive()
                .basic("coordinator", FleetFixture.PASSWORD)
                .post("/api/outbox/" + id + "/resend")
                .then()
                .statusCode(200)
                .body("state", equalTo("waiting"));
        awaitState(id, MailState.SENT);
        given().get("/q/health/well").then().statusCode(200);
    }

    @Test
    void aMailPutOffIsTriedAgainUntilItIsGivenUp() {
        server.behave(UnrulySmtpServer.Manner.PUTS_OFF);

        OutboxMail mail = awaitState(write("tess@haldenridge.example"), MailState.GIVEN_UP);

        assertThat(mail.attempts).isEqualTo(3);
        assertThat(mail.lastError).contains("451 4.3.0 later please");
    }

    @Test
    void aMailWhoseTransferBrokeOffGoesLaterUnderTheSameMessageId() {
        server.behave(UnrulySmtpServer.Manner.DROPS_IN_TEXT);
        UUID id = write("tess@haldenridge.example");
        OutboxMail failed = awaitState(id, MailState.FAILED);

        server.behave(UnrulySmtpServer.Manner.TAKES);
        awaitState(id, MailState.SENT);

        assertThat(server.taken()).singleElement().asString().contains("Message-ID: " + failed.messageId);
    }

    @Test
    void oneBadMailDoesNotHoldUpTheOthers() {
        server.refuse("gone@haldenridge.example");
        UUID bad = write("gone@haldenridge.example");
        UUID noAddress = write("no address");
        UUID good = write("tess@haldenridge.example");

        awaitState(good, MailState.SENT);
        awaitState(bad, MailState.GIVEN_UP);
        assertThat(awaitState(noAddress, MailState.GIVEN_UP).lastError).contains("address is not valid");
    }

    @Test
    void mailsOutliveAnOutageLongerThanTheirAttempts() throws IOException {
        server.close();
        UUID id = write("tess@haldenridge.example");
        await().atMost(Duration.ofSeconds(30)).until(() -> mail(id).attempts > 4);
        assertThat(mail(id).state).isEqualTo(MailState.FAILED);
        assertThat(mail(id).refusals).isZero();

        server = new UnrulySmtpServer(PORT);
        awaitState(id, MailState.SENT);

        assertThat(server.taken()).hasSize(1);
    }

    @Test
    void aServerThatStallsIsLeftAndTriedAgain() {
        server.behave(UnrulySmtpServer.Manner.STALLS);
        UUID id = write("tess@haldenridge.example");
        awaitState(id, MailState.FAILED);

        server.behave(UnrulySmtpServer.Manner.TAKES);

        awaitState(id, MailState.SENT);
    }

    @Test
    void whoHadEnoughWithinTheHourIsLeftAloneUnlessARoofWasStruck() {
        for (int i = 0; i < 2; i++) {
            awaitState(write("tess@haldenridge.example", Urgency.SOON), MailState.SENT);
        }
        UUID third = write("tess@haldenridge.example", Urgency.SOON);
        UUID strike = write("tess@haldenridge.example", Urgency.AT_ONCE);
        UUID other = write("tom@haldenridge.example", Urgency.SOON);

        awaitState(strike, MailState.SENT);
        awaitState(other, MailState.SENT);
        assertThat(mail(third).state).isEqualTo(MailState.WAITING);
        given().get("/q/health/well").then().statusCode(200);
    }

    private UUID write(String recipient) {
        return write(recipient, Urgency.AT_ONCE);
    }

    private UUID write(String recipient, Urgency urgency) {
        return QuarkusTransaction.requiringNew().call(() -> {
            OutboxMail mail = MailFixture.anyMail();
            mail.recipient = recipient;
            mail.priority = urgency.priority();
            mail.createdAt = clock.instant();
            mail.nextAttemptAt = mail.createdAt;
            mail.persist();
            written.fire(new MailWritten());
            return mail.id;
        });
    }

    private static OutboxMail mail(UUID id) {
        return QuarkusTransaction.requiringNew().call(() -> OutboxMail.<OutboxMail>findById(id));
    }

    /** Waits for a state; the limit only keeps a failing test from hanging. */
    private static OutboxMail awaitState(UUID id, MailState state) {
        return await().atMost(Duration.ofSeconds(30)).until(() -> mail(id), mail -> mail.state == state);
    }

    private static int freePort() {
        try (var socket = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new IllegalStateException("no free port", e);
        }
    }
}
