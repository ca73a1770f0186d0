package dev.lapwing.people.rota;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class RotaResourceTest {
    private static final String ROTA = "/api/depots/" + FleetFixture.DEPOT + "/rota";
    private static final Map<String, Object> TURN =
            Map.of("weekday", 3, "starts", "08:00", "ends", "18:00", "username", "tech1");

    @Inject
    FleetFixture fleet;

    @BeforeEach
    void people() {
        fleet.people();
    }

    @AfterEach
    void noRota() {
        QuarkusTransaction.requiringNew().run(() -> {
            StoredTurn.deleteAll();
            StoredAbsence.deleteAll();
            StoredSwap.deleteAll();
        });
    }

    @Test
    void turnsAbsencesAndSwapsAreKeptAndTakenOff() {
        String turn = post("/turns", TURN, 201);
        String absence = post(
                "/absences",
                Map.of("username", "tech1", "from", "2099-01-01", "until", "2099-01-05", "why", "leave"),
                201);
        String swap = post("/swaps", Map.of("date", "2099-02-01", "giver", "tech1", "taker", "tech2"), 201);

        as("desk")
                .get(ROTA)
                .then()
                .statusCode(200)
                .body("kept", equalTo(true))
                .body("turns.name", hasItem("Tess Alder"))
                .body("absences.why", hasItem("leave"))
                .body("swaps.takerName", hasItem("Tom Birch"))
                .body("gaps", not(empty()));

        as("coordinator").delete(ROTA + "/turns/" + turn).then().statusCode(204);
        as("coordinator").delete(ROTA + "/absences/" + absence).then().statusCode(204);
        as("coordinator").delete(ROTA + "/swaps/" + swap).then().statusCode(204);
        as("coordinator").delete(ROTA + "/swaps/" + swap).then().statusCode(404);
        as("tech1")
                .get(ROTA)
                .then()
                .body("kept", equalTo(false))
                .body("absences", empty())
                .body("swaps", empty())
                .body("gaps", empty());
    }

    @Test
    void wrongTurnsAreRefusedWithEachFieldNamedAndNothingIsKept() {
        wrong(
                "/turns",
                Map.of("weekday", 8, "starts", "8", "ends", "25:00", "username", "nobody", "place", 0),
                "weekday",
                "starts",
                "ends",
                "username",
                "place");
        wrong("/turns", Map.of(), "weekday", "starts", "ends", "username");
        wrong("/absences", Map.of("username", "tech1", "from", "2099-01-05", "until", "2099-01-01"), "until");
        wrong("/absences", Map.of("username", "tech1", "from", "soon", "until", "later"), "from", "until");
        wrong("/swaps", Map.of("date", "2099-02-30", "giver", "tech1", "taker", "tech1"), "date", "taker");
        as("coordinator")
                .get(ROTA)
                .then()
                .body("turns", empty())
                .body("absences", empty())
                .body("swaps", empty());
    }

    @Test
    void oneTurnComesOnce() {
        post("/turns", TURN, 201);
        wrong("/turns", TURN, "username");
    }

    @Test
    void aRepeatedRequestWithItsKeyMakesOneTurn() {
        String key = UUID.randomUUID().toString();
        for (int time = 0; time < 2; time++) {
            as("coordinator")
                    .header("Idempotency-Key", key)
                    .body(TURN)
                    .post(ROTA + "/turns")
                    .then()
                    .statusCode(201);
        }
        assertThat(QuarkusTransaction.requiringNew().call(() -> StoredTurn.count()))
                .isEqualTo(1);
    }

    @Test
    void onlyTheCoordinatorChangesIt() {
        as("tech1").body(TURN).post(ROTA + "/turns").then().statusCode(403);
        as("desk").delete(ROTA + "/turns/" + UUID.randomUUID()).then().statusCode(403);
        as("coordinator").get("/api/depots/nowhere/rota").then().statusCode(404);
        given().get(ROTA).then().statusCode(401);
    }

    @Test
    void aGapIsShownToTheCoordinatorBeforeItHappens() {
        post("/turns", TURN, 201);

        as("coordinator")
                .get("/rota?depot=" + FleetFixture.DEPOT)
                .then()
                .statusCode(200)
                .body(containsString("Nobody is on duty"));
        as("coordinator").get("/rain").then().statusCode(200).body(containsString("The next rain"));
        as("tech1").get("/rota").then().statusCode(403);
    }

    private static String post(String path, Map<String, Object> body, int status) {
        return as("coordinator")
                .body(body)
                .post(ROTA + path)
                .then()
                .statusCode(status)
                .extract()
                .path("id");
    }

    private static void wrong(String path, Map<String, Object> body, String... fields) {
        var answer = as("coordinator")
                .body(new HashMap<>(body))
                .post(ROTA + path)
                .then()
                .statusCode(400);
        for (String field : fields) {
            answer.body("errors.field", hasItem(field));
        }
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
