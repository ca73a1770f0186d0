package dev.lapwing.pages;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.lessThan;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import dev.lapwing.pages.Visitor.Window;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A tech washes, is stopped and seals, and a coordinator confirms and decides, in a real browser. */
@QuarkusTest
class SheetPartsPagesTest {
    private static Chromium chromium;

    @Inject
    FleetFixture fleet;

    @TestHTTPResource("/")
    URI root;

    private String unit;
    private String task;
    private String tech;

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
    void aStruckUnitWhoseInspectionIsUnderWay() {
        unit = "S-" + UUID.randomUUID().toString().substring(0, 6);
        fleet.unit(unit);
        Map<String, String> report = Map.of(
                "unit",
                unit,
                "returnedAt",
                "2025-11-20T10:00:00-05:00",
                "note",
                "scraped the top along an oak limb at the site");
        JsonPath followed = post("desk", "/api/return-reports", report);
        task = followed.getString("task.id");
        tech = followed.getString("task.assignee");
        post(tech, "/api/tasks/" + task + "/acceptance", Map.of());
        post(tech, "/api/tasks/" + task + "/start", Map.of());
    }

    @ParameterizedTest
    @EnumSource(
            value = Window.class,
            names = {"PHONE", "DESK_SCREEN"})
    void theTechWashesAndIsStoppedByWind(Window window) {
        try (var visitor = visitor(window, ColorScheme.DARK)) {
            visitor.signIn(tech);
            openSheet(visitor, task);
            Page page = visitor.page();
            page.getByLabel("Washed with").selectOption("Coldharbour Tar Lift");
            press(page, "Wash done");
            see(page.locator("#refused"), "The cleaner must not touch this roof");
            visitor.forgetTroubles();
            press(page, "Discard it");
            page.getByLabel("Washed with").selectOption("Bramblewash Gentle");
            press(page, "Wash done");
            see(page.locator("#dry"), "The roof dries until");
            see(page.locator("#kept"), "All saved");
            page.getByLabel("It is windy").check();
            press(page, "Begin to look and feel");
            see(page.locator("#dry .said.refused"), "It is windy: stop.");
            see(page.locator("#dry"), "The roof dries until");
            see(page.locator("#kept"), "All saved");
            page.getByText("Stop and refer to a workshop").click();
            PlaywrightAssertions.assertThat(page.getByLabel("Why you stop")).isVisible();
            visitor.findNothingWrong("sheet with wash and stop");
            visitor.picture("sheet-parts-wash-" + window.width);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Window.class,
            names = {"PHONE", "DESK_SCREEN"})
    void theCoordinatorConfirmsAndDecides(Window window) {
        post(
                tech,
                "/api/tasks/" + task + "/findings",
                List.of(
                        Map.of("zone", "rear-left", "kind", "adhesion", "extent", "loose-in-several"),
                        Map.of("zone", "front-left", "kind", "crack", "depth", "deep", "lengthCm", 12)));
        List<String> followUps = post(
                        tech,
                        "/api/tasks/" + task + "/sign-off",
                        Map.of(
                                "by",
                                "Tess Alder",
                                "cautionsRead",
                                true,
                                "dryAtInspection",
                                true,
                                "statement",
                                "felt all seams"))
                .getList("followUps");
        try (var visitor = visitor(window, ColorScheme.LIGHT)) {
            visitor.signIn("coordinator");
            String rework = of(followUps, "rework");
            visitor.go("/tasks/" + rework);
            visitor.page().getByText("How the tubes were worked out").click();
            visitor.findNothingWrong("task that needs a decision");
            visitor.picture("task-decision-" + window.width);
            visitor.page().locator("#reason").fill("the sealant is twelve years old");
            visitor.page().getByText("Choose sealant replacement").click();
            visitor.settle();
            assertThat(visitor.page().locator("main").innerText()).contains("Decided: sealant replacement");

            visitor.go("/tasks/" + of(followUps, "confirm membrane"));
            visitor.findNothingWrong("task that asks for the membrane system");
            visitor.picture("task-membrane-" + window.width);
            visitor.page().locator("#system").fill("Hallowsheet E60");
            visitor.page().locator("#confirmedBy").fill("Fell Trailers, the dealer");
            visitor.page().getByText("Enter the confirmation").click();
            visitor.settle();
            assertThat(visitor.page().locator("main").innerText()).contains("confirmed by Fell Trailers, the dealer");

            visitor.go("/units/" + unit + "/changes");
            assertThat(visitor.page().locator("main").innerText()).contains("roof: membrane system", "decision");
            visitor.findNothingWrong("changes of a unit");
            visitor.picture("unit-changes-" + window.width);
        }
        post("coordinator", "/api/tasks/" + of(followUps, "sealant replacement") + "/assignment", Map.of("tech", tech));
        String replacement = of(followUps, "sealant replacement");
        post(tech, "/api/tasks/" + replacement + "/acceptance", Map.of());
        post(tech, "/api/tasks/" + replacement + "/start", Map.of());
        try (var visitor = visitor(window, ColorScheme.LIGHT)) {
            visitor.signIn(tech);
            openSheet(visitor, replacement);
            visitor.page().locator("#sealant-used").selectOption("Ouselwick Lap Sealant E60");
            visitor.page().getByText("Note the sealant").click();
            see(visitor.page().locator("main"), "Used: Ouselwick Lap Sealant E60");
            visitor.findNothingWrong("sheet of sealant work");
            visitor.picture("sheet-parts-sealant-" + window.width);
        }
    }

    private static void press(Page page, String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }

    /** Waits until a part of the page says so; what the script sends is shown when it has arrived. */
    private static void see(Locator part, String words) {
        PlaywrightAssertions.assertThat(part)
                .containsText(words, new LocatorAssertions.ContainsTextOptions().setTimeout(30_000));
    }

    private static void openSheet(Visitor visitor, String task) {
        visitor.go("/tasks/" + task + "/sheet");
        for (Locator caution :
                visitor.page().locator("#cautions-form input[type=checkbox]").all()) {
            caution.check();
        }
        visitor.page().getByText("All read: open the sheet").click();
        visitor.settle();
    }

    private Visitor visitor(Window window, ColorScheme scheme) {
        return new Visitor(chromium, root.toString().replaceAll("/$", ""), window, scheme);
    }

    private static String of(List<String> tasks, String kind) {
        return tasks.stream()
                .filter(id ->
                        kind.equals(as("coordinator").get("/api/tasks/" + id).path("kind")))
                .findFirst()
                .orElseThrow();
    }

    private static JsonPath post(String who, String path, Object body) {
        return as(who).body(body)
                .post(path)
                .then()
                .statusCode(lessThan(300))
                .extract()
                .jsonPath();
    }

    private static RequestSpecification as(String who) {
        return given().auth().preemptive().basic(who, FleetFixture.PASSWORD).contentType(ContentType.JSON);
    }
}
