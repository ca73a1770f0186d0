package dev.lapwing.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import dev.lapwing.pages.Visitor.Window;
import dev.lapwing.platform.FleetFixture;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A coordinator adds a webhook, sees its secret once, tries it and reads the log. */
@QuarkusTest
@TestProfile(WebhookPagesTest.OwnNetwork.class)
class WebhookPagesTest {
    private static Chromium chromium;

    /** Lets targets lie on this machine. */
    public static class OwnNetwork implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of(
                    "quarkus.datasource.jdbc.url",
                    "jdbc:h2:mem:webhook-pages",
                    "lapwing.webhooks.allow-private",
                    "true");
        }
    }

    @Inject
    FleetFixture fleet;

    @TestHTTPResource("/")
    URI root;

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

    @ParameterizedTest
    @EnumSource(Window.class)
    void aWebhookIsAddedTriedAndRemoved(Window window) {
        fleet.people();
        String own = root.toString().replaceAll("/$", "");
        try (var coordinator = new Visitor(chromium, own, window, ColorScheme.LIGHT)) {
            coordinator.signIn("coordinator");
            coordinator.go("/webhooks");
            Page page = coordinator.page();
            coordinator.findNothingWrong("no webhook");
            page.getByLabel("Address").fill("http://127.0.0.1:" + root.getPort() + "/nowhere");
            page.getByLabel("release").uncheck();
            press(page, "Add");
            String secret = page.locator(".note").innerText();
            assertThat(secret).hasSize(43);
            coordinator.findNothingWrong("webhook added");
            coordinator.picture("webhook-added-" + window.width);
            page.getByText("I have noted it").click();
            assertThat(page.content()).doesNotContain(secret).contains("strike, hold");
            press(page, "Send a test");
            page.waitForCondition(() -> {
                page.reload();
                return page.locator(".tries").count() == 1;
            });
            assertThat(page.locator(".tries").innerText()).contains(" ms");
            coordinator.findNothingWrong("deliveries");
            coordinator.picture("webhook-deliveries-" + window.width);
            coordinator.go("/webhooks");
            coordinator.findNothingWrong("webhooks");
            coordinator.picture("webhooks-" + window.width);
            press(page, "Pause");
            press(page, "Resume");
            page.locator("summary").click();
            press(page, "Remove for good");
            assertThat(page.locator("main").innerText()).contains("No webhook yet");
        }
    }

    private static void press(Page page, String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
        page.waitForLoadState();
    }
}
