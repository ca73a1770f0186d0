package dev.lapwing.alerts.hooks;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** As it is set up by default, the service cannot be made to call into the network it stands in. */
@QuarkusTest
class WebhookReachTest {
    @Inject
    FleetFixture fleet;

    @Inject
    Webhooks webhooks;

    @Inject
    Clock clock;

    @BeforeEach
    void people() {
        fleet.people();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://127.0.0.1:8080/", "https://localhost/", "https://169.254.169.254/latest", "https://10.0.0.1/",
                "https://[::1]/", "https://[fd00:ec2::254]/", "https://[::ffff:192.168.0.1]/", "https://2130706433/"
            })
    void suchATargetIsRefused(String address) {
        given().auth()
                .preemptive()
                .basic("coordinator", FleetFixture.PASSWORD)
                .contentType(ContentType.JSON)
                .body(Map.of("address", address))
                .post("/api/webhooks")
                .then()
                .statusCode(400)
                .body("errors[0].message", containsString("network"));
    }

    @Test
    void aTargetThatComesToLeadThereLaterIsNotCalled() {
        UUID target = QuarkusTransaction.requiringNew().call(() -> {
            var moved = new WebhookTarget();
            moved.id = UUID.randomUUID();
            moved.address = "https://10.0.0.5/hook";
            moved.kinds = "release";
            moved.depotCode = FleetFixture.DEPOT;
            moved.secret = "secret";
            moved.madeAt = clock.instant();
            moved.madeBy = "coordinator";
            moved.persist();
            var pace = new WebhookPace();
            pace.targetId = moved.id;
            pace.restsUntil = moved.madeAt;
            pace.persist();
            return moved.id;
        });
        UUID delivery = webhooks.test(target, "coordinator").id;

        List<WebhookAttempt> attempts = await().atMost(Duration.ofSeconds(20))
                .until(
                        () -> QuarkusTransaction.requiringNew().call(() -> WebhookAttempt.of(List.of(delivery))),
                        found -> !found.isEmpty());
        assertThat(attempts.get(0).status).isNull();
        assertThat(attempts.get(0).error).contains("leads into a private or reserved network");
        webhooks.remove(target);
    }
}
