package dev.lapwing.alerts.live;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.hasItem;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.fleet.Depot;
import dev.lapwing.platform.FleetFixture;
import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The stream as a listener hears it (format: WHATWG HTML, section "Server-sent events"). */
@QuarkusTest
class LiveStreamTest {
    @Inject
    FleetFixture fleet;

    @Inject
    LiveHub hub;

    @Inject
    LiveSettings settings;

    @Inject
    ObjectMapper json;

    @Inject
    Clock clock;

    @TestHTTPResource("/")
    URI root;

    private String unit;

    @BeforeEach
    void aFreshUnit() {
        unit = "L-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
    }

    @Test
    void aStrikeAndTheWayOfItsInspectionAreHeardInOrder() throws Exception {
        try (var reader = listen("", Map.of())) {
            assertThat(reader.contentType()).startsWith("text/event-stream");
            String task = strike();
            String tech = as("coordinator").get("/api/tasks/" + task).path("assignee");
            as(tech).post("/api/tasks/" + task + "/acceptance").then().statusCode(200);
            as(tech).post("/api/tasks/" + task + "/start").then().statusCode(200);

            assertThat(heardBy(reader, 4))
                    .extracting(EventReader.Heard::kind)
                    .containsExactly("hold", "strike", "accepted", "started");
            assertThat(reader.of(unit).subList(1, 4))
                    .extracting(EventReader.Heard::task)
                    .containsOnly(task);
            assertThat(reader.of(unit))
                    .extracting(heard -> Long.valueOf(heard.id()))
                    .isSorted();
        }
    }

    @Test
    void aHoldThatAnAnswerEndsIsHeardAsReleased() throws Exception {
        try (var reader = listen("", Map.of())) {
            String report = as("desk")
                    .body(Map.of(
                            "unit",
                            unit,
                            "returnedAt",
                            "2025-11-20T10:00:00-05:00",
                            "note",
                            "There was a loud bang somewhere on the way, not sure if we touched anything."))
                    .post("/api/return-reports")
                    .path("id");
            as("desk")
                    .body(Map.of("contact", false, "by", "Dean Marsh", "why", "it was a drawer"))
                    .post("/api/return-reports/" + report + "/answer")
                    .then()
                    .statusCode(200);

            assertThat(heardBy(reader, 2)).extracting(EventReader.Heard::kind).containsExactly("hold", "release");
        }
    }

    @Test
    void whoComesBackHearsWhatHappenedMeanwhileAndNothingTwice() throws Exception {
        String seen;
        try (var reader = listen("", Map.of())) {
            strike();
            heardBy(reader, 2);
            seen = reader.of(unit).get(1).id();
        }
        strike();
        try (var reader = listen("", Map.of("Last-Event-ID", seen))) {
            assertThat(heardBy(reader, 2)).extracting(EventReader.Heard::kind).containsExactly("hold", "strike");
        }
        try (var reader = listen("?after=" + seen, Map.of())) {
            assertThat(heardBy(reader, 2)).extracting(EventReader.Heard::kind).containsExactly("hold", "strike");
        }
    }

    @Test
    void whatIsWrittenFirstAndCommittedLastIsHeardAllTheSame() throws Exception {
        var written = new CountDownLatch(1);
        var mayEnd = new CountDownLatch(1);
        var other = Executors.newSingleThreadExecutor();
        String slow = unit + "-slow";
        try (var reader = listen("", Map.of())) {
            var first = other.submit(() -> QuarkusTransaction.requiringNew().run(() -> {
                note(slow);
                written.countDown();
                awaitUp(mayEnd);
            }));
            awaitUp(written);
            QuarkusTransaction.requiringNew().run(() -> note(unit));
            hub.noted(new LiveNoted());
            heardBy(reader, 1);
            mayEnd.countDown();
            first.get(10, TimeUnit.SECONDS);
            hub.noted(new LiveNoted());

            await().atMost(Duration.ofSeconds(10))
                    .untilAsserted(() -> assertThat(reader.of(slow)).hasSize(1));
            assertThat(Long.parseLong(reader.of(slow).get(0).id()))
                    .isGreaterThan(Long.parseLong(reader.of(unit).get(0).id()));
        } finally {
            mayEnd.countDown();
            other.shutdownNow();
        }
    }

    @Test
    void onlyTheDepotAskedForIsHeard() throws Exception {
        String elsewhere = "live-" + unit.substring(2).toLowerCase(java.util.Locale.ROOT);
        QuarkusTransaction.requiringNew().run(() -> {
            var depot = new Depot();
            depot.code = elsewhere;
            depot.name = "Elsewhere " + unit;
            depot.zone = "America/New_York";
            depot.seasonOpens = "04-01";
            depot.seasonCloses = "10-31";
            depot.persist();
        });
        try (var there = listen("?depot=" + elsewhere, Map.of());
                var here = listen("?depot=" + FleetFixture.DEPOT, Map.of())) {
            strike();
            heardBy(here, 2);
            assertThat(there.all()).isEmpty();
        }
    }

    @Test
    void whoHasSeenMoreThanThereIsIsToldToLookAnew() throws Exception {
        try (var reader = listen("", Map.of("Last-Event-ID", "999999999999"))) {
            await().atMost(Duration.ofSeconds(10))
                    .untilAsserted(() -> assertThat(reader.all())
                            .extracting(EventReader.Heard::kind)
                            .containsExactly("resync"));
            assertThat(Long.parseLong(reader.lastId())).isLessThan(999_999_999_999L);
        }
    }

    @Test
    void anotherNodeTellsItsListenersToo() throws Exception {
        var other = new LiveHub(settings, json, clock, new SimpleMeterRegistry());
        other.starting(null);
        try {
            long before = other.now();
            strike();
            await().atMost(Duration.ofSeconds(10))
                    .untilAsserted(() -> assertThat(other.now()).isGreaterThanOrEqualTo(before + 2));
        } finally {
            other.stopping(null);
        }
    }

    @Test
    void oldEventsAreRemovedAndTheirNumbersNeverGivenAgain() {
        strike();
        await().atMost(Duration.ofSeconds(10)).until(() -> countOf(unit) == 2);
        long last = QuarkusTransaction.requiringNew().call(LiveNumbering::last);

        QuarkusTransaction.requiringNew()
                .call(() -> LiveNumbering.trim(clock.instant().plusSeconds(1)));

        assertThat(countOf(unit)).isZero();
        strike();
        await().atMost(Duration.ofSeconds(10)).until(() -> countOf(unit) == 2);
        List<LiveEvent> found = QuarkusTransaction.requiringNew().call(() -> LiveEvent.after(last, 10));
        assertThat(found).hasSizeGreaterThanOrEqualTo(2).allMatch(event -> event.position > last);
    }

    @Test
    void wrongQuestionsAreRefusedAndStrangersHearNothing() {
        given().get("/api/live").then().statusCode(401);
        as("coordinator").get("/api/live?after=x").then().statusCode(400).body("errors.field", hasItem("after"));
        as("coordinator").get("/api/live?depot=nowhere").then().statusCode(400).body("errors.field", hasItem("depot"));
        as("coordinator")
                .header("Last-Event-ID", "-1")
                .get("/api/live")
                .then()
                .statusCode(400)
                .body("errors.field", hasItem("Last-Event-ID"));
    }

    private EventReader listen(String query, Map<String, String> headers) throws Exception {
        return new EventReader(root, query, headers);
    }

    private List<EventReader.Heard> heardBy(EventReader reader, int count) {
        return await().atMost(Duration.ofSeconds(20)).until(() -> reader.of(unit), heard -> heard.size() == count);
    }

    private String strike() {
        return as("desk")
                .body(Map.of(
                        "unit",
                        unit,
                        "returnedAt",
                        "2025-11-20T10:00:00-05:00",
                        "note",
                        "scraped the top along an oak limb at the site"))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .extract()
                .path("task.id");
    }

    private void note(String number) {
        var event = new LiveEvent();
        event.kind = LiveKind.HOLD;
        event.unitNumber = number;
        event.depotCode = FleetFixture.DEPOT;
        event.at = clock.instant();
        event.persistAndFlush();
    }

    private static long countOf(String number) {
        return QuarkusTransaction.requiringNew()
                .call(() -> LiveEvent.count("unitNumber = ?1 and position is not null", number));
    }

    private static void awaitUp(CountDownLatch latch) {
        try {
            if (!latch.await(10, TimeUnit.SECONDS)) {
                throw new AssertionError("the other side did not come");
            }
        } catch (InterruptedException e) {
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
