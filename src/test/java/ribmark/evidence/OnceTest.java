package ribmark.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import ribmark.testing.Browser;
import ribmark.testing.Page;
import ribmark.testing.TestApp;
import ribmark.web.Role;

/** S-10 and S-11: what a form asks for is done once, however often and in whatever order it is sent. */
class OnceTest {

    private final TestApp app = new TestApp();
    private Browser petra;

    @BeforeEach
    void signIn() {
        petra = app.as("Petra", Role.ADMINISTRATOR);
    }

    @AfterEach
    void stop() {
        app.close();
    }

    private List<Map.Entry<String, String>> fields(String name) {
        Page form = petra.open("/people/new").fill("name", name).choose("roles", "apprentice");
        return form.fieldsOf("Add them");
    }

    private long called(String name) {
        return app.app.people().all().stream()
                .filter(p -> p.name().equals(name))
                .count();
    }

    @Test
    void twenty_identical_posts_at_once_keep_one_and_all_get_the_same_answer() throws Exception {
        List<Map.Entry<String, String>> fields = fields("Ada");
        ExecutorService threads = Executors.newFixedThreadPool(20);
        List<Callable<HttpResponse<String>>> posts = new ArrayList<>();
        for (int n = 0; n < 20; n++) {
            posts.add(() -> petra.rawPost("/people", fields));
        }
        List<String> answers = new ArrayList<>();
        for (Future<HttpResponse<String>> answer : threads.invokeAll(posts)) {
            answers.add(answer.get().statusCode() + " "
                    + answer.get().headers().firstValue("Location").orElse(""));
        }
        threads.shutdown();

        assertThat(answers.stream().distinct()).hasSize(1);
        assertThat(answers.get(0)).startsWith("303 /people/");
        assertThat(called("Ada")).isEqualTo(1);
    }

    @Test
    void a_key_used_for_something_else_is_refused_and_nothing_is_kept() {
        List<Map.Entry<String, String>> first = fields("Ada");
        petra.rawPost("/people", first);
        List<Map.Entry<String, String>> other = new ArrayList<>(first);
        other.replaceAll(f -> f.getKey().equals("name") ? Map.entry("name", "Bram") : f);

        assertThat(petra.rawPost("/people", other).statusCode()).isEqualTo(422);
        assertThat(called("Bram")).isZero();
    }

    @Test
    void a_post_without_a_key_is_refused() {
        List<Map.Entry<String, String>> fields = new ArrayList<>(fields("Ada"));
        fields.removeIf(f -> f.getKey().equals("key"));

        assertThat(petra.rawPost("/people", fields).statusCode()).isEqualTo(400);
        fields.add(Map.entry("key", "not a key"));
        assertThat(petra.rawPost("/people", fields).statusCode()).isEqualTo(400);
        assertThat(called("Ada")).isZero();
    }

    @Test
    void a_refused_form_may_be_put_right_under_the_same_key() {
        List<Map.Entry<String, String>> wrong = new ArrayList<>(fields("x"));
        wrong.replaceAll(f -> f.getKey().equals("name") ? Map.entry("name", "") : f);
        List<Map.Entry<String, String>> right = new ArrayList<>(wrong);
        right.replaceAll(f -> f.getKey().equals("name") ? Map.entry("name", "Ada") : f);

        assertThat(petra.rawPost("/people", wrong).statusCode()).isEqualTo(422);
        assertThat(petra.rawPost("/people", right).statusCode()).isEqualTo(303);
        assertThat(called("Ada")).isEqualTo(1);
    }

    /** Retries, duplicates, reorderings and lost answers, drawn at random; the seed is printed on failure. */
    @Test
    void every_intent_is_kept_once_under_random_schedules() {
        long seed = System.nanoTime();
        Random random = new Random(seed);
        int intents = Integer.getInteger("drills", 30);
        List<List<Map.Entry<String, String>>> sent = new ArrayList<>();
        for (int n = 0; n < intents; n++) {
            List<Map.Entry<String, String>> fields = fields("Person " + n);
            int copies = 1 + random.nextInt(3);
            for (int copy = 0; copy < copies; copy++) {
                sent.add(random.nextInt(sent.size() + 1), fields);
            }
        }
        sent.forEach(fields -> assertThat(petra.rawPost("/people", fields).statusCode())
                .as("seed " + seed)
                .isEqualTo(303));
        for (int n = 0; n < intents; n++) {
            assertThat(called("Person " + n)).as("seed %d, person %d", seed, n).isEqualTo(1);
        }
    }

    @Test
    void every_keyed_form_has_a_key_of_its_own() {
        Page people = petra.open("/people").follow("Petra");
        List<String> keys = people.all("main form input[name=key]").stream()
                .map(k -> k.attr("value"))
                .toList();

        assertThat(keys).isNotEmpty().doesNotHaveDuplicates().allSatisfy(UUID::fromString);
    }
}
