package dev.lapwing.demo;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.oneOf;

import dev.lapwing.care.domain.HoldCause;
import dev.lapwing.care.domain.HoldState;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.fleet.Depot;
import dev.lapwing.fleet.Footing;
import dev.lapwing.fleet.Storage;
import dev.lapwing.fleet.Surface;
import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitKind;
import dev.lapwing.fleet.Vin;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import dev.lapwing.returns.storage.ReturnReport;
import dev.lapwing.use.storage.Rental;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The invented fleet holds something of everything, and the service works on it. */
@QuarkusTest
@TestProfile(DemoProfile.class)
@Transactional
class DemoFleetTest {
    private static final String FRESH_NOTE = "scraped the top along an oak limb at the site";

    @Inject
    Clock clock;

    @Inject
    LoadingDemo loading;

    @Inject
    DemoStart start;

    @Inject
    EntityManager database;

    @Test
    void threeDepotsLieInThreeZonesOneOfThemWithoutDaylightSaving() {
        List<ZoneId> zones = Depot.<Depot>listAll().stream().map(Depot::zoneId).toList();
        assertThat(zones).hasSize(3).doesNotHaveDuplicates();
        assertThat(zones)
                .filteredOn(zone -> zone.getRules().nextTransition(clock.instant()) == null)
                .hasSize(1);
    }

    @Test
    void everyDepotHasOneCoordinatorADeskAndTwoTechs() {
        for (Depot depot : Depot.<Depot>listAll()) {
            assertThat(Staff.at(depot.code, Role.COORDINATOR)).hasSize(1);
            assertThat(Staff.at(depot.code, Role.DESK)).hasSize(1);
            assertThat(Staff.at(depot.code, Role.TECH)).hasSize(2);
        }
        assertThat(Staff.<Staff>listAll())
                .allSatisfy(staff -> assertThat(staff.mail).endsWith("@haldenridge.example"))
                .extracting(staff -> staff.language)
                .contains("en", "es", "fr");
    }

    @Test
    void sixtyUnitsAreOfEveryKindSurfaceFootingAndStorage() {
        List<Unit> units = Unit.listAll();
        assertThat(units).hasSize(60);
        assertThat(units).extracting(unit -> unit.kind).contains(UnitKind.values());
        assertThat(units).extracting(unit -> unit.roof.surface).contains(Surface.values());
        assertThat(units).extracting(unit -> unit.roof.footing).contains(Footing.values());
        assertThat(units).extracting(unit -> unit.storage).contains(Storage.values());
        assertThat(units)
                .anySatisfy(unit -> assertThat(unit.roof.confirmedBy).isNotNull())
                .anySatisfy(unit -> assertThat(unit.roof.confirmedBy).isNull());
    }

    @Test
    void allVinsButOneHaveTheirCheckDigitAndAFewUnitsHaveNoVin() {
        List<Unit> units = Unit.listAll();
        assertThat(units).filteredOn(unit -> unit.vin == null).hasSize(3);
        assertThat(units)
                .filteredOn(unit -> unit.vin != null && !Vin.isValid(unit.vin))
                .hasSize(1);
    }

    @Test
    void aYearOfRentalsLeavesSomeUnitsOutAndSomeInTheYard() {
        Instant now = clock.instant();
        List<Rental> rentals = Rental.listAll();
        assertThat(rentals).anySatisfy(rental -> assertThat(rental.outAt).isBefore(now.minus(Duration.ofDays(355))));
        long out = rentals.stream()
                .filter(rental -> !rental.outAt.isAfter(now) && (rental.backAt == null || rental.backAt.isAfter(now)))
                .map(rental -> rental.unit.id)
                .distinct()
                .count();
        assertThat(out).isBetween(8L, 45L);
        assertThat(rentals).filteredOn(rental -> rental.backAt == null).isNotEmpty();
    }

    @Test
    void workIsInEveryState() {
        Map<TaskState, Long> tasks = CareTask.<CareTask>listAll().stream()
                .collect(Collectors.groupingBy(task -> task.state, Collectors.counting()));
        assertThat(tasks).containsOnlyKeys(TaskState.values());
        assertThat(tasks.get(TaskState.DONE)).isGreaterThan(100);
    }

    @Test
    void nothingOfThePastLiesAhead() {
        Instant now = clock.instant();
        Object steps = database.createQuery("select count(s) from TaskStep s where s.at > ?1")
                .setParameter(1, now)
                .getSingleResult();
        assertThat(steps).isEqualTo(0L);
        assertThat(CareTask.count("doneAt > ?1", now)).isZero();
        assertThat(ReturnReport.count("filedAt > ?1", now)).isZero();
    }

    @Test
    void oneStrikeAndOneQuestionHoldTheirUnits() {
        assertThat(Hold.<Hold>list("state = ?1 and words <> ?2", HoldState.OPEN, FRESH_NOTE))
                .extracting(hold -> hold.cause)
                .containsExactlyInAnyOrder(HoldCause.STRIKE, HoldCause.QUESTION);
        assertThat(Hold.count("state = ?1 and cause = ?2", HoldState.RELEASED, HoldCause.STRIKE))
                .isEqualTo(8);
    }

    @Test
    void theReaderUnderstandsEveryStoryAsItIsMeant() {
        Map<String, String> verdicts = Map.of("strike", "contact", "question", "unclear", "nothing", "none");
        for (DemoFiles.Row story : new DemoFiles(Path.of("shared/demo")).stories()) {
            ReturnReport report = ReturnReport.find("note", story.text("note")).singleResult();
            assertThat(report.verdict.word()).as(report.note).isEqualTo(verdicts.get(story.text("tells")));
        }
        assertThat(ReturnReport.<ReturnReport>listAll().stream()
                        .map(report -> report.readingLanguage)
                        .distinct())
                .containsExactlyInAnyOrder("en", "es", "fr");
    }

    @Test
    void noMailWaitsForHistory() {
        assertThat(database.createNativeQuery("select count(*) from outbox_mail where created_at < :now", Long.class)
                        .setParameter("now", clock.instant().minus(Duration.ofHours(1)))
                        .getSingleResult())
                .isEqualTo(0L);
    }

    @Test
    void loadingAgainAddsNothing() {
        assertThat(loading.loadIfEmpty()).isTrue();
        assertThat(Unit.count()).isEqualTo(60);
    }

    @Test
    void aFreshReportLeadsToAHoldAndAnAssignedInspectionAtEveryDepot() {
        List<String> numbers = Stream.of("cinder-flats", "saltmarsh-point", "tarn-hollow")
                .map(code -> Unit.after(null, code, 1).get(0).number)
                .toList();
        for (String number : numbers) {
            given().auth()
                    .preemptive()
                    .basic("desk", "halden")
                    .contentType(ContentType.JSON)
                    .body(Map.of(
                            "unit",
                            number,
                            "returnedAt",
                            clock.instant().minusSeconds(600).toString(),
                            "note",
                            "scraped the top along an oak limb at the site"))
                    .post("/api/return-reports")
                    .then()
                    .statusCode(201)
                    .body("reading.verdict", equalTo("contact"))
                    .body("hold.id", notNullValue())
                    .body("task.assignee", oneOf("tech1", "tech2", "tech3", "tech4", "tech5", "tech6"));
        }
    }

    @Test
    void everySignInWorks() {
        for (String username : List.of("coordinator", "desk", "tech1", "tech6")) {
            given().auth()
                    .preemptive()
                    .basic(username, "halden")
                    .get("/api/depots")
                    .then()
                    .statusCode(200)
                    .body("items", hasSize(3));
        }
    }

    @Test
    void theGreetingSaysWhereToLookAndWhoCanSignIn() {
        var printed = new ByteArrayOutputStream();
        start.greet(new PrintStream(printed, true, StandardCharsets.UTF_8), "http://127.0.0.1:8080/");
        assertThat(printed.toString(StandardCharsets.UTF_8))
                .contains("http://127.0.0.1:8080/", "halden", "coordinator", "desk", "tech1", "tech6");
    }

    @Test
    void theSameMomentGivesTheSameFleet() {
        Function<Rental, String> line = rental -> rental.id + " " + rental.outAt;
        List<String> stored = Rental.<Rental>listAll().stream().map(line).toList();
        assertThat(stored).doesNotHaveDuplicates();
        assertThat(DemoIds.of("HR-101", "rental", Instant.EPOCH))
                .isEqualTo(DemoIds.of("HR-101", "rental", Instant.EPOCH));
    }
}
