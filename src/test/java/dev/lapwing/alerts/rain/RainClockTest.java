package dev.lapwing.alerts.rain;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import com.sun.net.httpserver.HttpServer;
import dev.lapwing.care.RainOutlook;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.arc.ClientProxy;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.configuration.DurationConverter;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import io.smallrye.config.SmallRyeConfigBuilder;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Forecasts from a feed that answers over HTTP, fails, stalls and says what is fresh; and those entered by hand. */
@QuarkusTest
class RainClockTest {
    private static final Instant NOW = Instant.parse("2026-11-25T09:00:00Z");

    @Inject
    FleetFixture fleet;

    @Inject
    FetchingForecasts fetching;

    @Inject
    RainFeed feed;

    @Inject
    RainClock rain;

    @Inject
    Clock clock;

    private RainSettings before;
    private HttpServer server;
    private final List<String> askedSince = new ArrayList<>();
    private int status = 200;
    private String body = "";
    private Map<String, String> headers = Map.of();
    private Duration stall = Duration.ZERO;

    @BeforeEach
    void aFeed() throws IOException {
        fleet.people();
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/" + FleetFixture.DEPOT, exchange -> {
            askedSince.add(String.valueOf(exchange.getRequestHeaders().getFirst("If-Modified-Since")));
            try {
                Thread.sleep(stall.toMillis());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            headers.forEach(exchange.getResponseHeaders()::set);
            byte[] answer = body.getBytes(StandardCharsets.UTF_8);
            exchange.sendResponseHeaders(status, status == 304 ? -1 : answer.length);
            if (status != 304) {
                exchange.getResponseBody().write(answer);
            }
            exchange.close();
        });
        server.start();
        before = ClientProxy.unwrap(rain).settings;
        use(Map.of(
                "lapwing.rain.feed", "http://localhost:" + server.getAddress().getPort() + "/{depot}"));
        forget();
    }

    @AfterEach
    void noFeed() {
        server.stop(0);
        ClientProxy.unwrap(rain).settings = before;
        ClientProxy.unwrap(feed).settings = before;
        ClientProxy.unwrap(fetching).settings = before;
        forget();
    }

    private static void forget() {
        QuarkusTransaction.requiringNew().run(() -> {
            StoredForecast.deleteAll();
            RainByHand.deleteAll();
        });
    }

    private void use(Map<String, String> given) {
        var all = new HashMap<>(Map.of("lapwing.rain.timeout", "1s"));
        all.putAll(given);
        RainSettings settings = new SmallRyeConfigBuilder()
                .withConverter(Duration.class, 200, new DurationConverter())
                .withMapping(RainSettings.class)
                .withDefaultValues(all)
                .build()
                .getConfigMapping(RainSettings.class);
        ClientProxy.unwrap(rain).settings = settings;
        ClientProxy.unwrap(feed).settings = settings;
        ClientProxy.unwrap(fetching).settings = settings;
    }

    private static String forecast(Instant rainAt) {
        return "{\"issued\": \"" + NOW.minusSeconds(600) + "\", \"spells\": [{\"from\": \"" + NOW.minusSeconds(3600)
                + "\", \"hours\": 1, \"chance\": 0}, {\"from\": \"" + rainAt + "\", \"hours\": 2, \"chance\": 0.8}]}";
    }

    private RainOutlook.Outlook outlook(Instant now) {
        return rain.all(now).get(FleetFixture.DEPOT);
    }

    @Test
    void theFeedTellsWhenRainIsLikely() {
        body = forecast(NOW.plus(Duration.ofHours(3)));

        fetching.run(NOW);

        assertThat(outlook(NOW))
                .isEqualTo(new RainOutlook.Outlook(NOW.plus(Duration.ofHours(3)), NOW.plus(Duration.ofHours(5))));
        assertThat(rain.near(outlook(NOW), NOW)).isTrue();
        assertThat(outlook(NOW.plus(Duration.ofHours(6))))
                .as("reaches no further")
                .isNull();
    }

    @Test
    void itIsAskedAgainOnlyWhenItsAnswerIsNoLongerFresh() {
        body = forecast(NOW.plus(Duration.ofHours(3)));
        headers = Map.of("Last-Modified", "Wed, 25 Nov 2026 08:50:00 GMT", "Expires", "Wed, 25 Nov 2026 10:00:00 GMT");
        fetching.run(NOW);
        fetching.run(NOW.plus(Duration.ofMinutes(59)));
        assertThat(askedSince).containsExactly("null");

        status = 304;
        fetching.run(NOW.plus(Duration.ofMinutes(60)));

        assertThat(askedSince).containsExactly("null", "Wed, 25 Nov 2026 08:50:00 GMT");
        assertThat(outlook(NOW.plus(Duration.ofMinutes(60)))).isNotNull();
    }

    @Test
    void aFeedThatFailsIsAskedEverMoreRarelyAndTheLastForecastCountsUntilItIsTooOld() {
        body = forecast(NOW.plus(Duration.ofHours(30)));
        fetching.run(NOW);
        status = 500;
        for (int minute = 1; minute <= 24 * 60; minute++) {
            fetching.run(NOW.plus(Duration.ofMinutes(minute)));
        }

        // After 30 min, then 30, 60, 120, 240 (the longest), 240, ... minutes later.
        assertThat(askedSince).hasSizeBetween(8, 11);
        assertThat(outlook(NOW.plus(Duration.ofHours(11)))).isNotNull();
        assertThat(outlook(NOW.plus(Duration.ofHours(13))))
                .as("made too long ago")
                .isNull();
        as("coordinator")
                .get("/api/rain")
                .then()
                .statusCode(200)
                .body(
                        "items.find { it.depot == '" + FleetFixture.DEPOT + "' }.problem",
                        containsString("answered 500"));
    }

    @Test
    void aFeedThatStallsIsGivenUpInTime() {
        body = forecast(NOW);
        stall = Duration.ofSeconds(3);

        fetching.run(NOW);

        assertThat(outlook(NOW)).isNull();
        assertThat(problem()).contains("timed out");
    }

    @Test
    void whatIsNoForecastIsNoForecast() {
        body = "<html>busy</html>";
        fetching.run(NOW);
        assertThat(outlook(NOW)).isNull();
        assertThat(problem()).contains("no JSON");

        body = forecast(NOW.plus(Duration.ofHours(1)));
        fetching.run(NOW.plus(Duration.ofMinutes(31)));
        assertThat(outlook(NOW.plus(Duration.ofMinutes(31)))).isNotNull();
    }

    @Test
    void aDepotWithoutAPlaceIsNotAskedFor() {
        use(Map.of(
                "lapwing.rain.feed",
                "http://localhost:" + server.getAddress().getPort() + "/tarn-hollow?lat={latitude}&lon={longitude}"));
        fetching.run(NOW);
        assertThat(askedSince).isEmpty();

        use(Map.of(
                "lapwing.rain.feed",
                "http://localhost:1/?lat={latitude}&lon={longitude}",
                "lapwing.rain.depot.tarn-hollow.latitude",
                "44.123456",
                "lapwing.rain.depot.tarn-hollow.longitude",
                "-71.5"));
        assertThat(feed.addressOf("tarn-hollow")).contains("http://localhost:1/?lat=44.1235&lon=-71.5000");
    }

    @Test
    void theCoordinatorEntersWhatNoFeedKnows() {
        Instant now = clock.instant();
        String at = now.plus(Duration.ofHours(2)).toString();

        as("coordinator")
                .body(Map.of("rainAt", at, "holdsHours", 6))
                .put("/api/rain/" + FleetFixture.DEPOT)
                .then()
                .statusCode(200)
                .body("source", equalTo("entered by hand"))
                .body("enteredBy", equalTo("Cora Vale"))
                .body("near", equalTo(true));
        assertThat(outlook(now.plus(Duration.ofHours(3))).rainAt())
                .as("it may have begun")
                .isEqualTo(now.plus(Duration.ofHours(3)));
        assertThat(outlook(now.plus(Duration.ofHours(7)))).isNull();

        as("coordinator").delete("/api/rain/" + FleetFixture.DEPOT).then().statusCode(204);
        assertThat(outlook(now)).isNull();
    }

    @Test
    void wrongEntriesAreRefusedWithTheFieldNamed() {
        for (String wrong : List.of("soon", "2020-01-01T10:00:00Z", "2099-01-01T10:00")) {
            as("coordinator")
                    .body(Map.of("rainAt", wrong))
                    .put("/api/rain/" + FleetFixture.DEPOT)
                    .then()
                    .statusCode(400)
                    .body("errors.field", hasItem("rainAt"));
        }
        as("coordinator")
                .body(Map.of("holdsHours", 0))
                .put("/api/rain/" + FleetFixture.DEPOT)
                .then()
                .statusCode(400)
                .body("errors.field", hasItem("holdsHours"));
        as("coordinator").body(Map.of()).put("/api/rain/nowhere").then().statusCode(404);
        as("tech1").body(Map.of()).put("/api/rain/" + FleetFixture.DEPOT).then().statusCode(403);
        assertThat(outlook(clock.instant())).isNull();
    }

    private static String problem() {
        return QuarkusTransaction.requiringNew().call(() -> StoredForecast.of(FleetFixture.DEPOT, NOW).problem);
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
