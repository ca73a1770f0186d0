package dev.lapwing.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import dev.lapwing.pages.Visitor.Window;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The coordinator sees to sweeps, care rules and imports in a real browser. */
@QuarkusTest
class UpkeepPagesTest {
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

    @ParameterizedTest
    @EnumSource(Window.class)
    void aSweepIsStartedAndWatchedToItsEnd(Window window) {
        try (var coordinator = coordinator(window, ColorScheme.LIGHT)) {
            coordinator.go("/sweeps");
            coordinator.findNothingWrong("sweeps");
            press(coordinator, "Start");
            coordinator.page().locator("#live .tag.done").waitFor();
            assertThat(coordinator.page().locator("main").innerText())
                    .contains("Sweep of all depots")
                    .contains("asked for, coordinator");
            coordinator.findNothingWrong("sweep");
            coordinator.picture("sweep-" + window.width);
            coordinator.go("/sweeps");
            coordinator.findNothingWrong("sweeps with a run");
            coordinator.picture("sweeps-" + window.width);
        }
    }

    @ParameterizedTest
    @EnumSource(Window.class)
    void otherRulesAreTriedAndAdoptedOnlyWithAReason(Window window) {
        ColorScheme scheme = window == Window.DESK_SCREEN ? ColorScheme.DARK : ColorScheme.LIGHT;
        try (var coordinator = coordinator(window, scheme)) {
            coordinator.go("/care-rules");
            coordinator.findNothingWrong("care rules");
            coordinator.picture("care-rules-" + window.width);
            Locator text = coordinator.page().getByLabel("Rules as JSON");
            text.fill(text.inputValue()
                    .replaceFirst("\"14 days\"", "\"13 days\"")
                    .replaceFirst("\"version\": \\d+", "\"version\": 900"));
            press(coordinator, "Try on the whole fleet");
            coordinator.page().locator("#live .tag.done").waitFor();
            coordinator.findNothingWrong("trial");
            coordinator.picture("trial-" + window.width);
            press(coordinator, "Adopt, and sweep the fleet");
            assertThat(coordinator.page().locator(".wrong").innerText()).contains("Why: is required");
        }
    }

    @ParameterizedTest
    @EnumSource(Window.class)
    void whatIsWrongWithRulesIsNamedByFieldAndLine(Window window) {
        try (var coordinator = coordinator(window, ColorScheme.LIGHT)) {
            coordinator.go("/care-rules");
            Locator text = coordinator.page().getByLabel("Rules as JSON");
            text.fill(text.inputValue().replaceFirst("\"14 days\"", "\"often\""));
            press(coordinator, "Try on the whole fleet");
            assertThat(coordinator.page().locator("#rules-wrong").innerText())
                    .contains("rules[0] (full-time).opensBefore")
                    .contains("(line ");
            assertThat(coordinator.page().getByLabel("Rules as JSON").inputValue())
                    .contains("often");
            coordinator.picture("care-rules-wrong-" + window.width);
        }
    }

    @ParameterizedTest
    @EnumSource(Window.class)
    void aFileWithOtherHeadingsIsFittedAndImported(Window window) {
        String number = unit + "-" + window.width;
        String file = "Number;KIND;depot;Length metres;height_metres;Roof;footing;colour\n"
                + number + ";van;" + FleetFixture.DEPOT + ";6,4;2,8;TPO;no-walk;white\n"
                + number + "-b;van;" + FleetFixture.DEPOT + ";long;2,8;TPO;no-walk;green\n";
        try (var coordinator = coordinator(window, ColorScheme.LIGHT)) {
            coordinator.go("/imports");
            coordinator.findNothingWrong("imports");
            coordinator.picture("imports-" + window.width);
            coordinator.page().getByLabel("It holds").selectOption("units");
            coordinator
                    .page()
                    .getByLabel("File")
                    .setInputFiles(new FilePayload("fleet.csv", "text/csv", file.getBytes(StandardCharsets.UTF_8)));
            press(coordinator, "Look at its columns");
            assertThat(coordinator.page().locator(".said").innerText()).contains("surface");
            assertThat(coordinator.page().getByLabel("Length metres").inputValue())
                    .isEqualTo("lengthMetres");
            coordinator.findNothingWrong("columns");
            coordinator.picture("import-columns-" + window.width);
            coordinator.page().getByLabel("Roof").selectOption("surface");
            press(coordinator, "Import");
            coordinator.page().locator("#live .tag.done").waitFor();
            assertThat(coordinator.page().locator("#live").innerText().replaceAll("\\s+", " "))
                    .contains("1 went in")
                    .contains("lengthMetres is not a number of metres")
                    .contains("“long”")
                    .contains("colour (left out)");
            coordinator.findNothingWrong("import");
            coordinator.picture("import-" + window.width);
            coordinator.go("/units/" + number);
            assertThat(coordinator.page().locator("main").innerText()).contains("TPO");
        }
    }

    @ParameterizedTest
    @EnumSource(Window.class)
    void aFileWhoseNeededColumnsAreNotGivenIsNotImported(Window window) {
        try (var coordinator = coordinator(window, ColorScheme.LIGHT)) {
            coordinator.go("/imports");
            press(coordinator, "Look at its columns");
            assertThat(coordinator.page().locator(".said").innerText()).contains("choose a file first");
            byte[] file = "unit;when\nx;y\n".getBytes(StandardCharsets.UTF_8);
            coordinator.page().getByLabel("It holds").selectOption("rentals");
            coordinator.page().getByLabel("File").setInputFiles(new FilePayload("log.csv", "text/csv", file));
            press(coordinator, "Look at its columns");
            press(coordinator, "Import");
            assertThat(coordinator.page().locator(".said").innerText())
                    .contains("out is a column that the file must have");
            assertThat(coordinator
                            .page()
                            .getByLabel("unit", new Page.GetByLabelOptions().setExact(true))
                            .inputValue())
                    .isEqualTo("unit");
        }
    }

    private static void press(Visitor visitor, String button) {
        visitor.page()
                .getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
        visitor.settle();
    }
}
