package dev.lapwing.photos.application;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.photos.TestPictures;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The daily clean-up keeps every file that a photo needs, and no other for long. */
@QuarkusTest
class ClearingPhotoFilesTest {
    private static final FileTime LONG_AGO = FileTime.from(Instant.parse("2020-01-02T00:00:00Z"));

    @Inject
    FleetFixture fleet;

    @Inject
    ClearingPhotoFiles clearing;

    @ConfigProperty(name = "lapwing.photos.folder")
    Path folder;

    private String report;

    @BeforeEach
    void aReturn() {
        report = report();
    }

    private String report() {
        String unit = "C-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        return as("desk")
                .contentType("application/json")
                .body(Map.of("unit", unit, "returnedAt", "2025-11-20T10:00:00-05:00", "note", "all well"))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
    }

    private static RequestSpecification as(String username) {
        return given().auth().preemptive().basic(username, FleetFixture.PASSWORD);
    }

    /** Sends a picture and returns its id and hash. */
    private static String[] sent(String report, byte[] picture) {
        var answer = as("desk")
                .multiPart("photos", "roof.jpg", picture, "image/jpeg")
                .post("/api/return-reports/" + report + "/photos")
                .then()
                .statusCode(201)
                .extract()
                .jsonPath();
        return new String[] {answer.getString("items[0].id"), answer.getString("items[0].sha256")};
    }

    private Path grownOld(String hash, String kind) throws IOException {
        Path file = folder.resolve(hash.substring(0, 2)).resolve(hash + kind);
        Files.setLastModifiedTime(file, LONG_AGO);
        return file;
    }

    private static void takeAway(String id) {
        as("coordinator")
                .contentType("application/json")
                .body(Map.of("why", "shows a face"))
                .post("/api/photos/" + id + "/removal")
                .then()
                .statusCode(200);
    }

    @Test
    void filesOfPhotosThatAreThereStayAndThoseOfOthersGo() throws IOException {
        String[] stays = sent(report, TestPictures.jpeg(321, 123));
        String[] goes = sent(report, TestPictures.jpeg(322, 123));
        Path kept = grownOld(stays[1], ".jpg");
        Path gone = grownOld(goes[1], ".jpg");
        Path alsoGone = grownOld(goes[1], "-small.jpg");
        takeAway(goes[0]);

        clearing.clear();

        assertThat(kept).exists();
        assertThat(gone).doesNotExist();
        assertThat(alsoGone).doesNotExist();
        as("desk").get("/api/photos/" + stays[0]).then().statusCode(200);
    }

    @Test
    void aPictureThatAnotherPhotoShowsTooStays() throws IOException {
        String[] goes = sent(report, TestPictures.jpeg(323, 123));
        String[] stays = sent(report(), TestPictures.jpeg(323, 123));
        assertThat(stays[1]).isEqualTo(goes[1]);
        Path shared = grownOld(stays[1], ".jpg");
        takeAway(goes[0]);

        clearing.clear();

        assertThat(shared).exists();
    }
}
