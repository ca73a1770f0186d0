package dev.lapwing.pages;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import dev.lapwing.jobs.domain.roof.DefaultPlans;
import dev.lapwing.jobs.domain.roof.Point;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import dev.lapwing.pages.Visitor.Window;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A tech works through the sheet on a phone, with and without a network, alone and with others. */
@QuarkusTest
class SheetTest {
    private static final String SAVED = "All saved";
    private static Chromium chromium;

    @Inject
    FleetFixture fleet;

    private Wire wire;
    private String unit;
    private String task;
    private String tech;
    private String sheet;

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
    void aStruckUnit() {
        wire = new Wire(RestAssured.port);
        unit = "S-" + UUID.randomUUID().toString().substring(0, 6);
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
        tech = report.getString("task.assignee");
        sheet = "/tasks/" + task + "/sheet";
    }

    @AfterEach
    void cutTheWire() {
        wire.close();
    }

    private static io.restassured.specification.RequestSpecification as(String username) {
        return given().auth()
                .preemptive()
                .basic(username, FleetFixture.PASSWORD)
                .contentType(ContentType.JSON);
    }

    private Visitor phone(String username, ColorScheme scheme) {
        var visitor = new Visitor(chromium, wire.root(), Window.PHONE, scheme);
        visitor.signIn(username);
        visitor.go(sheet);
        return visitor;
    }

    private List<Map<String, Object>> stored() {
        return as("coordinator")
                .get("/api/tasks/" + task + "/findings")
                .jsonPath()
                .getList("items");
    }

    @ParameterizedTest
    @EnumSource(
            value = ColorScheme.class,
            names = {"LIGHT", "DARK"})
    void theNetworkIsCutInTheMiddleAndNothingIsLostOrDoubled(ColorScheme scheme) {
        String look = scheme == ColorScheme.DARK ? "-dark" : "";
        try (var phone = phone(tech, scheme)) {
            Page page = phone.page();
            phone.findNothingWrong("cautions");
            phone.picture("sheet-cautions-390" + look);
            readCautions(page);
            page.locator("#facts").scrollIntoViewIfNeeded();
            phone.findNothingWrong("roof facts");
            start(page);
            tap(page, 0.22, 0.5, "puncture");
            keep(page);
            saved(page);
            page.waitForSelector("html.kept-offline");

            page.context().setOffline(true);
            wire.cut();
            tap(page, 0.9, 0.1, "crack");
            page.locator(".depth .choice", new Page.LocatorOptions().setHasText("deep"))
                    .click();
            page.getByLabel("Length, cm").fill("12,5");
            page.locator("#findings").evaluate("step => step.scrollIntoView()");
            phone.glance("sheet-390" + look);
            keep(page);
            tap(page, 0.5, 0.9, "soft spot");
            keep(page);
            kept(page, "2 entries wait for signal");
            phone.forgetTroubles();
            phone.findNothingWrong("sheet without a network");
            phone.picture("sheet-offline-390" + look);

            page.reload();
            kept(page, "2 entries wait for signal");
            PlaywrightAssertions.assertThat(page.locator("#found li")).hasCount(3);
            phone.forgetTroubles();

            page.context().setOffline(false);
            wire.mend();
            saved(page);
            assertThat(stored())
                    .extracting(found -> found.get("kind"))
                    .containsExactly("puncture", "crack", "soft-spot");
            assertThat(stored().get(0).get("zone")).isEqualTo("front-centre, front vent");
            assertThat(stored().get(1).get("lengthCm")).isEqualTo(12.5f);
            phone.forgetTroubles();
            sign(page);
            PlaywrightAssertions.assertThat(page.locator("#signed h2")).hasText("Verdict: stop and refer");
            phone.findNothingWrong("signed sheet");
            phone.picture("sheet-signed-390" + look);
        }
    }

    @Test
    void anEntryWhoseAnswerWasLostArrivesOnceAndTheUnitIsFree() {
        try (var phone = phone(tech, ColorScheme.LIGHT)) {
            Page page = phone.page();
            readCautions(page);
            start(page);
            saved(page);
            wire.loseAnswers();
            tap(page, 0.5, 0.5, "dirt");
            keep(page);
            kept(page, "1 entry waits for signal");
            assertThat(stored()).hasSize(1);
            sign(page);
            kept(page, "2 entries wait for signal");
            wire.mend();
            PlaywrightAssertions.assertThat(page.locator("#signed h2")).hasText("Verdict: fit");

            assertThat(stored()).hasSize(1);
            assertThat(as("coordinator").get("/api/units/" + unit).jsonPath().getString("hold"))
                    .isNull();
        }
    }

    @Test
    void twoPeopleSeeWhatTheOtherAddsAndNobodySignsUnseen() {
        try (var phone = phone(tech, ColorScheme.LIGHT);
                var other = phone("coordinator", ColorScheme.LIGHT)) {
            readCautions(phone.page());
            start(phone.page());
            saved(phone.page());
            other.go(sheet);
            readCautions(other.page());
            tap(other.page(), 0.5, 0.5, "void");
            keep(other.page());
            saved(other.page());

            sign(phone.page());
            PlaywrightAssertions.assertThat(phone.page().locator("#refused"))
                    .containsText("entries that you have not seen");
            PlaywrightAssertions.assertThat(phone.page().locator("#others")).containsText("Cora Vale added: void");
            phone.forgetTroubles();
            phone.findNothingWrong("sheet with somebody else's entry");
            phone.picture("sheet-others-390");
            phone.page().getByRole(AriaRole.BUTTON, named("Sign again")).click();
            phone.page().getByRole(AriaRole.BUTTON, named("Seen")).click();
            phone.page().getByRole(AriaRole.BUTTON, named("Sign off")).click();
            PlaywrightAssertions.assertThat(phone.page().locator("#signed h2")).hasText("Verdict: touch up");
        }
    }

    @Test
    void theWholeSheetGoesByKeyboard() {
        try (var phone = phone(tech, ColorScheme.LIGHT)) {
            Page page = phone.page();
            for (Locator caution : page.locator("[name=read]").all()) {
                caution.focus();
                page.keyboard().press("Space");
            }
            press(page, "All read: open the sheet");
            page.locator("[name=weather]").first().focus();
            page.keyboard().press("Space");
            press(page, "Start the work");
            page.locator("[name=kind]").first().focus();
            page.keyboard().press("Space");
            page.locator("#zone").focus();
            page.keyboard().type("rear right");
            press(page, "Keep this finding");
            saved(page);
            assertThat(stored().get(0).get("zone")).isEqualTo("rear-right");
            page.locator("#undo button").focus();
            page.keyboard().press("Enter");
            saved(page);
            assertThat(stored()).isEmpty();
            page.locator("#dry-now").focus();
            page.keyboard().press("Space");
            page.locator("#statement").focus();
            page.keyboard().type("All seams felt");
            press(page, "Sign off");
            PlaywrightAssertions.assertThat(page.locator("#signed h2")).hasText("Verdict: fit");
            phone.findNothingWrong("sheet by keyboard");
        }
    }

    @Test
    void theBrowserNamesPlacesAsTheServiceDoes() throws IOException {
        var plans = new DefaultPlans(Files.readString(Path.of("shared/jobs/roof-plans.csv")));
        RoofPlan plan = plans.forUnit("motorhome", 7.4);
        try (var phone = phone(tech, ColorScheme.LIGHT)) {
            for (double x = 0; x <= 1; x += 0.0625) {
                for (double y = 0; y <= 1; y += 0.125) {
                    Object named = phone.page()
                            .evaluate(
                                    "async ([x, y]) => { const { Plan } = await import('/look/sheet-plan.js');"
                                            + " return new Plan(document.getElementById('roof')).zoneAt(x, y); }",
                                    List.of(x, y));
                    assertThat(named)
                            .as(x + ", " + y)
                            .isEqualTo(plan.zoneAt(new Point(x, y)).name());
                }
            }
        }
    }

    @Test
    void nothingOfTheSheetIsLeftOnThePhoneAfterTheSignOut() {
        try (var phone = phone(tech, ColorScheme.LIGHT)) {
            Page page = phone.page();
            page.waitForSelector("html.kept-offline");
            phone.go("/work");
            page.getByRole(AriaRole.BUTTON, named("Sign out")).click();
            page.waitForURL("**/sign-in");
            page.waitForFunction("async () => (await caches.keys()).every(name => !name.startsWith('lapwing-sheet:'))"
                    + " && (await navigator.serviceWorker.getRegistrations()).length === 0");
            assertThat(page.evaluate("JSON.stringify(localStorage)")).isEqualTo("{}");
        }
    }

    static void readCautions(Page page) {
        page.locator("#cautions-form .tap").all().forEach(Locator::click);
        page.getByRole(AriaRole.BUTTON, named("All read: open the sheet")).click();
    }

    static void start(Page page) {
        page.locator(".choice", new Page.LocatorOptions().setHasText("Dry and calm"))
                .click();
        page.getByRole(AriaRole.BUTTON, named("Start the work")).click();
    }

    /** Taps a place on the roof, then a kind. */
    static void tap(Page page, double x, double y, String kind) {
        Locator roof = page.locator("#roof .outline");
        roof.scrollIntoViewIfNeeded();
        var box = roof.boundingBox();
        page.mouse().click(box.x + y * box.width, box.y + x * box.height);
        page.locator(".kinds .choice", new Page.LocatorOptions().setHasText(kind))
                .click();
    }

    static void keep(Page page) {
        page.getByRole(AriaRole.BUTTON, named("Keep this finding")).click();
    }

    static void sign(Page page) {
        page.locator("label[for=dry-now]").click();
        page.locator("#statement").fill("Looked at every seam by hand");
        page.getByRole(AriaRole.BUTTON, named("Sign off")).click();
    }

    private static void press(Page page, String button) {
        page.getByRole(AriaRole.BUTTON, named(button)).focus();
        page.keyboard().press("Enter");
    }

    static void saved(Page page) {
        kept(page, SAVED);
    }

    static void kept(Page page, String words) {
        PlaywrightAssertions.assertThat(page.locator("#kept"))
                .hasText(
                        words,
                        new com.microsoft.playwright.assertions.LocatorAssertions.HasTextOptions().setTimeout(60_000));
    }

    static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }
}
