package dev.lapwing.pages;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;

import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Nothing changes because a page of another site asked a person's browser to. */
@QuarkusTest
class OwnSiteTest {
    @Inject
    FleetFixture fleet;

    private String session;

    @BeforeEach
    void aSignedInDesk() {
        fleet.people();
        session = given().redirects()
                .follow(false)
                .formParam("username", "desk")
                .formParam("password", FleetFixture.PASSWORD)
                .post("/sign-in")
                .then()
                .statusCode(303)
                .extract()
                .cookie("lapwing-session");
    }

    private RequestSpecification browser() {
        return given().redirects()
                .follow(false)
                .accept("text/html")
                .cookie("lapwing-session", session)
                .formParam("code", "");
    }

    @Test
    void aRequestFromAnotherSiteIsRefused() {
        browser().header("Sec-Fetch-Site", "cross-site").post("/depot").then().statusCode(403);
        browser().header("Sec-Fetch-Site", "same-site").post("/depot").then().statusCode(403);
    }

    @Test
    void anOlderBrowserIsJudgedByItsOrigin() {
        browser()
                .header("Origin", "https://elsewhere.example")
                .post("/depot")
                .then()
                .statusCode(403);
        browser().header("Origin", "null").post("/depot").then().statusCode(403);
    }

    @Test
    void theServicesOwnPagesMayChangeThings() {
        browser().header("Sec-Fetch-Site", "same-origin").post("/depot").then().statusCode(303);
    }

    @Test
    void pagesMayLoadFromThisServiceOnlyAndMayNotBeFramed() {
        given().accept("text/html")
                .get("/sign-in")
                .then()
                .statusCode(200)
                .header("Content-Security-Policy", containsString("default-src 'self'"))
                .header("Content-Security-Policy", containsString("frame-ancestors 'none'"));
    }

    @Test
    void aWayBackNeverLeadsOutOfTheService() {
        for (String out : new String[] {"//elsewhere.example", "https://elsewhere.example", "/\\elsewhere.example"}) {
            given().redirects()
                    .follow(false)
                    .formParam("username", "desk")
                    .formParam("password", FleetFixture.PASSWORD)
                    .formParam("next", out)
                    .post("/sign-in")
                    .then()
                    .statusCode(303)
                    .header("Location", endsWith(":" + RestAssured.port + "/"));
        }
    }

    @Test
    void whoeverIsNotSignedInIsSentToSignInAndBackToThePageThatWasAskedFor() {
        var stranger = given().redirects().follow(false).accept("text/html");
        stranger.get("/units?search=HR")
                .then()
                .statusCode(303)
                .header("Location", endsWith("/sign-in?next=%2Funits%3Fsearch%3DHR"));

        given().redirects()
                .follow(false)
                .accept("text/html")
                .formParam("note", "scraped the top")
                .post("/desk")
                .then()
                .statusCode(303)
                .header("Location", endsWith("/sign-in?next=%2F"));
    }
}
