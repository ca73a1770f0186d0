package dev.lapwing.people;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Whoever guesses at links is soon not listened to. */
@QuarkusTest
@TestProfile(GuessesTest.FewGuesses.class)
class GuessesTest {
    public static class FewGuesses implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of(
                    "lapwing.job-link.wrong-per-minute", "3", "quarkus.datasource.jdbc.url", "jdbc:h2:mem:guesses");
        }
    }

    @Test
    void theFourthWrongLinkWithinAMinuteIsNotLookedAt() {
        for (int guess = 0; guess < 3; guess++) {
            assertThat(statusOf("/job/wrong-" + guess)).isEqualTo(404);
        }
        given().get("/job/wrong-again").then().statusCode(429).header("Retry-After", "60");
    }

    private static int statusOf(String path) {
        return given().get(path).statusCode();
    }
}
