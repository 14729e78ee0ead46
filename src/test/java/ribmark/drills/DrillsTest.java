package ribmark.drills;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Joint;
import ribmark.curriculum.Curriculum;
import ribmark.proof.ContentInUse;

/** Made questions: one right answer, proven another way; ten thousand with {@code -Ddrills=10000}. */
class DrillsTest {

    private static final int ROUNDS = Integer.getInteger("drills", 500);
    private static final long SEED = Long.getLong("seed", 20261125L);

    private final Curriculum curriculum = ContentInUse.read(Optional.empty()).curriculum();
    private final Drills drills = new Drills(curriculum);
    private final Reproof reproof = new Reproof(curriculum);

    @Test
    void every_made_question_has_just_one_right_answer() {
        Map<DrillKind, Integer> made = new EnumMap<>(DrillKind.class);
        for (long seed = SEED; seed < SEED + ROUNDS; seed++) {
            Drill drill = drills.any(seed);
            made.merge(drill.kind(), 1, Integer::sum);
            assertThat(right(drill)).as("seed " + seed + ", " + drill).isEqualTo(List.of(drill.right()));
            if (drill.kind() == DrillKind.NAME_BONE) {
                assertThat(reproof.fitting(drill))
                        .as("seed " + seed + ", " + drill)
                        .isOne();
            }
        }
        System.out.println("drills: " + ROUNDS + " questions from seed " + SEED + ", " + made);
        assertThat(made).containsOnlyKeys(DrillKind.values());
    }

    @Test
    void a_rib_is_not_given_away_by_the_cartilage_of_its_own_number() {
        for (long seed = SEED; seed < SEED + ROUNDS; seed++) {
            Drill drill = drills.any(seed);
            String right = drill.choices().get(drill.right()).id();
            if (drill.kind() == DrillKind.NAME_BONE && right.matches("R\\d+[LR]")) {
                assertThat(drill.given()).as("seed " + seed).doesNotContain("CC" + right.substring(1));
            }
        }
    }

    private List<Integer> right(Drill drill) {
        return IntStream.range(0, drill.choices().size())
                .filter(at -> reproof.isRight(drill, drill.choices().get(at)))
                .boxed()
                .toList();
    }

    @Test
    void every_choice_reads_differently_and_teaches_in_words() {
        Set<String> ids = Stream.concat(
                        curriculum.skeleton().bones().stream().map(Bone::id),
                        curriculum.skeleton().joints().stream().map(Joint::id))
                .collect(Collectors.toSet());
        for (long seed = SEED; seed < SEED + ROUNDS; seed++) {
            Drill drill = drills.any(seed);
            List<String> words =
                    drill.choices().stream().map(Drill.Choice::words).toList();
            assertThat(words)
                    .as("seed " + seed + ", " + drill)
                    .hasSizeGreaterThan(2)
                    .doesNotHaveDuplicates();
            for (Drill.Choice choice : drill.choices()) {
                assertThat(choice.teaches()).as("seed " + seed).endsWith(".").hasSizeGreaterThan(12);
                assertThat(tokens(drill.ask() + " " + choice.words() + " " + choice.teaches()))
                        .as("seed " + seed + ", " + drill)
                        .doesNotContainAnyElementsOf(ids);
            }
        }
    }

    private static List<String> tokens(String text) {
        return Arrays.asList(text.split("[^A-Za-z0-9-]+"));
    }

    @Test
    void the_same_seed_makes_the_same_question_and_each_subject_can_be_asked() {
        for (DrillKind kind : DrillKind.values()) {
            List<Subject> subjects = drills.subjects(kind);
            assertThat(subjects).as(kind.word()).hasSizeGreaterThan(3);
            for (Subject subject : subjects) {
                Drill first = drills.make(kind, subject.id(), SEED);
                assertThat(drills.make(kind, subject.id(), SEED)).isEqualTo(first);
                assertThat(curriculum.breakdown().step(subject.step())).isPresent();
            }
        }
    }
}
