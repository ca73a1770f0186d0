package dev.lapwing.pages;

import static dev.lapwing.pages.SheetTest.keep;
import static dev.lapwing.pages.SheetTest.kept;
import static dev.lapwing.pages.SheetTest.named;
import static dev.lapwing.pages.SheetTest.readCautions;
import static dev.lapwing.pages.SheetTest.saved;
import static dev.lapwing.pages.SheetTest.start;
import static dev.lapwing.pages.SheetTest.tap;
import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import dev.lapwing.pages.Visitor.Window;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Wash, drying and stop on a phone without a network; what the service refuses later is shown and stays. */
@QuarkusTest
class SheetPartsOfflineTest {
    private static final String EARLY = "To begin before it has dried: why";
    private static Chromium chromium;

    @Inject
    FleetFixture fleet;

    private Wire wire;
    private String unit;
    private String task;
    private Visitor phone;
    private Page page;

    @BeforeAll
    static void openBrowser() {
        chromium = Chromium.open();
    }

    @AfterAll
    static void closeBrowser() {
        if (chromium != null) {
            chromium.close();
        }
    }

    @BeforeEach
    void aTechIsOnTheRoofWithoutANetwork() {
        wire = new Wire(RestAssured.port);
        unit = "O-" + UUID.randomUUID().toString().substring(0, 6);
        fleet.unit(unit);
        JsonPath report = as("desk")
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
        task = report.getString("task.id");
        phone = new Visitor(chromium, wire.root(), Window.PHONE, ColorScheme.LIGHT);
        phone.signIn(report.getString("task.assignee"));
        phone.go("/tasks/" + task + "/sheet");
        page = phone.page();
        readCautions(page);
        start(page);
        saved(page);
        page.waitForSelector("html.kept-offline");
        page.context().setOffline(true);
        wire.cut();
    }

    @AfterEach
    void putThePhoneAway() {
        phone.close();
        wire.close();
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }

    private void networkComesBack() {
        page.context().setOffline(false);
        wire.mend();
    }

    private void press(String button) {
        page.getByRole(AriaRole.BUTTON, named(button)).click();
    }

    private void see(String part, String words) {
        PlaywrightAssertions.assertThat(page.locator(part))
                .containsText(words, new LocatorAssertions.ContainsTextOptions().setTimeout(60_000));
    }

    private List<String> events() {
        return as("coordinator").get("/api/tasks/" + task + "/roof").jsonPath().getList("events.kind");
    }

    private List<Object> findings() {
        return as("coordinator")
                .get("/api/tasks/" + task + "/findings")
                .jsonPath()
                .getList("items");
    }

    @Test
    void washEarlyStartAndFindingsArriveInTheirOrder() {
        press("Wash done");
        see("#wash", "Wash done: on this phone, not sent yet");
        page.getByLabel(EARLY).fill("the sun dried it");
        press("Begin to look and feel");
        tap(page, 0.5, 0.5, "dirt");
        keep(page);
        kept(page, "3 entries wait for signal");
        phone.forgetTroubles();
        phone.findNothingWrong("sheet with a wash that was not sent yet");
        phone.picture("sheet-parts-offline-390");

        networkComesBack();
        saved(page);
        see("#dry", "Looking has begun.");
        assertThat(events()).containsExactly("washed", "begun-early");
        assertThat(findings()).hasSize(1);
    }

    @Test
    void whatIsRefusedOnArrivalIsShownWithItsReasonAndNothingBehindItIsLost() {
        press("Wash done");
        press("Begin to look and feel");
        tap(page, 0.5, 0.5, "soft spot");
        keep(page);

        networkComesBack();
        see("#refused", "to begin early, give a reason");
        see("#kept", "Not taken");
        see("#found", "soft spot");
        assertThat(events()).containsExactly("washed");

        press("Discard it");
        see("#refused", "Not taken: soft spot");
        page.locator("#refer summary").click();
        page.getByLabel("Why you stop").fill("the roof gives way under the hand");
        press("Stop and refer now");
        see("#signed", "Verdict: stop and refer");
        see("#refused", "Not taken: soft spot");
        see("#found", "soft spot");
        assertThat(as("coordinator").get("/api/units/" + unit).jsonPath().getString("hold"))
                .isNotNull();
    }
}
