package dev.lapwing.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.LoadState;
import dev.lapwing.platform.FleetFixture;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A person at a browser window, and what went wrong while they looked. */
final class Visitor implements AutoCloseable {
    /** A window size the pages are made for. */
    enum Window {
        DESK_SCREEN(1440, 900),
        COUNTER_TABLET(768, 1024),
        PHONE(390, 844);

        final int width;
        final int height;

        Window(int width, int height) {
            this.width = width;
            this.height = height;
        }
    }

    private static final Path PICTURES = Path.of(System.getProperty("lapwing.pictures", "target/pictures"));

    private final BrowserContext context;
    private final Page page;
    private final String root;
    private final List<String> troubles = new ArrayList<>();

    Visitor(Chromium chromium, String root, Window window, ColorScheme scheme) {
        this(chromium, root, in(window).setColorScheme(scheme));
    }

    static Visitor withoutScripts(Chromium chromium, String root) {
        return new Visitor(chromium, root, in(Window.DESK_SCREEN).setJavaScriptEnabled(false));
    }

    private static Browser.NewContextOptions in(Window window) {
        return new Browser.NewContextOptions().setViewportSize(window.width, window.height);
    }

    private Visitor(Chromium chromium, String root, Browser.NewContextOptions options) {
        this.root = root;
        context = chromium.browser().newContext(options);
        page = context.newPage();
        page.onConsoleMessage(message -> {
            if (!message.type().equals("log")) {
                troubles.add("console: " + message.text());
            }
        });
        page.onPageError(error -> troubles.add("script: " + error));
        page.onRequest(request -> {
            if (!request.url().startsWith(root) && !request.url().startsWith("data:")) {
                troubles.add("request outside: " + request.url());
            }
        });
    }

    Page page() {
        return page;
    }

    void signIn(String username) {
        go("/sign-in");
        page.getByLabel("Sign-in name").fill(username);
        page.getByLabel("Password").fill(FleetFixture.PASSWORD);
        page.locator("main button").click();
        settle();
    }

    /** Names the innermost elements that make the page wider than the window; empty when it does not scroll. */
    private static final String BEYOND_THE_EDGE = """
            (() => {
              const edge = document.documentElement.clientWidth;
              if (document.documentElement.scrollWidth <= edge) return '';
              const wide = [...document.body.querySelectorAll('*')].filter(e => e.getBoundingClientRect().right > edge + 0.5);
              return wide.filter(e => !wide.some(other => other !== e && e.contains(other)))
                  .slice(0, 5).map(e => e.outerHTML.slice(0, 150)).join(' | ') || 'something unseen';
            })()
            """;

    void go(String path) {
        page.navigate(root + path);
        settle();
    }

    /** Waits until the page has come to rest; one that listens never stops using the network. */
    void settle() {
        page.waitForLoadState(LoadState.LOAD);
        if (page.locator("html.js #live-state").count() == 0) {
            page.waitForLoadState(LoadState.NETWORKIDLE);
        } else {
            page.locator("#live-state")
                    .getByText("Live", new Locator.GetByTextOptions().setExact(true))
                    .waitFor();
        }
    }

    /** Lets go of what the browser complained of while a test kept the network from it. */
    void forgetTroubles() {
        troubles.clear();
    }

    /** Claims that nothing went wrong, that nothing is wider than the window, and that axe finds nothing. */
    void findNothingWrong(String where) {
        assertThat(troubles).as(where).isEmpty();
        assertThat(page.evaluate(BEYOND_THE_EDGE).toString())
                .as(where + " scrolls sideways because of")
                .isEmpty();
        List<Rule> found = new AxeBuilder(page)
                .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
                .analyze()
                .getViolations();
        assertThat(found.stream()
                        .map(rule -> rule.getId() + ": " + rule.getHelp() + " "
                                + rule.getNodes().stream()
                                        .map(node -> node.getHtml() + node.getTarget())
                                        .toList())
                        .toList())
                .as(where)
                .isEmpty();
    }

    /** Takes a picture for the user guide; the folder is that of {@code -Dlapwing.pictures}. */
    void picture(String name) {
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(PICTURES.resolve(name + ".png"))
                .setFullPage(true));
    }

    /** Takes a picture of what the window shows now. */
    void glance(String name) {
        page.screenshot(new Page.ScreenshotOptions().setPath(PICTURES.resolve(name + ".png")));
    }

    @Override
    public void close() {
        context.close();
    }
}
