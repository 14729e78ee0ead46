package ribmark.export;

import static org.assertj.core.api.Assertions.assertThat;
import static ribmark.testing.TestApp.PASSWORD;
import static ribmark.testing.Watched.LEG_LINE;
import static ribmark.testing.Watched.READY;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import ribmark.competence.Mark;
import ribmark.evidence.Kept;
import ribmark.people.Group;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.Watched;
import ribmark.web.Role;

class ReportPagesTest {

    private final Watched college = new Watched();
    private Group first;

    @BeforeEach
    void two_groups() {
        first = college.group("First year", "Petra", "Ada", "Bram");
        college.group("Second year", "Quill", "Cerys");
        college.enough("Ada", READY);
        college.closed("Ada", "Maeve", 33, LEG_LINE, Mark.UNAIDED);
        String evidence = college.evidence("Ada", READY);
        college.send(
                college.app.as("Maeve", Role.ASSESSOR),
                evidence,
                evidence + "/sign-off",
                Map.of("convinced", "Clean work.", "password", PASSWORD));
    }

    @AfterEach
    void stop() {
        college.close();
    }

    private Browser petra() {
        return college.app.as("Petra", Role.TUTOR);
    }

    private String ofAda() {
        return "/reports/apprentices/" + college.apprentice("Ada").id();
    }

    @Test
    void the_report_shows_every_claim_with_the_sheets_and_assessors_behind_it() {
        Page report = petra().open("/reports").follow("Ada");

        assertThat(report.heading()).isEqualTo("Progress report: Ada");
        assertThat(report.text())
                .contains("Apprentice Ada, First year")
                .contains("Made for Petra, tutor, 25 Nov 2026, 09:00")
                .contains("1 signed off, 1 thin evidence, " + (steps() - 2) + " not started.")
                .contains("A step is signed off by an assessor, never by a count.")
                .contains("These numbers are the college’s own")
                .contains("signed off 3 of 3 3 2 Maeve, 25 Nov 2026 Maeve: lamb 27, lamb 29; Osric: lamb 31")
                .contains("Head of the evidence log")
                .contains(college.app.app.log().head().root())
                .contains(college.app.app.standings().curriculum().version())
                .contains("Assessor Apprentice Tutor");
        assertThat(report.all(".sign-here p")).hasSize(3);
    }

    @Test
    void a_csv_is_taken_read_back_and_recorded() throws IOException {
        Page taken = petra().open(ofAda()).press("Take it as CSV");
        HttpResponse<String> file = petra().get(taken.links().stream()
                .filter(link -> link.endsWith("/file"))
                .findFirst()
                .orElseThrow());

        List<CSVRecord> rows = csv(file.body());
        assertThat(file.headers().firstValue("Content-Type")).contains("text/csv; charset=utf-8; header=present");
        assertThat(file.headers().firstValue("Content-Disposition"))
                .contains("attachment; filename=\"progress-ada-2026-11-25.csv\"");
        assertThat(rows).hasSize(steps());
        assertThat(rows.get(0).get("standing")).isEqualTo("signed off");
        assertThat(rows.get(0).get("signed off by")).isEqualTo("Maeve");
        assertThat(rows.get(0).get("block sheets").split("; ")).hasSize(3);
        assertThat(taken.heading()).isEqualTo("The report is ready to take");
        assertThat(taken.text()).contains(sha256(file.body()));
    }

    /** S-64. */
    @Test
    void the_log_says_who_took_what_with_how_many_rows_and_which_digest() {
        Page taken = petra().open("/reports/groups/" + first.id()).press("Take it as CSV");
        String body = petra().get(taken.path() + "/file").body();

        Kept record = college.app.app.log().newest(1).get(0);

        assertThat(record.kind()).isEqualTo("progress-exported");
        assertThat(record.facts())
                .containsEntry("by_id", college.app.person("Petra").id().toString())
                .containsEntry("covers", "group")
                .containsEntry("subject_id", first.id().toString())
                .containsEntry("format", "csv")
                .containsEntry("row_count", Integer.toString(2 * steps()))
                .containsEntry("digest", sha256(body));
        assertThat(college.app.app.verify().holds()).isTrue();
        assertThat(petra().open("/reports").text()).contains("First year, CSV");
    }

    @Test
    void the_same_form_sent_twice_is_taken_once() {
        Page page = petra().open(ofAda());
        page.press("Take it as JSON");
        page.press("Take it as JSON");

        assertThat(college.app.app.log().all().stream()
                        .filter(kept -> kept.kind().equals("progress-exported")))
                .hasSize(1);
    }

    @Test
    void json_and_page_say_the_same_as_the_csv() throws IOException {
        Browser petra = petra();
        JsonNode json = new ObjectMapper()
                .readTree(petra.get(petra.open(ofAda()).press("Take it as JSON").path() + "/file")
                        .body());
        String html = petra.get(petra.open(ofAda()).press("Take it as a page").path() + "/file")
                .body();

        assertThat(json.path("rows")).hasSize(steps());
        assertThat(json.path("rows").get(0).path("standing").asText()).isEqualTo("signed off");
        assertThat(json.path("rows").get(0).path("blockSheets")).hasSize(3);
        assertThat(html)
                .contains("<h1>Progress report: Ada</h1>")
                .contains("<style>")
                .doesNotContain("<link")
                .doesNotContain("<form")
                .doesNotContain("href=\"/");
    }

    @Test
    void a_tutor_reports_only_on_their_own_groups() {
        Browser quill = college.app.as("Quill", Role.TUTOR);
        Page taken = petra().open(ofAda()).press("Take it as CSV");

        assertThat(quill.open(ofAda()).status()).isEqualTo(404);
        assertThat(quill.open("/reports/groups/" + first.id()).status()).isEqualTo(404);
        assertThat(quill.open(taken.path()).status()).isEqualTo(404);
        assertThat(quill.open(taken.path() + "/file").status()).isEqualTo(404);
        assertThat(college.send(quill, "/reports", ofAda() + "/exports", Map.of("format", "csv"))
                        .status())
                .isEqualTo(404);
        assertThat(quill.open("/reports").text()).contains("Cerys").doesNotContain("Ada");
    }

    @Test
    void an_unknown_form_of_report_is_not_there() {
        assertThat(college.send(petra(), "/reports", ofAda() + "/exports", Map.of("format", "exe"))
                        .status())
                .isEqualTo(404);
    }

    @Test
    void hostile_names_do_no_harm_on_the_page_and_in_the_file() throws IOException {
        String name = "=1+1<script>alert('x')</script>\"../";
        college.group("First year's <b>", "Petra", name);
        Page report =
                petra().open("/reports/apprentices/" + college.apprentice(name).id());
        Page taken = report.press("Take it as CSV");
        HttpResponse<String> file = petra().get(taken.path() + "/file");

        assertThat(report.heading()).isEqualTo("Progress report: " + name);
        assertThat(csv(file.body()).get(0).get("apprentice")).isEqualTo("'" + name);
        assertThat(file.headers().firstValue("Content-Disposition").orElse(""))
                .isEqualTo("attachment; filename=\"progress-1-1-script-alert-x-script-2026-11-25.csv\"");
    }

    private int steps() {
        return college.app.app.standings().curriculum().breakdown().steps().size();
    }

    private static List<CSVRecord> csv(String text) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = format.parse(new StringReader(text))) {
            return parser.getRecords();
        }
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException missing) {
            throw new AssertionError(missing);
        }
    }
}
