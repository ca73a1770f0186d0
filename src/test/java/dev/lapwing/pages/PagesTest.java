package dev.lapwing.pages;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import dev.lapwing.pages.Visitor.Window;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** People go their main ways through the pages in a real browser, at the window sizes that the pages are made for. */
@QuarkusTest
class PagesTest {
    private static final String STRUCK = "scraped the top along an oak limb at the site";
    private static final String UNCLEAR =
            "There was a loud bang somewhere on the way, not sure if we touched anything.";
    private static Chromium chromium;

    @Inject
    FleetFixture fleet;

    @Inject
    WorkFixture work;

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
        unit = "P-" + UUID.randomUUID().toString().substring(0, 6);
        fleet.unit(unit);
    }

    private Visitor visitor(Window window) {
        return new Visitor(chromium, root.toString().replaceAll("/$", ""), window, ColorScheme.LIGHT);
    }

    private static String sizeOf(Window window) {
        return "-" + window.width;
    }

    @ParameterizedTest
    @EnumSource(Window.class)
    void aStrikeGoesFromTheDeskToTheDueList(Window window) {
        try (var desk = visitor(window)) {
            desk.signIn("desk");
            desk.page().getByLabel("Unit").pressSequentially(unit.substring(2));
            desk.page().getByText(unit + ": motorhome at Tarn Hollow").waitFor();
            desk.page().getByLabel("Unit").fill(unit);
            desk.page().getByLabel("What the customer says").pressSequentially(STRUCK);
            desk.page().locator("#reading .tag.contact").waitFor();
            assertThat(desk.page().locator("#reading mark").allInnerTexts().toString())
                    .contains("limb");
            desk.findNothingWrong("desk form");
            desk.picture("desk" + sizeOf(window));
            send(desk);
            desk.page().getByText("Do not rent it out.").waitFor();
            desk.findNothingWrong("report of a strike");
            desk.picture("report-strike" + sizeOf(window));
        }
        try (var coordinator = visitor(window)) {
            coordinator.signIn("coordinator");
            var row = coordinator.page().locator(".band li", new Page.LocatorOptions().setHasText(unit));
            assertThat(row.innerText()).contains(STRUCK).contains("has the inspection");
            coordinator.findNothingWrong("due list");
            coordinator.picture("due-list" + sizeOf(window));
            coordinator.go("/day?depot=" + FleetFixture.DEPOT);
            assertThat(coordinator.page().locator("main").innerText()).contains(unit);
            coordinator.findNothingWrong("day sheet");
            coordinator.picture("day" + sizeOf(window));
            coordinator.go("/outbox");
            coordinator.findNothingWrong("mails");
            coordinator.picture("outbox" + sizeOf(window));
            coordinator.go("/ahead");
            coordinator.findNothingWrong("weeks ahead");
            coordinator.picture("ahead" + sizeOf(window));
            coordinator.go("/figures");
            coordinator.findNothingWrong("figures");
            coordinator.picture("figures" + sizeOf(window));
        }
    }

    private static void send(Visitor desk) {
        desk.page()
                .getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Send"))
                .click();
        desk.settle();
    }

    @ParameterizedTest
    @EnumSource(Window.class)
    void anUnclearNoteIsAskedAboutAndSettled(Window window) {
        try (var desk = visitor(window)) {
            desk.signIn("desk");
            desk.page().getByLabel("Unit").fill(unit);
            desk.page().getByLabel("What the customer says").fill(UNCLEAR);
            send(desk);
            desk.findNothingWrong("report with a question");
            desk.picture("report-question" + sizeOf(window));
            desk.page().getByLabel("No, nothing did").check();
            desk.page().getByLabel("What the answer rests on").fill("the customer says the noise was a drawer");
            desk.page()
                    .getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Note the answer"))
                    .click();
            desk.settle();
            assertThat(desk.page().getByText(unit + " can go on as planned").isVisible())
                    .isTrue();
            desk.findNothingWrong("report with an answer");
        }
    }

    @ParameterizedTest
    @EnumSource(Window.class)
    void theUnitAndItsTaskTellWhatHappened(Window window) {
        String task = fileByScript();
        try (var tech = visitor(window)) {
            tech.signIn("tech1");
            tech.findNothingWrong("own work");
            tech.picture("work" + sizeOf(window));
            tech.go("/units?search=" + unit);
            tech.findNothingWrong("unit list");
            tech.picture("units" + sizeOf(window));
            tech.go("/units/" + unit);
            assertThat(tech.page().locator(".note mark").count()).isPositive();
            tech.findNothingWrong("unit");
            tech.picture("unit" + sizeOf(window));
            tech.go("/tasks/" + task);
            tech.findNothingWrong("task");
            tech.picture("task" + sizeOf(window));
        }
    }

    private String fileByScript() {
        return given().auth()
                .preemptive()
                .basic("desk", FleetFixture.PASSWORD)
                .contentType("application/json")
                .body("{\"unit\":\"" + unit + "\",\"returnedAt\":\"2026-01-05T10:00:00Z\",\"note\":\"" + STRUCK + "\"}")
                .post("/api/return-reports")
                .then()
                .statusCode(201)
                .extract()
                .path("task.id");
    }

    @Test
    void wrongFieldsAreNamedBesideThemAndNothingTypedIsLost() {
        try (var desk = visitor(Window.COUNTER_TABLET)) {
            desk.signIn("desk");
            desk.page().getByLabel("Unit").fill("no such unit");
            desk.page().getByLabel("What the customer says").fill(STRUCK);
            desk.page().getByLabel("Odometer").fill("many");
            send(desk);
            assertThat(desk.page().locator(".wrong").allInnerTexts())
                    .contains("Unit is not the number of a unit", "The odometer is not a whole number");
            assertThat(desk.page().getByLabel("What the customer says").inputValue())
                    .isEqualTo(STRUCK);
        }
    }

    @Test
    void aTapOnThePlanMakesAMarkAndTheMarkMakesAStrike() {
        try (var desk = visitor(Window.COUNTER_TABLET)) {
            desk.signIn("desk");
            desk.page().getByLabel("Unit").fill(unit);
            desk.page().locator("#plan").click();
            assertThat(desk.page().locator("#marks li").innerText()).contains("1: middle centre");
            desk.page().locator("#marks select").selectOption("hole or tear");
            desk.findNothingWrong("desk form with a mark");
            desk.picture("desk-mark-768");
            send(desk);
            assertThat(desk.page().locator("ol").last().innerText()).contains("hole or tear, middle centre");
            assertThat(desk.page().getByText("Do not rent it out.").isVisible()).isTrue();
        }
    }

    @Test
    void aRowIsGivenAwayByKeyboardAloneAndCanBeTakenBackForTenSeconds() {
        work.due(unit);
        try (var coordinator = visitor(Window.DESK_SCREEN)) {
            coordinator.signIn("coordinator");
            coordinator.go("/due-list?unit=" + unit);
            var page = coordinator.page();
            page.locator("tr[data-task]").focus();
            page.keyboard().press("a");
            page.keyboard().press("Tab");
            page.keyboard().press("Enter");
            page.getByText("will be given to").waitFor();
            coordinator.findNothingWrong("due list while undo is offered");
            coordinator.picture("due-list-undo");
            page.keyboard().press("Enter");
            coordinator.go("/due-list?unit=" + unit);
            assertThat(page.locator("tr[data-task]").innerText()).contains("nobody yet");
        }
    }

    @Test
    void chosenRowsAreGivenTogetherAndAtTheLatestWhenThePageIsLeft() {
        work.due(unit);
        work.due(unit);
        try (var coordinator = visitor(Window.DESK_SCREEN)) {
            coordinator.signIn("coordinator");
            coordinator.go("/due-list?unit=" + unit);
            var page = coordinator.page();
            page.locator("tr[data-task]").first().focus();
            page.keyboard().press("x");
            page.keyboard().press("ArrowDown");
            page.keyboard().press("x");
            page.getByText("2 rows chosen").waitFor();
            page.getByLabel("Give the chosen rows to").selectOption("tech2");
            page.getByRole(
                            AriaRole.BUTTON,
                            new Page.GetByRoleOptions().setName("Give").setExact(true))
                    .first()
                    .click();
            page.getByText("2 rows will be given to Tom Birch").waitFor();
            coordinator.go("/units/" + unit);
            await().untilAsserted(() -> {
                coordinator.go("/due-list?unit=" + unit);
                assertThat(page.locator("tr[data-task]").allInnerTexts())
                        .hasSize(2)
                        .allMatch(row -> row.contains("Tom Birch"));
            });
        }
    }

    @Test
    void everythingIsThereWithoutScripts() {
        work.due(unit);
        try (var coordinator = Visitor.withoutScripts(chromium, root.toString().replaceAll("/$", ""))) {
            coordinator.signIn("coordinator");
            coordinator.go("/due-list?unit=" + unit);
            coordinator.page().locator("details.act summary").click();
            coordinator.page().locator("details.act select").selectOption("tech2");
            coordinator.page().locator("details.act .btn-main").click();
            assertThat(coordinator.page().locator(".said").innerText()).contains("given to its tech");
            assertThat(coordinator.page().locator("tr[data-task]").innerText()).contains("Tom Birch");
            coordinator.go("/desk?unit=" + unit);
            coordinator.page().getByLabel("Place").selectOption("rear left");
            coordinator.page().getByLabel("What is there").selectOption("dent");
            send(coordinator);
            assertThat(coordinator.page().locator("main").innerText())
                    .contains("Do not rent it out.")
                    .contains("dent, rear left");
        }
    }

    @Test
    void signInAndProblemPagesAreClean() {
        for (Window window : Window.values()) {
            try (var stranger = visitor(window)) {
                stranger.go("/sign-in");
                stranger.findNothingWrong("sign-in");
                stranger.picture("sign-in" + sizeOf(window));
            }
        }
    }

    @Test
    void theDarkLookKeepsItsContrast() {
        fileByScript();
        var dark = new Visitor(chromium, root.toString().replaceAll("/$", ""), Window.DESK_SCREEN, ColorScheme.DARK);
        try (dark) {
            dark.signIn("coordinator");
            dark.findNothingWrong("dark due list");
            dark.picture("due-list-dark");
            dark.go("/units/" + unit);
            dark.findNothingWrong("dark unit");
            dark.picture("unit-dark");
            dark.go("/desk?unit=" + unit);
            dark.findNothingWrong("dark desk");
            dark.picture("desk-dark");
        }
    }
}
