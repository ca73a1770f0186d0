package dev.lapwing.alerts.hooks;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import dev.lapwing.alerts.hooks.UnrulyHttpServer.Call;
import dev.lapwing.alerts.hooks.UnrulyHttpServer.Manner;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Webhooks and a server that misbehaves. */
@QuarkusTest
@TestProfile(WebhooksTest.OwnNetwork.class)
class WebhooksTest {
    /** Lets targets lie on this machine and tries again soon. */
    public static class OwnNetwork implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of(
                    "quarkus.datasource.jdbc.url", "jdbc:h2:mem:webhooks",
                    "lapwing.webhooks.allow-private", "true",
                    "lapwing.webhooks.timeout", "1s",
                    "lapwing.webhooks.first-pause", "200ms",
                    "lapwing.webhooks.longest-pause", "400ms",
                    "lapwing.webhooks.attempts", "3",
                    "lapwing.webhooks.tick", "1s");
        }
    }

    @Inject
    FleetFixture fleet;

    private UnrulyHttpServer server;
    private String unit;
    private String id;
    private String secret;

    @BeforeEach
    void aTarget() throws IOException {
        unit = "W-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        server = new UnrulyHttpServer();
        JsonPath made = add(Map.of("address", server.address()));
        id = made.getString("id");
        secret = made.getString("secret");
    }

    @AfterEach
    void remove() {
        for (String target : as("coordinator").get("/api/webhooks").jsonPath().getList("items.id", String.class)) {
            as("coordinator").delete("/api/webhooks/" + target).then().statusCode(204);
        }
        server.close();
    }

    @Test
    void aStrikeIsToldAsAHoldAndAStrikeEachSigned() throws Exception {
        String task = strike();

        List<Call> calls = awaitCalls(2);
        assertThat(calls).extracting(Call::event).containsExactly("hold", "strike");
        for (Call call : calls) {
            assertThat(call.signature()).isEqualTo(independently(secret, call.timestamp() + "." + call.body()));
            JsonPath body = JsonPath.from(call.body());
            assertThat(body.getString("id")).isEqualTo(call.delivery());
            assertThat(body.getString("event")).isEqualTo(call.event());
            assertThat(body.getString("unit")).isEqualTo(unit);
            assertThat(body.getString("depot")).isEqualTo(FleetFixture.DEPOT);
            assertThat(body.getString("cause")).isEqualTo("strike");
            assertThat(body.getString("words")).contains("oak limb");
        }
        assertThat(JsonPath.from(calls.get(1).body()).getString("task")).isEqualTo(task);
        assertThat(JsonPath.from(calls.get(1).body()).getString("link")).endsWith("/tasks/" + task);
    }

    @Test
    void aReleaseIsToldToThoseWhoAskedForReleasesOnly() throws Exception {
        try (var other = new UnrulyHttpServer()) {
            add(Map.of("address", other.address(), "events", List.of("release")));
            String report = as("desk")
                    .body(Map.of(
                            "unit", unit,
                            "returnedAt", "2025-11-20T10:00:00-05:00",
                            "note", "There was a loud bang somewhere on the way, not sure if we touched anything."))
                    .post("/api/return-reports")
                    .path("id");
            as("desk")
                    .body(Map.of("contact", false, "by", "Dean Marsh", "why", "it was a drawer"))
                    .post("/api/return-reports/" + report + "/answer")
                    .then()
                    .statusCode(200);

            awaitCalls(2);
            await().atMost(Duration.ofSeconds(20)).until(() -> other.calls().size() == 1);
            assertThat(other.calls().get(0).event()).isEqualTo("release");
            assertThat(other.calls().get(0).body()).contains("it was a drawer").contains("Dean Marsh");
        }
    }

    @Test
    void aServerThatFailsIsTriedAgainUnderTheSameIdWithAFreshSignature() {
        server.behave(Manner.FAILS);
        test();
        awaitCalls(1);
        server.behave(Manner.TAKES);

        JsonPath delivery = awaitState("sent");
        assertThat(server.calls()).extracting(Call::delivery).containsOnly(delivery.getString("items[0].id"));
        assertThat(delivery.getList("items[0].attempts.status", Integer.class))
                .startsWith(500)
                .endsWith(204);
        assertThat(delivery.getString("items[0].attempts[0].error")).isEqualTo("it answered 500");
        assertThat(server.calls())
                .allSatisfy(call -> assertThat(call.signature())
                        .isEqualTo(independently(secret, call.timestamp() + "." + call.body())));
    }

    @Test
    void aServerThatKeepsFailingIsGivenUpAndSentAgainOnDemand() {
        server.behave(Manner.FAILS);
        test();

        JsonPath given = awaitState("given-up");
        assertThat(given.getList("items[0].attempts")).hasSize(3);
        server.behave(Manner.TAKES);
        as("coordinator")
                .post("/api/webhooks/" + id + "/deliveries/" + given.getString("items[0].id") + "/resend")
                .then()
                .statusCode(200)
                .body("state", equalTo("waiting"));
        awaitState("sent");
    }

    @Test
    void aRedirectIsNotFollowed() {
        server.behave(Manner.REDIRECTS);
        test();

        JsonPath given = awaitState("given-up");
        assertThat(given.getList("items[0].attempts.status", Integer.class)).containsOnly(302);
        assertThat(server.calls()).extracting(Call::path).containsOnly("/hook");
    }

    @Test
    void aServerThatStallsCostsItsTimeAndHoldsUpNobodyElse() throws Exception {
        server.behave(Manner.STALLS);
        try (var other = new UnrulyHttpServer()) {
            String otherId = add(Map.of("address", other.address())).getString("id");
            for (int i = 0; i < 5; i++) {
                test();
            }
            as("coordinator").post("/api/webhooks/" + otherId + "/test").then().statusCode(202);
            await().atMost(Duration.ofSeconds(20)).until(() -> other.calls().size() == 1);
        }
        JsonPath log = awaitState("given-up");
        assertThat(log.getList("items[0].attempts.status")).containsOnlyNulls();
        assertThat(log.getList("items[0].attempts.millis", Long.class)).allMatch(millis -> millis >= 900);
    }

    @Test
    void aServerThatIsGoneForGoodIsGivenUpAtOnce() {
        server.behave(Manner.IS_GONE);
        test();

        assertThat(awaitState("given-up").getList("items[0].attempts")).hasSize(1);
    }

    @Test
    void nobodyThereIsNoted() {
        server.close();
        test();

        JsonPath log = awaitState("given-up");
        assertThat(log.getList("items[0].attempts.status")).containsOnlyNulls();
        assertThat(log.getList("items[0].attempts.error", String.class)).allMatch(error -> !error.isBlank());
    }

    @Test
    void whatHappensDuringAPauseGoesWhenItEnds() {
        as("coordinator")
                .post("/api/webhooks/" + id + "/pause")
                .then()
                .statusCode(200)
                .body("state", equalTo("paused"));
        as("coordinator").post("/api/webhooks/" + id + "/test").then().statusCode(409);
        strike();
        assertThat(log().getList("items.state", String.class)).containsOnly("waiting");
        assertThat(server.calls()).isEmpty();

        as("coordinator").post("/api/webhooks/" + id + "/resume").then().statusCode(200);
        assertThat(awaitCalls(2)).extracting(Call::event).containsExactlyInAnyOrder("hold", "strike");
    }

    @Test
    void aRemovedTargetHearsNothingMore() {
        as("coordinator").delete("/api/webhooks/" + id).then().statusCode(204);
        strike();

        as("coordinator").get("/api/webhooks").then().body("items.id", not(hasItem(id)));
        as("coordinator").get("/api/webhooks/" + id + "/deliveries").then().statusCode(404);
        as("coordinator").post("/api/webhooks/" + id + "/test").then().statusCode(404);
        assertThat(server.calls()).isEmpty();
    }

    @Test
    void theSecretIsShownOnceOnly() {
        assertThat(secret).hasSizeGreaterThanOrEqualTo(43);
        as("coordinator")
                .get("/api/webhooks")
                .then()
                .statusCode(200)
                .body("items.find { it.id == '" + id + "' }.secret", nullValue())
                .body("items.find { it.id == '" + id + "' }.events", equalTo(List.of("strike", "hold", "release")));
    }

    @Test
    void wrongTargetsAreRefusedWithTheFieldNamed() {
        refused(Map.of("address", "ftp://a.example/"), "address");
        refused(Map.of("address", "https://no-such-host.invalid/"), "address");
        refused(Map.of("address", "http://192.168.0.1/"), "address");
        refused(Map.of("address", server.address(), "events", List.of("wash")), "events");
        refused(Map.of("address", server.address(), "events", List.of("test")), "events");
        refused(Map.of("address", server.address(), "depot", "nowhere"), "depot");
        refused(Map.of(), "address");
        as("coordinator").get("/api/webhooks/x/deliveries").then().statusCode(404);
        as("coordinator")
                .get("/api/webhooks/" + id + "/deliveries?after=x")
                .then()
                .statusCode(400);
    }

    @Test
    void onlyCoordinatorsHaveToDoWithIt() {
        as("tech1").get("/api/webhooks").then().statusCode(403);
        as("desk").post("/api/webhooks/" + id + "/test").then().statusCode(403);
        given().get("/api/webhooks").then().statusCode(401);
    }

    private static void refused(Map<String, Object> wanted, String field) {
        as("coordinator")
                .body(wanted)
                .post("/api/webhooks")
                .then()
                .statusCode(400)
                .body("errors.field", hasItem(field));
    }

    private static JsonPath add(Map<String, Object> wanted) {
        return as("coordinator")
                .body(wanted)
                .post("/api/webhooks")
                .then()
                .statusCode(201)
                .extract()
                .jsonPath();
    }

    private void test() {
        as("coordinator").post("/api/webhooks/" + id + "/test").then().statusCode(202);
    }

    private String strike() {
        return as("desk")
                .body(Map.of(
                        "unit", unit,
                        "returnedAt", "2025-11-20T10:00:00-05:00",
                        "note", "scraped the top along an oak limb at the site"))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .extract()
                .path("task.id");
    }

    private JsonPath log() {
        return as("coordinator")
                .get("/api/webhooks/" + id + "/deliveries")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    private List<Call> awaitCalls(int count) {
        return await().atMost(Duration.ofSeconds(20)).until(() -> server.calls(), calls -> calls.size() >= count);
    }

    /** Waits until the newest delivery has a state; the limit only keeps a failing test from hanging. */
    private JsonPath awaitState(String state) {
        return await().atMost(Duration.ofSeconds(60))
                .until(this::log, log -> state.equals(log.getString("items[0].state")));
    }

    /** The signature as a receiver computes it that knows only the documentation. */
    private static String independently(String key, String text) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key.getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
            return HexFormat.of().formatHex(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
        } catch (java.security.GeneralSecurityException e) {
            throw new AssertionError(e);
        }
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
