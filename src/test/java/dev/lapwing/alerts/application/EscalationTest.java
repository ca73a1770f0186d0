package dev.lapwing.alerts.application;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.Rung;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.TaskStep;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Who is called when nobody has a strike. The rungs and their times are the project's own defaults. */
@QuarkusTest
class EscalationTest {
    private static final String STRUCK = "scraped the top along an oak limb at the site";

    @Inject
    FleetFixture fleet;

    @Inject
    Escalating escalating;

    @Inject
    Clock clock;

    private String unit;

    @BeforeEach
    void aUnitAndNothingElseWaits() {
        unit = "E-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        nothingWaits();
    }

    @AfterEach
    void nothingWaits() {
        QuarkusTransaction.requiringNew()
                .run(() -> CareTask.update(
                        "state = ?1, openKey = null where kind = ?2",
                        TaskState.CALLED_OFF,
                        TaskKind.STRIKE_INSPECTION));
    }

    @Test
    void moreAndMorePeopleAreCalledWhileNobodyAccepts() {
        String task = strike(unit);
        String given = assignee(task);
        String other = given.equals("tech1") ? "tech2" : "tech1";
        Instant report = clock.instant();

        escalating.run(report.plus(Duration.ofMinutes(14)));
        assertThat(called(task)).isEmpty();
        escalating.run(report.plus(Duration.ofMinutes(16)));
        assertThat(called(task)).containsExactly(address("desk"), address(other));
        escalating.run(report.plus(Duration.ofMinutes(46)));
        assertThat(called(task)).containsExactly(address("coordinator"), address("desk"), address(other));
        escalating.run(report.plus(Duration.ofMinutes(121)));
        escalating.run(report.plus(Duration.ofMinutes(182)));

        assertThat(letters(task))
                .extracting(mail -> mail.subject)
                .anyMatch(subject -> subject.matches("Unit " + unit
                        + ": struck roof, inspection not accepted after 1[56] min; act before the next rain"))
                .anyMatch(subject -> subject.matches("Unit " + unit
                        + ": struck roof, inspection not accepted after 3 h [12] min; act before the next rain"));
        assertThat(letters(task)).allSatisfy(mail -> assertThat(mail.priority).isZero());
        as("coordinator")
                .get("/api/tasks/" + task + "/ladder")
                .then()
                .statusCode(200)
                .body("waiting", equalTo("not accepted"))
                .body(
                        "taken.rung",
                        contains(
                                "tech and coordinators",
                                "next on duty and desk",
                                "every coordinator",
                                "escalation address",
                                "escalation address"))
                .body("ahead.rung", contains("escalation address"));
    }

    @Test
    void acceptanceEndsItAndAMissingStartBeginsItAnew() {
        String task = strike(unit);
        String given = assignee(task);
        as(given).post("/api/tasks/" + task + "/acceptance").then().statusCode(200);
        Instant accepted = clock.instant();

        escalating.run(accepted.plus(Duration.ofMinutes(59)));
        assertThat(called(task)).isEmpty();
        escalating.run(accepted.plus(Duration.ofMinutes(61)));
        assertThat(called(task)).containsExactly(address("coordinator"), address(given));
        assertThat(letters(task))
                .allSatisfy(mail -> assertThat(mail.subject).contains("accepted but not started after 1 h"));

        as(given).post("/api/tasks/" + task + "/start").then().statusCode(200);
        escalating.run(accepted.plus(Duration.ofHours(9)));
        assertThat(called(task)).hasSize(2);
    }

    @Test
    void anyTechOfTheDepotTakesAStrikeThatNobodyAccepted() {
        String task = strike(unit);
        String other = assignee(task).equals("tech1") ? "tech2" : "tech1";

        as(other)
                .post("/api/tasks/" + task + "/acceptance")
                .then()
                .statusCode(200)
                .body("assignee", equalTo(other))
                .body("state", equalTo("accepted"));

        String third = other.equals("tech1") ? "tech2" : "tech1";
        as(third).post("/api/tasks/" + task + "/acceptance").then().statusCode(409);
        assertThat(mails(task, MailKind.HANDED_OVER))
                .extracting(mail -> mail.recipient)
                .containsExactly(address(third));
        assertThat(mails(task, MailKind.ASSIGNMENT)).isEmpty();
    }

    @Test
    void aServiceThatWasDownCallsEachRungOnce() {
        String task = strike(unit);
        Instant late = clock.instant().plus(Duration.ofHours(7));

        escalating.run(late);
        escalating.run(late.plusSeconds(1));

        as("coordinator").get("/api/tasks/" + task + "/ladder").then().body("taken.size()", equalTo(4));
        // One mail to each: of rungs that reach a person together the last says it all.
        assertThat(called(task)).doesNotHaveDuplicates().contains(address("coordinator"), address("desk"));
    }

    @Test
    void twoNodesAtOnceTakeEachStepOnce() throws Exception {
        List<String> tasks = List.of(strike(unit), strike(anotherUnit()), strike(anotherUnit()));
        Instant late = clock.instant().plus(Duration.ofMinutes(20));
        var together = new CountDownLatch(1);
        ExecutorService nodes = Executors.newFixedThreadPool(2);
        try {
            List<Future<?>> runs =
                    List.of(nodes.submit(() -> look(together, late)), nodes.submit(() -> look(together, late)));
            together.countDown();
            for (Future<?> run : runs) {
                run.get();
            }
        } finally {
            nodes.shutdownNow();
        }

        for (String task : tasks) {
            as("coordinator").get("/api/tasks/" + task + "/ladder").then().body("taken.size()", equalTo(2));
        }
        assertThat(escalationsTo(address("desk"), unit)).hasSize(1);
    }

    private Void look(CountDownLatch together, Instant late) throws InterruptedException {
        together.await();
        escalating.run(late);
        return null;
    }

    @Test
    void manyStrikesAtOnceReachAPersonInOneMail() {
        strike(unit);
        String second = anotherUnit();
        strike(second);

        escalating.run(clock.instant().plus(Duration.ofMinutes(46)));

        assertThat(escalationsTo(address("coordinator"), second))
                .singleElement()
                .satisfies(mail -> {
                    assertThat(mail.subject).isEqualTo("2 struck roofs wait; act before the next rain");
                    assertThat(mail.textBody).contains(unit).contains(second).contains("Falls kill");
                });
    }

    @Test
    void aDayWithFiveHundredStrikesCallsNobodyMoreThanTheLadderAllows() {
        Instant start = clock.instant();
        QuarkusTransaction.requiringNew().run(() -> {
            OutboxMail.delete("kind", MailKind.ESCALATION);
            IntStream.range(0, 500).forEach(each -> waitingTask(start));
        });

        for (int minute = 0; minute <= 24 * 60; minute += 15) {
            escalating.run(start.plus(Duration.ofMinutes(minute)));
        }

        Map<String, Long> perPerson =
                QuarkusTransaction.requiringNew()
                        .call(() -> OutboxMail.<OutboxMail>list("kind", MailKind.ESCALATION))
                        .stream()
                        .collect(Collectors.groupingBy(mail -> mail.recipient, TreeMap::new, Collectors.counting()));
        // All came at once: a person is told with the tech or coordinators, as next on duty, and as a coordinator once
        // each, and from the second hour on hourly: at 2, 3, ... 24 hours.
        assertThat(perPerson)
                .isNotEmpty()
                .allSatisfy((person, mails) -> assertThat(mails).as(person).isLessThanOrEqualTo(3 + 23));
        assertThat(perPerson).containsKeys(address("coordinator"), address("desk"));
        long steps = QuarkusTransaction.requiringNew().call(() -> (Long) OutboxMail.getEntityManager()
                .createQuery("select count(s) from LadderStep s where s.rung = :rung and s.turn = 0", Long.class)
                .setParameter("rung", Rung.COORDINATORS)
                .getSingleResult());
        assertThat(steps).isGreaterThanOrEqualTo(500);
    }

    @Test
    void onlyAStrikeHasALadder() {
        as("tech1").get("/api/tasks/" + UUID.randomUUID() + "/ladder").then().statusCode(404);
        as("tech1").get("/api/tasks/x/ladder").then().statusCode(404);
        given().get("/api/tasks/" + strike(unit) + "/ladder").then().statusCode(401);
    }

    @Test
    void whoIsOnDutyIsGivenTheStrike() {
        String turn = as("coordinator")
                .body(Map.of("weekday", 1, "starts", "00:00", "ends", "00:00", "username", "tech2"))
                .post("/api/depots/tarn-hollow/rota/turns")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        List<String> turns = IntStream.rangeClosed(2, 7)
                .mapToObj(weekday -> as("coordinator")
                        .body(Map.of("weekday", weekday, "starts", "00:00", "ends", "00:00", "username", "tech2"))
                        .post("/api/depots/tarn-hollow/rota/turns")
                        .then()
                        .statusCode(201)
                        .extract()
                        .<String>path("id"))
                .toList();
        try {
            as("tech1").get("/api/depots/tarn-hollow/rota").then().body("now.username", hasItem("tech2"));
            assertThat(assignee(strike(unit))).isEqualTo("tech2");
            assertThat(assignee(strike(anotherUnit()))).isEqualTo("tech2");
        } finally {
            remove(turn);
            turns.forEach(EscalationTest::remove);
        }
        as("tech1").get("/api/depots/tarn-hollow/rota").then().body("kept", equalTo(false));
    }

    private static void remove(String turn) {
        as("coordinator")
                .delete("/api/depots/tarn-hollow/rota/turns/" + turn)
                .then()
                .statusCode(204);
    }

    /** A strike inspection that was opened at an instant, without the reports that take long to file. */
    private void waitingTask(Instant at) {
        var task = new CareTask();
        task.id = UUID.randomUUID();
        task.unit = Unit.require(unit);
        task.depot = task.unit.depot;
        task.kind = TaskKind.STRIKE_INSPECTION;
        task.origin = TaskOrigin.STRIKE;
        task.why = "by hand";
        task.opens = task.depot.dateAt(at);
        task.due = task.opens;
        task.late = task.opens;
        task.dueAt = at;
        task.state = TaskState.ASSIGNED;
        task.assignee = "tech1";
        task.createdAt = at;
        task.createdBy = "desk";
        task.persist();
        var step = new TaskStep();
        step.id = UUID.randomUUID();
        step.taskId = task.id;
        step.at = at;
        step.who = "desk";
        step.state = TaskState.ASSIGNED;
        step.words = "by hand";
        step.persist();
    }

    private String anotherUnit() {
        String number = "E-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(number);
        return number;
    }

    private static String address(String username) {
        return username + "@haldenridge.example";
    }

    private static String assignee(String task) {
        return as("coordinator").get("/api/tasks/" + task).then().extract().path("assignee");
    }

    private static List<String> called(String task) {
        return letters(task).stream().map(mail -> mail.recipient).sorted().toList();
    }

    private static List<OutboxMail> letters(String task) {
        return mails(task, MailKind.ESCALATION);
    }

    private static List<OutboxMail> mails(String task, MailKind kind) {
        return QuarkusTransaction.requiringNew()
                .call(() -> OutboxMail.list("taskId = ?1 and kind = ?2", UUID.fromString(task), kind));
    }

    private static List<OutboxMail> escalationsTo(String recipient, String unit) {
        return QuarkusTransaction.requiringNew()
                .call(() -> OutboxMail.<OutboxMail>list("recipient = ?1 and kind = ?2", recipient, MailKind.ESCALATION))
                .stream()
                .filter(mail -> mail.textBody.contains(unit))
                .toList();
    }

    private static String strike(String unit) {
        return as("desk")
                .body(Map.of("unit", unit, "returnedAt", "2025-11-20T10:00:00-05:00", "note", STRUCK))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .extract()
                .path("task.id");
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
