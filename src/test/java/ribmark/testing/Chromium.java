package ribmark.testing;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real browser with a window of a known size; where there is none, tests that need it are skipped and say so. */
public final class Chromium implements Reader {

    /** The three sizes pages are made for. */
    public static final List<Dimension> SIZES =
            List.of(new Dimension(1024, 768), new Dimension(768, 1024), new Dimension(390, 844));

    private static final Path BROWSER = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

    private static final String FOCUSED = "const e = document.activeElement;"
            + "return (e.innerText || e.labels && e.labels[0] && e.labels[0].innerText || '').replace(/\\s+/g, ' ').trim();";

    private final ChromeDriver driver;
    private final String address;

    private Chromium(String address, boolean scripts) {
        this.address = address;
        ChromeOptions options = new ChromeOptions();
        options.setBinary(BROWSER.toString());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage",
                "--hide-scrollbars");
        if (!scripts) {
            options.setExperimentalOption("prefs", Map.of("profile.managed_default_content_settings.javascript", 2));
        }
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .usingAnyFreePort()
                .build();
        driver = new ChromeDriver(service, options);
        driver.manage().timeouts().pageLoadTimeout(Duration.ofSeconds(30));
    }

    /** A browser for this program. On the build machine a missing browser is a failure, elsewhere the test is skipped. */
    public static Chromium at(String address) {
        return start(address, true);
    }

    /** The same with scripts switched off. */
    public static Chromium withoutScripts(String address) {
        return start(address, false);
    }

    private static Chromium start(String address, boolean scripts) {
        boolean there = Files.isExecutable(BROWSER) && Files.isExecutable(DRIVER);
        if (!there && "true".equals(System.getenv("CI"))) {
            throw new AssertionError("The build machine has no Chromium at " + BROWSER + " and " + DRIVER);
        }
        assumeTrue(there, "skipped: no Chromium at " + BROWSER + " with its driver at " + DRIVER);
        return new Chromium(address, scripts);
    }

    /** Makes the page this size: what a person sees, without the browser's own edges. */
    public Chromium size(Dimension size) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", size.width, "height", size.height, "deviceScaleFactor", 1, "mobile", false));
        return this;
    }

    @Override
    public Chromium open(String path) {
        driver.get(address + path);
        return this;
    }

    @Override
    public Chromium signIn(String name, String password) {
        Reader.super.signIn(name, password);
        return this;
    }

    /** A day is put into its field whole, because how it is typed depends on the country of the browser. */
    @Override
    public Chromium type(String field, String text) {
        WebElement box = driver.findElement(By.name(field));
        if ("date".equals(box.getAttribute("type"))) {
            ask("arguments[0].value = arguments[1]", box, text);
            return this;
        }
        box.clear();
        box.sendKeys(text);
        return this;
    }

    @Override
    public Chromium choose(String field, String value) {
        String named = "[name='" + field + "']";
        driver.findElement(
                        By.cssSelector(named + "[value='" + value + "'], " + named + " option[value='" + value + "']"))
                .click();
        return this;
    }

    /** Waits for the next page. */
    @Override
    public Chromium press(String words) {
        WebElement pressed = driver.findElements(By.cssSelector("button, a[href]")).stream()
                .filter(e ->
                        e.isDisplayed() && e.getText().replace('\u00a0', ' ').startsWith(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("Nothing to press says “" + words + "” at " + where()));
        press(pressed);
        return this;
    }

    /** Presses what was found, and waits for the next page. */
    public void press(WebElement pressed) {
        WebElement page = driver.findElement(By.tagName("html"));
        pressed.click();
        new WebDriverWait(driver, Duration.ofSeconds(10)).until(nothing -> isGone(page));
    }

    private static boolean isGone(WebElement page) {
        try {
            page.isEnabled();
            return false;
        } catch (WebDriverException left) {
            return true;
        }
    }

    @Override
    public String heading() {
        return driver.findElement(By.tagName("h1")).getText().replace('\u00a0', ' ');
    }

    @Override
    public String text() {
        return driver.findElement(By.tagName("body")).getText().replaceAll("[\\s\u00a0]+", " ");
    }

    /** The address it is at. */
    public String where() {
        return driver.getCurrentUrl();
    }

    /** Presses Tab until the focus is on something whose words or name begin so, at most so many times. */
    public Chromium tabTo(String words, int most) {
        for (int stop = 1; stop <= most; stop++) {
            key(Keys.TAB);
            if (String.valueOf(ask(FOCUSED)).startsWith(words)) {
                return this;
            }
        }
        throw new AssertionError("“" + words + "” is not within " + most + " stops at " + where());
    }

    /** Presses keys where the focus is. */
    public Chromium key(CharSequence... keys) {
        driver.switchTo().activeElement().sendKeys(keys);
        return this;
    }

    /** Presses a key that leads to another page, and waits for it. */
    public Chromium keyAway(CharSequence key) {
        WebElement page = driver.findElement(By.tagName("html"));
        key(key);
        new WebDriverWait(driver, Duration.ofSeconds(10)).until(nothing -> isGone(page));
        return this;
    }

    @Override
    public String at() {
        return where().substring(address.length());
    }

    /** What a script says of the page. */
    public Object ask(String script, Object... given) {
        return driver.executeScript(script, given);
    }

    /** The elements a selector finds. */
    public List<WebElement> all(String selector) {
        return driver.findElements(By.cssSelector(selector));
    }

    /** Whether the page is wider than the window. */
    public boolean scrollsSideways() {
        return (Boolean) ask("return document.documentElement.scrollWidth > window.innerWidth");
    }

    /** What axe-core finds wrong with the page, each as its rule and where. */
    @SuppressWarnings("unchecked")
    public List<String> violations() {
        ask(AxeScript.TEXT);
        return (List<String>) driver.executeAsyncScript(
                "const done = arguments[0]; axe.run(document).then(r => done(r.violations.map("
                        + "v => v.id + ': ' + v.nodes.map(n => n.target.join(' ')).slice(0, 3).join(', '))));");
    }

    /** Takes a picture of the page. */
    public void picture(Path file) {
        try {
            Files.createDirectories(file.getParent());
            Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Override
    public void close() {
        driver.quit();
    }

    private static final class AxeScript {

        static final String TEXT = read();

        private static String read() {
            for (String name : List.of("axe.min.js", "META-INF/resources/webjars/axe-core/axe.min.js", "axe.js")) {
                try (InputStream in = Chromium.class.getClassLoader().getResourceAsStream(name)) {
                    if (in != null) {
                        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
                    }
                } catch (IOException broken) {
                    throw new UncheckedIOException(broken);
                }
            }
            throw new AssertionError("axe-core is not on the class path");
        }
    }
}
