package dev.lapwing.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import dev.lapwing.pages.Visitor.Window;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** People note on a unit's forms what happened to it, and see it on the unit's page. */
@QuarkusTest
class UnitFormsTest {
    private static Chromium chromium;

    @Inject
    FleetFixture fleet;

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
        unit = "U-" + UUID.randomUUID().toString().substring(0, 6);
        fleet.unit(unit);
    }

    private Visitor coordinator(Window window, ColorScheme scheme) {
        var visitor = new Visitor(chromium, root.toString().replaceAll("/$", ""), window, scheme);
        visitor.signIn("coordinator");
        return visitor;
    }

    private static void press(Visitor visitor, String button) {
        visitor.page()
                .getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button))
                .click();
        visitor.settle();
    }

    private static void claimDone(Visitor visitor, String words) {
        assertThat(visitor.page().locator(".said").innerText()).contains(words);
    }

    @ParameterizedTest
    @EnumSource(Window.class)
    void eachFormIsCleanAndWhatItNotesStandsOnTheUnitsPage(Window window) {
        try (var visitor = coordinator(window, ColorScheme.LIGHT)) {
            var page = visitor.page();
            visitor.go("/units/" + unit + "/stays/new");
            visitor.findNothingWrong("form of a stay");
            visitor.picture("stay-" + window.width);
            page.getByLabel("From").fill("2026-01-05T09:00");
            page.getByLabel("Until").fill("2026-03-01T09:00");
            page.getByLabel("Stored").selectOption("under trees");
            press(visitor, "Keep");
            claimDone(visitor, "storage of " + unit + " noted");
            visitor.go("/units/" + unit + "/care-events/new");
            visitor.findNothingWrong("form of an event");
            page.getByLabel("What was seen").fill("drops at the vent after the night's rain");
            press(visitor, "Report");
            claimDone(visitor, "water inside of " + unit);
            visitor.go("/units/" + unit + "/pattern");
            visitor.findNothingWrong("form of the pattern");
            page.getByLabel("Pattern").selectOption("seasonal");
            page.getByLabel("Reason").fill("summer only");
            page.getByLabel("Last day it counts").fill("2099-10-31");
            press(visitor, "Keep");
            claimDone(visitor, "the pattern of " + unit + " is kept");
            assertThat(page.locator("main").innerText())
                    .contains("Water seen inside")
                    .contains("storage, under trees")
                    .contains("seasonal until 2099-10-31")
                    .contains("water inside reported on");
            visitor.findNothingWrong("unit with stays and changes");
            visitor.picture("unit-year-" + window.width);
        }
    }

    @Test
    void theFormsOfTheCoordinatorAreCleanInTheDarkToo() {
        try (var visitor = coordinator(Window.PHONE, ColorScheme.DARK)) {
            for (String form : List.of("edit", "roof", "service")) {
                visitor.go("/units/" + unit + "/" + form);
                visitor.findNothingWrong("form " + form);
                visitor.picture("unit-" + form + "-dark");
            }
            visitor.go("/units/" + unit);
            visitor.findNothingWrong("dark unit");
        }
    }

    @Test
    void wrongFactsAreNamedBesideTheirFieldsAndRightOnesAreKept() {
        try (var visitor = coordinator(Window.DESK_SCREEN, ColorScheme.LIGHT)) {
            var page = visitor.page();
            visitor.go("/units/" + unit + "/edit");
            page.getByLabel("Length, metres").fill("long");
            press(visitor, "Keep");
            assertThat(page.locator(".wrong").allInnerTexts())
                    .containsExactly("Length, metres: is not a number such as 7.45");
            assertThat(page.getByLabel("Length, metres").inputValue()).isEqualTo("long");
            visitor.picture("unit-edit-wrong");
            page.getByLabel("Length, metres").fill("8.1");
            page.getByLabel("Own season opens").fill("05-01");
            press(visitor, "Keep");
            assertThat(page.locator(".wrong").first().innerText()).startsWith("Own season closes: is required");
            page.getByLabel("Own season closes").fill("09-30");
            press(visitor, "Keep");
            claimDone(visitor, "what is known of " + unit + " was changed");
            assertThat(page.locator("section[aria-labelledby=changes]").innerText())
                    .contains("Length, m")
                    .contains("8.1")
                    .contains("05-01 to 09-30")
                    .contains("Cora Vale");
        }
    }

    @Test
    void aUnitLeavesAndComesBack() {
        try (var visitor = coordinator(Window.DESK_SCREEN, ColorScheme.LIGHT)) {
            var page = visitor.page();
            visitor.go("/units/" + unit + "/service");
            page.getByLabel("Reason").fill("engine");
            press(visitor, "Keep");
            assertThat(page.locator(".head").innerText()).contains("out of service");
            visitor.findNothingWrong("unit out of service");
            visitor.go("/units/" + unit + "/roof");
            page.getByLabel("Laid on").fill("2026-02-01");
            page.getByLabel("Surface").selectOption("TPO");
            page.getByLabel("Reason").fill("worn");
            press(visitor, "Keep");
            claimDone(visitor, "the new roof of " + unit);
            visitor.go("/units/" + unit + "/service");
            page.getByLabel("Reason").fill("mended");
            press(visitor, "Keep");
            assertThat(page.locator(".head").innerText()).contains("free to rent");
            visitor.go("/units/" + unit + "/service");
            press(visitor, "Keep");
            assertThat(page.locator(".wrong").innerText()).isEqualTo("Reason: is required");
        }
    }
}
