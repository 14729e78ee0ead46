package ribmark.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ribmark.contentfiles.Codes;
import ribmark.contentfiles.ContentProblem;
import ribmark.testing.ReadingGrade;

/** Every code explains itself: its bad example is found with that code, its good one stands in a sound file. */
class ExplainTest {

    @Test
    void every_bad_example_is_found_with_its_code() {
        for (Codes.Code code : Codes.all()) {
            Codes.Example example = code.example();
            SmallCollege college = SmallCollege.sound().with(example.file(), example.good(), example.bad());
            SmallCollege spoiled =
                    code.code().equals("C001") ? college.holding(example.file(), example.bad()) : college;
            List<String> found = spoiled.check().problems().stream()
                    .map(ContentProblem::code)
                    .toList();
            assertThat(found).as(code.code()).contains(code.code());
        }
    }

    @Test
    void every_code_is_explained_in_words() {
        for (Codes.Code code : Codes.all()) {
            String explained = CheckText.explain(code.code()).orElseThrow();
            assertThat(explained).contains("At the block", "Not so", "But so");
            assertThat(code.about()).isNotBlank();
            assertThat(code.more()).endsWith(".");
            assertThat(code.why()).endsWith(".");
        }
        assertThat(CheckText.explain("C999")).isEmpty();
    }

    @Test
    void every_code_is_explained_for_somebody_of_fourteen() {
        for (Codes.Code code : Codes.all()) {
            String text = String.join(" ", code.about() + ".", code.why(), code.more());
            assertThat(ReadingGrade.of(text)).as(code.code() + ": " + text).isLessThan(8);
        }
    }

    @Test
    void every_code_has_a_seed() {
        Set<String> seeded = Seeds.ALL.stream().map(Seeds.Seed::code).collect(Collectors.toCollection(TreeSet::new));
        Set<String> known = Codes.all().stream().map(Codes.Code::code).collect(Collectors.toCollection(TreeSet::new));
        known.removeAll(Set.of("C001", "C007", "C043"));
        assertThat(seeded).isEqualTo(known);
    }
}
