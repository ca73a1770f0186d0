package dev.lapwing.pages;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import dev.lapwing.pages.Visitor.Window;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The due list changes under a coordinator's eyes and leaves alone what they are doing. */
@QuarkusTest
class LiveDueListTest {
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
        unit = "V-" + UUID.randomUUID().toString().substring(0, 6);
        fleet.unit(unit);
    }

    @Test
    void aStrikeAppearsByItselfWithASoundAndInTheTitleWhenThatIsWanted() {
        try (var coordinator = open("/due-list?unit=" + unit)) {
            Page page = coordinator.page();
            page.getByLabel("Sound and title for a new strike").check();
            strike();
            page.locator(".band li", new Page.LocatorOptions().setHasText(unit)).waitFor();
            await().untilAsserted(() -> assertThat(page.title()).startsWith("(1) Roof struck"));
            assertThat(page.evaluate("document.documentElement.dataset.chimes").toString())
                    .isEqualTo("2");
            assertThat(page.locator("#live-line").textContent()).isEqualTo(unit + ": roof struck");
            coordinator.findNothingWrong("due list after a strike came in");
            coordinator.picture("due-list-live");
            page.reload();
            assertThat(page.getByLabel("Sound and title for a new strike").isChecked())
                    .isTrue();
        }
    }

    @Test
    void withoutTheWishTheTitleStaysAndNothingSounds() {
        try (var coordinator = open("/due-list?unit=" + unit)) {
            Page page = coordinator.page();
            strike();
            page.locator(".band li", new Page.LocatorOptions().setHasText(unit)).waitFor();
            assertThat(page.title()).isEqualTo("Due work · Lapwing");
            assertThat(page.evaluate("document.documentElement.dataset.chimes")).isNull();
        }
    }

    @Test
    void aChosenRowAndHalfTypedWordsOutliveAChange() {
        work.due(unit);
        work.due(unit);
        try (var coordinator = open("/due-list?unit=" + unit)) {
            Page page = coordinator.page();
            var first = page.locator("tr[data-task]").first();
            first.locator(".pick input").check();
            var second = page.locator("tr[data-task]").nth(1);
            second.locator("summary").click();
            second.getByLabel("Call off, because").fill("half a sen");
            strike();
            page.locator(".band li", new Page.LocatorOptions().setHasText(unit)).waitFor();

            assertThat(first.locator(".pick input").isChecked()).isTrue();
            assertThat(page.locator(".chosen").innerText()).isEqualTo("1 row chosen");
            assertThat(second.getByLabel("Call off, because").inputValue()).isEqualTo("half a sen");
            assertThat(page.evaluate("document.activeElement.name")).isEqualTo("why");
            await().untilAsserted(() ->
                    assertThat(page.locator("tr[data-task]").allInnerTexts()).allMatch(row -> row.contains("on hold")));
            assertThat(second.getByLabel("Call off, because").inputValue()).isEqualTo("half a sen");
        }
    }

    @Test
    void whatHappenedWhileTheConnectionWasAwayIsThereAfterwards() {
        try (var coordinator = open("/due-list?unit=" + unit)) {
            Page page = coordinator.page();
            page.evaluate("source.close(); source.dispatchEvent(new Event('error'))");
            page.getByText("Connection lost").waitFor();
            strike();
            page.locator(".band li", new Page.LocatorOptions().setHasText(unit)).waitFor();
            page.locator("#live-state", new Page.LocatorOptions().setHasText("Live"))
                    .waitFor();
        }
    }

    @Test
    void aSecondListOfTheSamePersonHearsThroughTheFirst() {
        try (var coordinator = open("/due-list?unit=" + unit)) {
            Page second = coordinator.page().context().newPage();
            second.navigate(root + "due-list?unit=" + unit);
            second.getByText("Live", new Page.GetByTextOptions().setExact(true)).waitFor();
            assertThat(second.evaluate("source === null")).isEqualTo(true);
            coordinator.page().bringToFront();
            strike();
            coordinator
                    .page()
                    .locator(".band li", new Page.LocatorOptions().setHasText(unit))
                    .waitFor();
            second.bringToFront();
            second.locator(".band li", new Page.LocatorOptions().setHasText(unit))
                    .waitFor();
            coordinator.page().close();
            await().untilAsserted(() -> assertThat(second.evaluate("source !== null && source.readyState === 1"))
                    .isEqualTo(true));
        }
    }

    private Visitor open(String path) {
        var coordinator =
                new Visitor(chromium, root.toString().replaceAll("/$", ""), Window.DESK_SCREEN, ColorScheme.LIGHT);
        coordinator.signIn("coordinator");
        coordinator.go(path);
        return coordinator;
    }

    private void strike() {
        given().auth()
                .preemptive()
                .basic("desk", FleetFixture.PASSWORD)
                .contentType(ContentType.JSON)
                .body(Map.of(
                        "unit",
                        unit,
                        "returnedAt",
                        "2025-11-20T10:00:00-05:00",
                        "note",
                        "scraped the top along an oak limb at the site"))
                .post("/api/return-reports")
                .then()
                .statusCode(201);
    }
}
