package chargehand.app.pages;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The browser that is installed on this machine, driven; nothing is downloaded. */
record Chromium(Playwright playwright, Browser browser) implements AutoCloseable {
    private static final List<String> FLAGS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private static final List<String> PLACES =
            List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/snap/bin/chromium");

    /** Where it is installed; empty where it is not. */
    static Optional<Path> installed() {
        return Stream.concat(Optional.ofNullable(System.getenv("CHROMIUM")).stream(), PLACES.stream())
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }

    static Chromium start(Path program) {
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        return new Chromium(
                playwright,
                playwright
                        .chromium()
                        .launch(new LaunchOptions().setExecutablePath(program).setArgs(FLAGS)));
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
