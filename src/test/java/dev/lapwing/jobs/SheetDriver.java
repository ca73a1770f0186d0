package dev.lapwing.jobs;

import static io.restassured.RestAssured.given;

import dev.lapwing.platform.FleetFixture;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.Map;

/** What people send while a roof is looked at. */
final class SheetDriver {
    private SheetDriver() {}

    /** Reports contact and returns what followed. */
    static JsonPath strike(String unit) {
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
                .jsonPath();
    }

    static void accept(String task, String tech) {
        as(tech).post("/api/tasks/" + task + "/acceptance").then().statusCode(200);
    }

    static void start(String task, String tech) {
        as(tech).post("/api/tasks/" + task + "/start").then().statusCode(200);
    }

    static Response find(String task, String who, Map<?, ?>... findings) {
        return as(who).body(List.of(findings)).post("/api/tasks/" + task + "/findings");
    }

    static Response sign(String task, String who) {
        return as(who).body(Map.of(
                        "by",
                        "Tess Alder",
                        "cautionsRead",
                        true,
                        "dryAtInspection",
                        true,
                        "statement",
                        "Looked at every seam by hand"))
                .post("/api/tasks/" + task + "/sign-off");
    }

    /** Does a task from acceptance to signature. */
    static JsonPath doAndSign(String task, String tech) {
        accept(task, tech);
        start(task, tech);
        return sign(task, tech).then().statusCode(200).extract().jsonPath();
    }

    static Response release(String hold) {
        return as("coordinator")
                .body(Map.of("by", "Cora Vale", "statement", "Seen and in order"))
                .post("/api/holds/" + hold + "/release");
    }

    static JsonPath task(String id) {
        return as("coordinator").get("/api/tasks/" + id).jsonPath();
    }

    static JsonPath unit(String number) {
        return as("coordinator").get("/api/units/" + number).jsonPath();
    }

    static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }
}
