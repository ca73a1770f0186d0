package dev.lapwing.pages;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import dev.lapwing.jobs.domain.roof.DefaultPlans;
import dev.lapwing.jobs.domain.roof.Point;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import dev.lapwing.pages.Visitor.Window;
import dev.lapwing.photos.TestPictures;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Photos and roof plans in a real browser. */
@QuarkusTest
class RoofPagesTest {
    private static Chromium chromium;

    @Inject
    FleetFixture fleet;

    @Inject
    PastFixture past;

    @TestHTTPResource("/")
    URI root;

    private String unit;

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
    void aUnit() {
        unit = "Q-" + UUID.randomUUID().toString().substring(0, 6);
        fleet.unit(unit);
    }

    private Visitor visitor(Window window) {
        return new Visitor(chromium, root.toString().replaceAll("/$", ""), window, ColorScheme.LIGHT);
    }

    private static RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType("application/json");
    }

    private JsonPath struck() {
        return as("desk")
                .body(Map.of(
                        "unit",
                        unit,
                        "returnedAt",
                        "2025-11-20T10:00:00-05:00",
                        "note",
                        "scraped the top along an oak limb at the site",
                        "marks",
                        List.of(Map.of("x", 0.2, "y", 0.2, "kind", "scrape"))))
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .extract()
                .jsonPath();
    }

    private static void inspected(JsonPath report) {
        String task = "/api/tasks/" + report.getString("task.id");
        String tech = report.getString("task.assignee");
        as(tech).post(task + "/acceptance").then().statusCode(200);
        as(tech).post(task + "/start").then().statusCode(200);
        as(tech).body(List.of(
                        Map.of("zone", "front-left, front vent", "kind", "crack", "depth", "surface", "lengthCm", 8),
                        Map.of("zone", "rear-right", "kind", "dirt")))
                .post(task + "/findings")
                .then()
                .statusCode(201);
        given().auth()
                .preemptive()
                .basic(tech, FleetFixture.PASSWORD)
                .multiPart("photos", "a.jpg", TestPictures.jpeg(640, 480), "image/jpeg")
                .multiPart("zone", "front-left, front vent")
                .multiPart("finding", "0")
                .post(task + "/photos")
                .then()
                .statusCode(201);
    }

    @ParameterizedTest
    @EnumSource(Window.class)
    void theUnitPageShowsItsRoofOverTimeAndItsPhotos(Window window) {
        inspected(struck());
        try (var coordinator = visitor(window)) {
            coordinator.signIn("coordinator");
            coordinator.go("/units/" + unit);
            Page page = coordinator.page();
            assertThat(page.locator(".roof-story .mark").count()).isEqualTo(3);
            assertThat(page.locator(".roof-story .roof-found > li")
                            .allInnerTexts()
                            .toString())
                    .contains("scrape in front-left", "crack", "dirt");
            assertThat(page.locator(".photos img").first().getAttribute("alt"))
                    .isEqualTo("finding 1, front-left, front vent");
            page.locator(".photos img").first().scrollIntoViewIfNeeded();
            page.waitForFunction("document.querySelector('.photos img').naturalWidth > 0");
            coordinator.findNothingWrong("unit with roof and photos");
            coordinator.picture("unit-roof-" + window.width);
        }
    }

    @Test
    void theSliderGoesBackInTimeByKeyboard() {
        inspected(struck());
        past.markedOn(unit, Instant.parse("2020-01-02T17:00:00Z"));
        try (var tech = visitor(Window.DESK_SCREEN)) {
            tech.signIn("tech1");
            tech.go("/units/" + unit);
            Page page = tech.page();
            assertThat(page.locator(".mark:visible").count()).isEqualTo(3);
            page.locator("#until").focus();
            page.keyboard().press("ArrowLeft");
            assertThat(page.locator("#until-day").innerText()).isEqualTo("Thu 2 Jan 2020");
            assertThat(page.locator(".mark:visible").count()).isEqualTo(1);
            page.keyboard().press("ArrowRight");
            assertThat(page.locator(".mark:visible").count()).isEqualTo(3);
            assertThat(page.locator(".mark.earlier").count()).isEqualTo(1);
        }
    }

    @Test
    void everythingFoundIsListedWithoutScripts() {
        inspected(struck());
        try (var tech = Visitor.withoutScripts(chromium, root.toString().replaceAll("/$", ""))) {
            tech.signIn("tech1");
            tech.go("/units/" + unit);
            assertThat(tech.page().locator(".roof-found > li").count()).isEqualTo(3);
            assertThat(tech.page().locator("#until").isVisible()).isFalse();
        }
    }

    @ParameterizedTest
    @EnumSource(Window.class)
    void theDeskAddsPhotosToAReturn(Window window) {
        String report = struck().getString("id");
        try (var desk = visitor(window)) {
            desk.signIn("desk");
            desk.go("/desk/reports/" + report);
            Page page = desk.page();
            page.getByLabel("Photos").setInputFiles(new FilePayload[] {
                new FilePayload("first.jpg", "image/jpeg", TestPictures.jpeg(800, 500)),
                new FilePayload("second.webp", "image/webp", TestPictures.lossyWebp())
            });
            page.locator(".photos img").nth(1).waitFor();
            assertThat(page.locator(".sending li").count()).isZero();
            desk.go("/desk/reports/" + report);
            assertThat(page.locator(".photos img").count()).isEqualTo(2);
            desk.findNothingWrong("report with photos");
            desk.picture("report-photos-" + window.width);
        }
    }

    @Test
    void aRefusedFileIsSaidToBeAndAPhotoWithoutConnectionIsKeptAndSentLater() {
        String report = struck().getString("id");
        try (var desk = visitor(Window.PHONE)) {
            desk.signIn("desk");
            desk.go("/desk/reports/" + report);
            Page page = desk.page();
            page.context().setOffline(true);
            page.getByLabel("Photos")
                    .setInputFiles(new FilePayload("roof.jpg", "image/jpeg", TestPictures.jpeg(810, 510)));
            page.getByText("is kept here until there is a connection").waitFor();
            page.context().setOffline(false);
            page.locator(".photos img").first().waitFor();
            assertThat(page.locator(".photos img").count()).isEqualTo(1);
            assertThat(page.locator(".sending li").count()).isZero();
            page.getByLabel("Photos").setInputFiles(new FilePayload("moving.gif", "image/gif", TestPictures.gif()));
            page.getByText("moving.gif is not a JPEG, PNG or WebP picture").waitFor();
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Close"))
                    .click();
            assertThat(page.locator(".sending li").count()).isZero();
        }
    }

    @Test
    void photosAreAddedAndTakenAwayWithoutScripts() {
        String report = struck().getString("id");
        String base = root.toString().replaceAll("/$", "");
        try (var desk = Visitor.withoutScripts(chromium, base)) {
            desk.signIn("coordinator");
            desk.go("/desk/reports/" + report);
            Page page = desk.page();
            page.getByLabel("Photos").setInputFiles(new FilePayload("roof.png", "image/png", TestPictures.png()));
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Add photos"))
                    .click();
            assertThat(page.locator(".said").innerText()).isEqualTo("The photo was added");
            page.locator(".photos summary").click();
            page.getByLabel("Why", new Page.GetByLabelOptions().setExact(true)).fill("shows a face");
            // Without scripts the browser paints so rarely that a click may wait for ever for the button to stand
            // still.
            page.locator(".photos .btn-grave").press("Enter");
            page.getByText("A photo was taken away by Cora Vale: shows a face").waitFor();
        }
    }

    @ParameterizedTest
    @EnumSource(Window.class)
    void theCoordinatorDrawsARoofPlan(Window window) {
        try (var coordinator = visitor(window)) {
            coordinator.signIn("coordinator");
            coordinator.go("/units/" + unit + "/roof-plan");
            Page page = coordinator.page();
            coordinator.findNothingWrong("roof plan");
            coordinator.picture("roof-plan-" + window.width);
            double before = inputOf(page, "front vent", "front");
            drag(page, "front vent", 0, 60);
            // the drawing is to scale: as many centimetres as the pointer went
            double scale = (double) page.evaluate("document.querySelector('.roof-plan').getScreenCTM().d");
            assertThat(inputOf(page, "front vent", "front")).isCloseTo(before + 60 / scale / 100, within(0.03));
            page.keyboard().press("ArrowUp");
            page.keyboard().press("Shift+ArrowRight");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Undo last change"))
                    .click();
            page.getByLabel("Add", new Page.GetByLabelOptions().setExact(true)).selectOption("skylight");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Add to the roof"))
                    .click();
            page.keyboard().type(" light");
            coordinator.findNothingWrong("roof plan while it is changed");
            page.getByRole(
                            AriaRole.BUTTON,
                            new Page.GetByRoleOptions().setName("Save the plan").setExact(true))
                    .last()
                    .click();
            coordinator.settle();
            assertThat(page.locator(".said").innerText()).contains("is saved, as version 1");
            assertThat(page.locator(".pieces").innerText()).contains("skylight light");
            coordinator.findNothingWrong("saved roof plan");
        }
        as("desk").get("/api/units/" + unit + "/roof-plan").then().statusCode(200);
    }

    private static double inputOf(Page page, String name, String field) {
        return Double.parseDouble((String) page.evaluate(
                "([name, field]) => [...document.querySelectorAll('#pieces > li')]"
                        + ".find((row) => row.querySelector('[name=name]').value === name)"
                        + ".querySelector(`[name=${field}]`).value",
                List.of(name, field)));
    }

    private static void drag(Page page, String name, double right, double down) {
        Locator shape = page.locator(".shape", new Page.LocatorOptions().setHasText(name))
                .first();
        shape.scrollIntoViewIfNeeded();
        BoundingBox box = shape.locator("rect").boundingBox();
        double x = box.x + box.width / 2;
        double y = box.y + box.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        page.mouse().move(x + right / 2, y + down / 2);
        page.mouse().move(x + right, y + down);
        page.mouse().up();
    }

    /** The page names places by itself, without a connection; it must say what the service would say. */
    @Test
    void thePageNamesPlacesAsTheServiceDoes() throws IOException {
        RoofPlan plan =
                new DefaultPlans(Files.readString(Path.of("shared/jobs/roof-plans.csv"))).forUnit("motorhome", 7.4);
        try (var tech = visitor(Window.PHONE)) {
            tech.signIn("tech1");
            tech.go("/units/" + unit + "/roof-plan");
            tech.findNothingWrong("roof plan for those who only look");
            @SuppressWarnings("unchecked")
            List<String> named = (List<String>) tech.page().evaluate("""
                    async (address) => {
                      const plan = await (await fetch(address)).json();
                      const { zoneAt } = await import('/look/roof-plan.js');
                      const names = [];
                      for (let i = 0; i <= 60; i++) for (let j = 0; j <= 30; j++) names.push(zoneAt(plan, i / 60, j / 30));
                      return names;
                    }
                    """, "/api/units/" + unit + "/roof-plan");
            for (int i = 0; i <= 60; i++) {
                for (int j = 0; j <= 30; j++) {
                    assertThat(named.get(i * 31 + j))
                            .as(i + "/60, " + j + "/30")
                            .isEqualTo(
                                    plan.zoneAt(new Point(i / 60.0, j / 30.0)).name());
                }
            }
        }
    }
}
