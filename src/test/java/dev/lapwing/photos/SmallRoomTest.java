package dev.lapwing.photos;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Photos keep to the room of their unit and of the fleet. */
@QuarkusTest
@TestProfile(SmallRoomTest.SmallRoom.class)
class SmallRoomTest {
    /** One megabyte for each unit, two for the fleet. */
    public static class SmallRoom implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of("lapwing.photos.unit-megabytes", "1", "lapwing.photos.fleet-megabytes", "2");
        }
    }

    @Inject
    FleetFixture fleet;

    @BeforeEach
    void people() {
        fleet.people();
    }

    @Test
    void aUnitThatFillsItsRoomTakesNoMoreAndTheFleetNeither() {
        String first = report();
        send(first, 1).then().statusCode(201);
        send(first, 2)
                .then()
                .statusCode(409)
                .contentType("application/problem+json")
                .body("detail", containsString("fill their 1 MB"));
        given().auth()
                .preemptive()
                .basic("desk", FleetFixture.PASSWORD)
                .get("/api/return-reports/" + first + "/photos")
                .then()
                .body("total", equalTo(1));
        send(first, 1).then().statusCode(200);
        // Each is smaller than the room of its unit; at most three of them find room in the fleet.
        Response last = send(report(), 3);
        for (int seed = 4; seed < 7 && last.statusCode() == 201; seed++) {
            last = send(report(), seed);
        }
        last.then().statusCode(409).body("detail", containsString("of the fleet fill their 2 MB"));
    }

    private String report() {
        String unit = "R-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        return given().auth()
                .preemptive()
                .basic("desk", FleetFixture.PASSWORD)
                .contentType("application/json")
                .body(Map.of("unit", unit, "returnedAt", "2025-11-20T10:00:00-05:00", "note", "all well"))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
    }

    private static Response send(String report, int seed) {
        return given().auth()
                .preemptive()
                .basic("desk", FleetFixture.PASSWORD)
                .multiPart("photos", "noise.jpg", noise(seed), "image/jpeg")
                .post("/api/return-reports/" + report + "/photos");
    }

    /** Returns a picture that does not become small: about 0.7 MB as it is kept. */
    private static byte[] noise(int seed) {
        var image = new BufferedImage(1000, 700, BufferedImage.TYPE_INT_RGB);
        var random = new Random(seed);
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                image.setRGB(x, y, random.nextInt(0x1000000));
            }
        }
        var bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "jpg", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
