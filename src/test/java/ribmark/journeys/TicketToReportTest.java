package ribmark.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.function.Supplier;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import ribmark.competence.Mark;
import ribmark.curriculum.Step;
import ribmark.export.CsvFile;
import ribmark.testing.Chromium;
import ribmark.testing.PlainReader;
import ribmark.testing.Reader;
import ribmark.testing.TestApp;
import ribmark.testing.Watched;
import ribmark.web.Role;

/**
 * The main job, from the ticket to the report, as three people: Maeve watches Ada take a lamb apart, Ada reads and answers,
 * Maeve signs a step off, Petra takes the report away. Everybody and every weight is invented.
 */
class TicketToReportTest {

    private static final String LAMB = "lamb 30";

    private final Watched college = new Watched();
    private final TestApp app = college.app;

    @BeforeEach
    void twoLambsWereWatchedBefore() {
        college.group("First year", "Petra", "Ada");
        college.closed("Ada", "Maeve", 27, Watched.READY, Mark.UNAIDED);
        college.closed("Ada", "Osric", 29, Watched.READY, Mark.UNAIDED);
    }

    @AfterEach
    void stop() {
        college.close();
    }

    @Test
    void in_a_real_browser() throws IOException {
        fromTicketToReport(() -> Chromium.at(app.address).size(Chromium.SIZES.get(0)));
    }

    /** U-32. */
    @Test
    void in_a_real_browser_with_scripts_switched_off() throws IOException {
        fromTicketToReport(() -> Chromium.withoutScripts(app.address).size(Chromium.SIZES.get(2)));
    }

    /** U-32, with every page checked on the way. */
    @Test
    void without_scripts_and_with_every_page_checked() throws IOException {
        fromTicketToReport(() -> new PlainReader(app.address));
    }

    private void fromTicketToReport(Supplier<Reader> browsers) throws IOException {
        try (Reader browser = browsers.get()) {
            browser.signIn("Maeve", TestApp.PASSWORD);
            takesInTheLamb(browser);
            opensASheet(browser);
            watches(browser);
            weighs(browser);
            measuresTheTrim(browser);
            closes(browser);
            browser.press("sign out").signIn("Ada", TestApp.PASSWORD);
            readsAndAnswers(browser);
            browser.press("sign out").signIn("Maeve", TestApp.PASSWORD);
            signsOff(browser);
            browser.press("sign out").signIn("Petra", TestApp.PASSWORD);
            takesTheReport(browser);
        }
        assertThat(app.app.verify().holds()).isTrue();
    }

    private static void takesInTheLamb(Reader maeve) {
        maeve.press("Carcases").press("Take in a carcase");
        maeve.type("killed", "2026-11-23")
                .type("killNumber", "0131")
                .type("cameFrom", "Fernside Abattoir")
                .type("batch", "B-47")
                .type("dressing", "kidneys in, skirt out")
                .type("ticketWeight", "20.3")
                .choose("ticketWeighed", "cold")
                .type("weight", "20,12")
                .choose("ownWeighed", "cold")
                .choose("scale", "block")
                .choose("legible", "yes")
                .type("mark", "UK 9107")
                .choose("kidneys", "in")
                .type("meat", "4.6")
                .type("kidney", "2.8")
                .choose("age", "under-12-months")
                .choose("cord", "in")
                .choose("decision", "accept")
                .choose("sure", "yes")
                .press("Record lamb 30");
        assertThat(maeve.heading()).isEqualTo("Lamb 30");
        assertThat(maeve.text()).contains("Accepted by Maeve").contains("20.120 kg cold, kidneys in");
    }

    private void opensASheet(Reader maeve) {
        maeve.press("Open a block sheet on " + LAMB)
                .choose("apprentice", app.person("Ada").id().toString())
                .press("Open a sheet on " + LAMB);
        assertThat(maeve.heading()).isEqualTo("Ada on lamb 30");
    }

    /** One tap a step and side; a reason takes one more. */
    private void watches(Reader maeve) {
        maeve.press("Begin with step 1").press("Unaided").press("Ask").press("Answered right");
        for (String step : List.of("look-over", "ticket", "mark-and-temperature", "decision")) {
            assertThat(maeve.heading()).isEqualTo(step(step).title());
            maeve.press("Unaided");
        }
        maeve.press("Unaided").press("Prompted");
        assertThat(maeve.heading()).isEqualTo(step("fores-cut").title());
        maeve.press("Unaided").press("Not yet");
        assertThat(maeve.heading()).isEqualTo("Not yet: what was seen?");
        maeve.press("Knife rode up onto a rib");
        maeve.press("Stopped").press("Fores dropped");
        assertThat(maeve.heading()).isEqualTo(step("middle-mark").title());
    }

    private static void weighs(Reader maeve) {
        maeve.press("Weigh-up");
        keeps(maeve, "fores.fores.once", "7.310");
        keeps(maeve, "middle.middle-kidneys-in.once", "6.160");
        keeps(maeve, "legs.legs-chump-on.once", "6.580");
        assertThat(maeve.text()).contains("Balanced. The pieces are 0.070").contains("Within. Fores: 7.310 kg");
    }

    private static void keeps(Reader maeve, String piece, String kilograms) {
        maeve.choose("piece", piece).type("weight", kilograms).press("Keep");
    }

    private static void measuresTheTrim(Reader maeve) {
        maeve.press("Ada’s trim").type("trim-fore-rib-count-once", "6").press("Keep what was measured at step 8");
        assertThat(maeve.text()).contains("Within. Ribs in the fore: 6");
    }

    private static void closes(Reader maeve) {
        maeve.press("Today").press("Ada on lamb 30").press("Read it through, then close");
        maeve.type("words-fores-cut-right", "Near the chine, twice.")
                .type("stage-intake", "Everything read and said before the knife was out.")
                .type("stage-wholesale", "Left cut in one stroke; the right rode up.")
                .type("well", "Your outside hand stayed on the neck side.")
                .type("change", "Second person first, then the last strokes.")
                .type("next", "Both fores again, with Osric.")
                .type("day", "2026-11-27")
                .type("password", TestApp.PASSWORD)
                .press("Close Ada’s sheet on lamb 30");
        assertThat(maeve.heading()).isEqualTo("Ada’s feedback on lamb 30");
    }

    private static void readsAndAnswers(Reader ada) {
        assertThat(ada.heading()).isEqualTo("Ada, this is where you are");
        ada.press("Feedback on lamb 30");
        assertThat(ada.text())
                .contains("Knife rode up onto a rib. Near the chine, twice.")
                .contains("Fores dropped")
                .contains("Fores: 7.310 kg")
                .contains("Next, by 27 Nov 2026");
        ada.choose("agrees", "partly")
                .type("words", "The second person had let go.")
                .press("Send my answer");
        assertThat(ada.text()).contains("The second person had let go.");
    }

    private void signsOff(Reader maeve) {
        maeve.press("To sign").press("1 " + step(Watched.READY).title());
        assertThat(maeve.heading()).startsWith("Ready to sign:");
        maeve.type("convinced", "Three mornings running, nothing missing.")
                .type("password", TestApp.PASSWORD)
                .press("Sign step 1 off for Ada");
        assertThat(maeve.heading()).startsWith("Signed off:");
    }

    private void takesTheReport(Reader petra) throws IOException {
        assertThat(petra.heading()).isEqualTo("First year");
        petra.press("Ada");
        assertThat(petra.heading()).isEqualTo("Where does Ada stand?");
        petra.press("Progress report");
        assertThat(petra.text()).contains("signed off").contains("Maeve, 25 Nov 2026");
        petra.press("Take it as CSV");
        assertThat(petra.heading()).isEqualTo("The report is ready to take");
        checkReport(app.as("Petra", Role.TUTOR).get(petra.at() + "/file").body());
    }

    private void checkReport(String csv) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(csv, format)) {
            assertThat(parser.getHeaderNames()).isEqualTo(CsvFile.COLUMNS);
            List<CSVRecord> rows = parser.getRecords();
            assertThat(rows).hasSameSizeAs(app.app.curriculum().breakdown().steps());
            CSVRecord signed = row(rows, Watched.READY);
            assertThat(signed.get("standing")).isEqualTo("signed off");
            assertThat(signed.get("signed off by")).isEqualTo("Maeve");
            assertThat(signed.get("carcases")).isEqualTo("3");
            assertThat(row(rows, "fores-saw").get("standing")).isEqualTo("practising");
            assertThat(row(rows, "middle-mark").get("standing")).isEqualTo("not started");
        }
    }

    private static CSVRecord row(List<CSVRecord> rows, String step) {
        return rows.stream()
                .filter(row -> row.get("step id").equals(step))
                .findFirst()
                .orElseThrow();
    }

    private Step step(String id) {
        return app.app.curriculum().breakdown().step(id).orElseThrow();
    }
}
