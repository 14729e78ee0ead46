package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import ribmark.contentfiles.ContentProblem;

/** A message says what is wrong in one short sentence, why it matters at the block and what to do, and blames nobody. */
class MessageShapeTest {

    private static final List<String> BANNED =
            List.of("invalid", "illegal", "forbidden", "error", "please", "sorry", "oops", "null pointer", "exception");

    @Test
    void every_message_stands_alone_and_says_what_to_do() {
        for (Seeds.Seed seed : Seeds.ALL) {
            for (ContentProblem problem : seed.check().problems()) {
                assertThat(problem.headline())
                        .hasSizeLessThanOrEqualTo(100)
                        .endsWith(".")
                        .matches("(?s)[A-Z“].*");
                assertThat(problem.why()).isNotBlank();
                assertThat(problem.help()).isNotBlank().matches("(?s)[A-Z“].*");
                String all = (problem.headline() + problem.why() + problem.help()).toLowerCase(Locale.ROOT);
                assertThat(BANNED.stream().filter(all::contains)).as(all).isEmpty();
            }
        }
    }

    @Test
    void the_text_fits_eighty_columns_and_shows_line_and_wave() {
        for (Seeds.Seed seed : Seeds.ALL) {
            String text = CheckText.of(seed.check());
            assertThat(text.lines().filter(line -> line.length() > 80)).as(text).isEmpty();
            assertThat(text).contains("At the block: ", "Do: ", "~", seed.code());
        }
    }

    @Test
    void a_message_reads_as_the_layout_says() {
        String text = CheckText.of(SmallCollege.sound()
                .with("content/kid/back.yaml", "needs: [front-off]", "needs: [front-of]")
                .check());
        assertThat(text).isEqualTo("""
                        content/kid/back.yaml, line 11, column 13                                   C021
                        There is no step “front-of”.
                              needs: [front-of]
                                      ~~~~~~~~
                        Its nearest stands in content/kid/front.yaml, line 62.
                        At the block: the step would wait for something that never comes.
                        Do: Did you mean “front-off”?

                        One problem.
                        """);
    }
}
