package tuttarco.report;

import static org.junit.jupiter.api.Assumptions.abort;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A Chromium without a window, and what it says and asks for while it shows a page from disk. */
final class Browser implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String AXE = "4.14.1";

    /** How long to wait for what must come, seconds: only a browser that hangs takes so long. */
    private static final int PATIENCE_S = 30;

    final ChromeDriver driver;
    private final Path profile;

    private Browser(ChromeDriver driver, Path profile) {
        this.driver = driver;
        this.profile = profile;
    }

    /** A new browser; the test is skipped where the machine has none. */
    static Browser start() throws IOException {
        Optional<Path> chromium = onPath("chromium");
        Optional<Path> chromeDriver = onPath("chromedriver");
        if (chromium.isEmpty() || chromeDriver.isEmpty()) {
            return abort("pages are looked at only where chromium and chromedriver are installed");
        }
        Path profile = Files.createTempDirectory("browser");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium.get().toString());
        options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--hide-scrollbars",
                "--mute-audio",
                "--autoplay-policy=no-user-gesture-required",
                "--user-data-dir=" + profile);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(chromeDriver.get().toFile())
                .usingAnyFreePort()
                .withSilent(true)
                .build();
        ChromeDriver driver = new ChromeDriver(service, options);
        driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(PATIENCE_S));
        return new Browser(driver, profile);
    }

    private static Optional<Path> onPath(String program) {
        return Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Shows a file in a window so wide; what was said and asked for before is forgotten. */
    void show(Path page, int widthPx) {
        size(widthPx);
        saidAndAskedFor();
        driver.get(page.toUri().toString());
    }

    /** A window narrower than 500 px there is not; a view of that width there is. */
    void size(int widthPx) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", widthPx, "height", 800, "deviceScaleFactor", 1, "mobile", false));
    }

    void medium(String medium) {
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", medium));
    }

    void night(boolean dark) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
    }

    /** Whether pages that are shown from now on may run their scripts; tests may ask in any case. */
    void script(boolean runs) {
        driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !runs));
    }

    /** What a script gives back. */
    Object ask(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    /** A list of words that a script gives back. */
    List<String> words(String script, Object... arguments) {
        return ((List<?>) ask(script, arguments)).stream().map(Object::toString).toList();
    }

    void waitUntil(String truth) {
        ask("const end = Date.now() + " + PATIENCE_S * 900
                + "; return new Promise((yes, no) => { const look = () => " + truth
                + " ? yes() : Date.now() > end ? no(new Error('never: ' + " + quoted(truth)
                + ")) : setTimeout(look, 20); look(); })");
    }

    private static String quoted(String text) {
        return JSON.valueToTree(text).toString();
    }

    /** Messages in the console, and addresses loaded that are neither the page nor in it. */
    List<String> saidAndAskedFor() {
        List<String> heard = new ArrayList<>();
        for (LogEntry entry : driver.manage().logs().get(LogType.BROWSER)) {
            heard.add(entry.getMessage());
        }
        for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
            JsonNode message = json(entry.getMessage()).path("message");
            if (message.path("method").asText().equals("Network.requestWillBeSent")) {
                JsonNode request = message.path("params");
                URI url =
                        URI.create(request.path("request").path("url").asText().split(",", 2)[0]);
                boolean page = request.path("type").asText().equals("Document");
                if (!page && !"data".equals(url.getScheme())) {
                    heard.add(url.toString());
                }
            }
        }
        return heard;
    }

    private static JsonNode json(String text) {
        try {
            return JSON.readTree(text);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** What axe-core finds amiss in the page shown, a line each; the test is skipped where npm can't fetch it. */
    List<String> amissByAxe() throws IOException, InterruptedException {
        driver.executeScript(axe());
        Object found = driver.executeAsyncScript("const done = arguments[arguments.length - 1];"
                + "axe.run({resultTypes: ['violations']}).then(r => done(r.violations.map("
                + "v => v.id + ': ' + v.nodes.slice(0, 3).map(n => n.html.slice(0, 200)).join(' | '))),"
                + " e => done(['axe itself: ' + e]))");
        return ((List<?>) found).stream().map(Object::toString).toList();
    }

    private static String axe() throws IOException, InterruptedException {
        Path into = Path.of("target", "axe-core");
        Path script = into.resolve("node_modules/axe-core/axe.min.js");
        if (!Files.exists(script)) {
            Optional<Path> npm = onPath("npm");
            if (npm.isEmpty()) {
                return abort("accessibility is checked only where npm is installed, which fetches axe-core");
            }
            Files.createDirectories(into);
            Process fetch = new ProcessBuilder(
                            npm.get().toString(),
                            "install",
                            "--no-save",
                            "--no-audit",
                            "--ignore-scripts",
                            "--prefix",
                            into.toString(),
                            "axe-core@" + AXE)
                    .redirectErrorStream(true)
                    .redirectOutput(into.resolve("npm.log").toFile())
                    .start();
            if (!fetch.waitFor(PATIENCE_S, TimeUnit.SECONDS) || fetch.exitValue() != 0) {
                fetch.destroy();
                return abort("npm could not fetch axe-core, so accessibility is not checked");
            }
        }
        return Files.readString(script);
    }

    @Override
    public void close() throws IOException {
        driver.quit();
        try (Stream<Path> files = Files.walk(profile)) {
            files.sorted(java.util.Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        }
    }
}
