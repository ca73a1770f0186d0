package dev.lapwing.photos;

import static dev.lapwing.photos.TestPictures.exif;
import static dev.lapwing.photos.TestPictures.withSegment;
import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import dev.lapwing.photos.domain.BadPicture;
import dev.lapwing.photos.domain.HostileFilesTest;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.provider.Arguments;

/** Photos come to a return report and to the sheet of a task, are shown, and are taken away. */
@QuarkusTest
class PhotosTest {
    @Inject
    FleetFixture fleet;

    @ConfigProperty(name = "lapwing.photos.folder")
    Path folder;

    private String unit;
    private String report;
    private String task;
    private String tech;

    @BeforeEach
    void aStruckUnitUnderInspection() {
        unit = "F-" + UUID.randomUUID().toString().substring(0, 8);
        fleet.unit(unit);
        var filed = as("desk")
                .contentType("application/json")
                .body(Map.of(
                        "unit", unit, "returnedAt", "2025-11-20T10:00:00-05:00", "note", "scraped the top on a limb"))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .extract()
                .jsonPath();
        report = filed.getString("id");
        task = filed.getString("task.id");
        tech = filed.getString("task.assignee");
    }

    private static RequestSpecification as(String username) {
        return given().auth().preemptive().basic(username, FleetFixture.PASSWORD);
    }

    private void start() {
        as(tech).post("/api/tasks/" + task + "/acceptance").then().statusCode(200);
        as(tech).post("/api/tasks/" + task + "/start").then().statusCode(200);
    }

    private Response toReport(byte[]... files) {
        RequestSpecification request = as("desk");
        for (int i = 0; i < files.length; i++) {
            request.multiPart("photos", "roof-" + i + ".jpg", files[i], "image/jpeg");
        }
        return request.post("/api/return-reports/" + report + "/photos");
    }

    private RequestSpecification withPhoto(String who, byte[] file) {
        return as(who).multiPart("photos", "roof.jpg", file, "image/jpeg");
    }

    private ValidatableResponse listOfReport() {
        return as("desk")
                .get("/api/return-reports/" + report + "/photos")
                .then()
                .statusCode(200);
    }

    private Set<String> filesOnDisk() throws IOException {
        if (!Files.isDirectory(folder)) {
            return Set.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return new HashSet<>(
                    all.filter(Files::isRegularFile).map(Path::toString).toList());
        }
    }

    @Test
    void severalFilesBecomePhotosOfTheReportWithTheirTimeHashAndAddresses() {
        byte[] first = withSegment(TestPictures.jpeg(330, 210), 0xe1, exif(6, "2025:11:19 10:20:30", "-05:00"));
        String address = toReport(first, TestPictures.losslessWebp())
                .then()
                .statusCode(201)
                .body("total", equalTo(2))
                .body("items[0].width", equalTo(210))
                .body("items[0].height", equalTo(330))
                .body("items[0].takenAt", equalTo("2025-11-19T10:20:30-05:00"))
                .body("items[0].addedBy", equalTo("desk"))
                .body("items[0].source", equalTo("report"))
                .body("items[0].sha256.length()", equalTo(64))
                .body("items[1].takenAt", nullValue())
                .extract()
                .path("items[0].address");
        listOfReport().body("items", hasSize(2));
        as("tech1")
                .get("/api/return-reports/" + report)
                .then()
                .statusCode(200)
                .body("photos", hasSize(2))
                .body("photos[0].address", equalTo(address));
    }

    @Test
    void aPictureIsHandedOutInlineForGoodAndOnlyToThoseWhoSignedIn() {
        String id =
                toReport(TestPictures.png()).then().statusCode(201).extract().path("items[0].id");
        Response picture = as("tech2").get("/api/photos/" + id);
        picture.then()
                .statusCode(200)
                .contentType("image/jpeg")
                .header("X-Content-Type-Options", "nosniff")
                .header("Cache-Control", "private, max-age=31536000, immutable")
                .header("Content-Disposition", "inline; filename=\"" + id + ".jpg\"")
                .header("Content-Security-Policy", "default-src 'none'; sandbox");
        assertThat(TestPictures.fields(TestPictures.decoded(picture.asByteArray())))
                .isEqualTo("0123");
        String tag = picture.header("ETag");
        as("desk").header("If-None-Match", tag).get("/api/photos/" + id).then().statusCode(304);
        Response small = as("coordinator").get("/api/photos/" + id + "/thumbnail");
        small.then().statusCode(200).contentType("image/jpeg");
        assertThat(small.header("ETag")).isNotEqualTo(tag);
        given().get("/api/photos/" + id).then().statusCode(401);
        as("desk").get("/api/photos/" + UUID.randomUUID()).then().statusCode(404);
    }

    @Test
    void everyHostileFileIsRefusedWithItsReasonAndNothingIsStored() throws IOException {
        Set<String> before = filesOnDisk();
        for (Arguments hostile : HostileFilesTest.files().toList()) {
            Object[] file = hostile.get();
            int status =
                    switch ((BadPicture.Why) file[2]) {
                        case OTHER_TYPE -> 415;
                        case TOO_LARGE -> 413;
                        case DAMAGED -> 400;
                    };
            toReport((byte[]) file[1])
                    .then()
                    .statusCode(status)
                    .contentType("application/problem+json")
                    .body("errors[0].field", equalTo("photos[0]"))
                    .body("errors[0].message", containsString((String) file[3]));
        }
        assertThat(filesOnDisk()).isEqualTo(before);
        listOfReport().body("total", equalTo(0));
    }

    @Test
    void oneBadFileKeepsTheWholeRequestOutAndIsNamedByItsPlace() throws IOException {
        Set<String> before = filesOnDisk();
        toReport(TestPictures.jpeg(301, 201), TestPictures.gif())
                .then()
                .statusCode(415)
                .body("errors", hasSize(1))
                .body("errors[0].field", equalTo("photos[1]"))
                .body("errors[0].message", equalTo("roof-1.jpg is not a JPEG, PNG or WebP picture"));
        assertThat(filesOnDisk()).isEqualTo(before);
        listOfReport().body("total", equalTo(0));
    }

    @Test
    void aFileOfMoreThanFifteenMegabytesIsRefusedAndOneOfFifteenIsNot() {
        byte[] fifteen = new byte[15_000_000];
        byte[] jpeg = TestPictures.jpeg(302, 202);
        System.arraycopy(jpeg, 0, fifteen, 0, jpeg.length);
        toReport(fifteen).then().statusCode(201);
        toReport(TestPictures.joined(fifteen, new byte[1]))
                .then()
                .statusCode(413)
                .body("errors[0].message", containsString("is larger than 15 MB"));
    }

    @Test
    void aRequestWithoutFilesOrWithTooManyIsRefused() {
        as("desk")
                .multiPart("note", "no file here")
                .post("/api/return-reports/" + report + "/photos")
                .then()
                .statusCode(400)
                .body("errors[0].field", equalTo("photos"));
        byte[][] eleven = IntStream.range(0, 11)
                .mapToObj(i -> TestPictures.jpeg(40 + i, 40))
                .toArray(byte[][]::new);
        toReport(eleven).then().statusCode(400).body("errors[0].message", containsString("more than 10 files"));
        withPhoto("desk", TestPictures.jpeg())
                .post("/api/return-reports/" + UUID.randomUUID() + "/photos")
                .then()
                .statusCode(404);
        withPhoto("tech1", TestPictures.jpeg())
                .post("/api/return-reports/" + report + "/photos")
                .then()
                .statusCode(403);
    }

    @Test
    void theSameFileSentAgainIsTheSamePhotoWithAndWithoutAKey() {
        byte[] file = TestPictures.jpeg(303, 203);
        String id = toReport(file).then().statusCode(201).extract().path("items[0].id");
        toReport(file).then().statusCode(200).body("items[0].id", equalTo(id));
        String key = UUID.randomUUID().toString();
        String other = keyed(key, TestPictures.jpeg(304, 204))
                .then()
                .statusCode(201)
                .extract()
                .path("items[0].id");
        keyed(key, TestPictures.jpeg(304, 204)).then().statusCode(201).body("items[0].id", equalTo(other));
        keyed(key, TestPictures.jpeg(305, 205)).then().statusCode(422);
        listOfReport().body("total", equalTo(2));
    }

    private Response keyed(String key, byte[] file) {
        return withPhoto("desk", file).header("Idempotency-Key", key).post("/api/return-reports/" + report + "/photos");
    }

    @Test
    void theSameFileSentManyTimesAtOnceIsOnePhoto() {
        byte[] file = TestPictures.jpeg(306, 206);
        List<CompletableFuture<Integer>> sent = IntStream.range(0, 6)
                .mapToObj(
                        i -> CompletableFuture.supplyAsync(() -> toReport(file).statusCode()))
                .toList();
        assertThat(sent.stream().map(CompletableFuture::join).toList())
                .containsOnly(200, 201)
                .containsOnlyOnce(201);
        listOfReport().body("total", equalTo(1));
    }

    @Test
    void photosOfATaskNameTheirZoneAndFindingAndCountOnlyOnceWorkHasBegun() {
        toTask(tech, TestPictures.jpeg(307, 207)).then().statusCode(409);
        start();
        as(tech).contentType("application/json")
                .body(List.of(Map.of("zone", "front-left", "kind", "void")))
                .post("/api/tasks/" + task + "/findings")
                .then()
                .statusCode(201);
        withPhoto(tech, TestPictures.jpeg(307, 207))
                .multiPart("zone", "front-left")
                .multiPart("finding", "0")
                .post("/api/tasks/" + task + "/photos")
                .then()
                .statusCode(201)
                .body("items[0].zone", equalTo("front-left"))
                .body("items[0].finding", equalTo(0));
        withPhoto(tech, TestPictures.jpeg(308, 208))
                .multiPart("finding", "1")
                .post("/api/tasks/" + task + "/photos")
                .then()
                .statusCode(400)
                .body("errors[0].field", equalTo("finding"));
        toTask(tech.equals("tech1") ? "tech2" : "tech1", TestPictures.jpeg())
                .then()
                .statusCode(409);
        toTask("desk", TestPictures.jpeg()).then().statusCode(403);
        as("desk").get("/api/tasks/" + task + "/photos").then().body("total", equalTo(1));
        as("desk").get("/api/tasks/" + task).then().body("photos[0].zone", equalTo("front-left"));
    }

    @Test
    void photosOfASheetAreAddedAndSeenBelowThePathOfTheSheet() {
        start();
        String sheet = "/tasks/" + task + "/sheet";
        String address = withPhoto(tech, TestPictures.jpeg(311, 211))
                .accept("application/json")
                .post(sheet + "/photos")
                .then()
                .statusCode(201)
                .extract()
                .path("items[0].address");
        assertThat(address).startsWith(sheet + "/photo?id=");
        for (String size : List.of("", "&small=yes")) {
            as(tech).get(address + size).then().statusCode(200).contentType("image/jpeg");
        }
        as(tech).get(address.replace(task, UUID.randomUUID().toString())).then().statusCode(404);
        as(tech).get(sheet + "/photo").then().statusCode(404);
        withPhoto(tech, TestPictures.gif())
                .accept("application/json")
                .post(sheet + "/photos")
                .then()
                .statusCode(415)
                .contentType("application/problem+json");
        withPhoto(tech, TestPictures.jpeg(312, 212))
                .accept("text/html")
                .redirects()
                .follow(false)
                .post(sheet + "/photos")
                .then()
                .statusCode(303);
        as("desk").get("/api/tasks/" + task + "/photos").then().body("total", equalTo(2));
    }

    private Response toTask(String who, byte[] file) {
        return withPhoto(who, file).post("/api/tasks/" + task + "/photos");
    }

    @Test
    void onlyTheCoordinatorTakesAPhotoAwayAndTheRecordOfItStays() {
        byte[] file = TestPictures.jpeg(309, 209);
        String id = toReport(file).then().statusCode(201).extract().path("items[0].id");
        removal("desk", id, "shows a face").then().statusCode(403);
        removal("coordinator", id, " ").then().statusCode(400).body("errors[0].field", equalTo("why"));
        removal("coordinator", id, "shows a face")
                .then()
                .statusCode(200)
                .body("removed.by", equalTo("coordinator"))
                .body("removed.why", equalTo("shows a face"))
                .body("address", nullValue());
        removal("coordinator", id, "again").then().statusCode(409);
        as("desk").get("/api/photos/" + id).then().statusCode(404);
        as("desk").get("/api/photos/" + id + "/thumbnail").then().statusCode(404);
        listOfReport().body("total", equalTo(1)).body("items[0].removed.why", equalTo("shows a face"));
        toReport(file).then().statusCode(200).body("items[0].removed.why", equalTo("shows a face"));
    }

    private static Response removal(String who, String id, String why) {
        return as(who).contentType("application/json").body(Map.of("why", why)).post("/api/photos/" + id + "/removal");
    }
}
