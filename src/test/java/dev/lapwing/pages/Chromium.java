package dev.lapwing.pages;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;

/** The browser of the machine; tests that need one are skipped where there is none. */
final class Chromium implements AutoCloseable {
    private final Playwright playwright;
    private final Browser browser;

    private Chromium(Path executable) {
        Map<String, String> environment = new HashMap<>(System.getenv());
        environment.put("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
        playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(executable)
                        .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-background-networking")));
    }

    static Chromium open() {
        String named = System.getenv().getOrDefault("LAPWING_CHROMIUM", "/usr/bin/chromium");
        Path executable = Path.of(named);
        Assumptions.assumeTrue(
                Files.isExecutable(executable),
                "skipped: no Chromium at " + named + "; install it, or name one in LAPWING_CHROMIUM");
        return new Chromium(executable);
    }

    Browser browser() {
        return browser;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
