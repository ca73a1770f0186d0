package dev.lapwing.people;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;

import dev.lapwing.fleet.Depot;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A service without people: whoever holds the one-time link makes the first coordinator and the first depot. */
@QuarkusTest
@TestProfile(SetUpTest.EmptyDatabase.class)
class SetUpTest {
    /** A database of its own, in which nobody was ever added. */
    public static class EmptyDatabase implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of("quarkus.datasource.jdbc.url", "jdbc:h2:mem:set-up");
        }
    }

    @Inject
    SettingUp settingUp;

    private String token;

    @BeforeEach
    void aLink() {
        token = settingUp.newToken();
    }

    @AfterEach
    void forgetEverybody() {
        QuarkusTransaction.requiringNew().run(() -> {
            StaffSession.deleteAll();
            Staff.<Staff>listAll().forEach(Staff::delete);
            Staff.flush();
            Depot.deleteAll();
        });
    }

    private static Map<String, String> filledIn() {
        Map<String, String> form = new HashMap<>();
        form.put("fullName", "Wren Tolliver");
        form.put("username", "wren");
        form.put("mail", "wren@haldenridge.example");
        form.put("password", "three blue roofs");
        form.put("code", "tarn-hollow");
        form.put("name", "Tarn Hollow");
        form.put("zone", "America/New_York");
        form.put("opens", "04-01");
        form.put("closes", "10-31");
        return form;
    }

    private static Response send(String token, Map<String, String> form) {
        return given().accept("text/html").formParams(form).post("/set-up/" + token);
    }

    @Test
    void bothAreMadeAndTheCoordinatorCanSignIn() {
        send(token, filledIn()).then().statusCode(200).body(containsString("Sign in as <b>wren</b>"));

        given().redirects()
                .follow(false)
                .formParam("username", "wren")
                .formParam("password", "three blue roofs")
                .post("/sign-in")
                .then()
                .statusCode(303);
        QuarkusTransaction.requiringNew().run(() -> {
            Staff first = Staff.activeByName("wren").orElseThrow();
            assertThat(first.role).isEqualTo(Role.COORDINATOR);
            assertThat(first.depots).containsExactly("tarn-hollow");
            Depot depot = Depot.findById("tarn-hollow");
            assertThat(depot.zone).isEqualTo("America/New_York");
        });
    }

    @Test
    void aLinkWorksOnce() {
        send(token, filledIn()).then().statusCode(200);

        send(token, filledIn()).then().statusCode(404);
        given().accept("text/html").get("/set-up/" + token).then().statusCode(404);
    }

    @Test
    void aNewLinkEndsTheOneBefore() {
        settingUp.newToken();

        given().accept("text/html").get("/set-up/" + token).then().statusCode(404);
    }

    @Test
    void aGuessedLinkOpensNothing() {
        given().accept("text/html").get("/set-up/guessed").then().statusCode(404);
    }

    @Test
    void everyWrongFieldIsNamedAndNothingTypedIsLostAndNothingIsMade() {
        Map<String, String> form = filledIn();
        form.put("password", "short");
        form.put("zone", "Middle of nowhere");
        form.put("opens", "02-30");

        send(token, form)
                .then()
                .statusCode(400)
                .body(containsString("must have at least 10 characters"))
                .body(containsString("is not the name of a time zone"))
                .body(containsString("must be a month and a day"))
                .body(containsString("value=\"Middle of nowhere\""))
                .body(containsString("value=\"Wren Tolliver\""));
        QuarkusTransaction.requiringNew()
                .run(() -> assertThat(Staff.count() + Depot.count()).isZero());

        send(token, filledIn()).then().statusCode(200);
    }
}
