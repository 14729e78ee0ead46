package ribmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Piece;
import ribmark.basics.Side;
import ribmark.contentfiles.ContentFiles;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.RestsOn;
import ribmark.curriculum.Step;
import ribmark.proof.Check;
import ribmark.proof.CheckText;
import ribmark.scoring.ReferenceTable;

/** What comes with the program is sound, and the promises of the check hold when counted in another way. */
class ContentTest {

    private static final Check CHECK = Check.of(ContentFiles.ours());
    private final Curriculum lamb = CHECK.curriculum().orElseThrow(() -> new AssertionError(CheckText.of(CHECK)));

    @Test
    void every_file_is_sound() {
        assertThat(CHECK.problems()).as(CheckText.of(CHECK)).isEmpty();
    }

    @Test
    void thirty_steps_stand_in_six_stages() {
        assertThat(lamb.breakdown().stages()).hasSize(6);
        assertThat(lamb.breakdown().steps())
                .extracting(Step::number)
                .hasSize(30)
                .isSorted()
                .doesNotHaveDuplicates();
    }

    @Test
    void every_landmark_names_bones_and_joints_that_are_there() {
        Set<String> bones = lamb.skeleton().bones().stream().map(Bone::id).collect(Collectors.toSet());
        lamb.landmarks().forEach(landmark -> {
            assertThat(bones).as(landmark.id()).containsAll(landmark.bones());
            landmark.joints().forEach(joint -> {
                var found = lamb.skeleton().joint(joint);
                assertThat(found).as(joint).isPresent();
                assertThat(bones).contains(found.get().boneA(), found.get().boneB());
            });
        });
        lamb.breakdown().steps().forEach(step -> {
            assertThat(bones).as(step.id()).containsAll(step.landmark().bones());
            step.landmark()
                    .uses()
                    .forEach(id -> assertThat(lamb.landmark(id)).as(id).isPresent());
        });
    }

    @Test
    void every_step_can_be_reached_by_doing_what_it_needs() {
        Set<String> done = new HashSet<>();
        boolean grew = true;
        while (grew) {
            grew = done.addAll(lamb.breakdown().steps().stream()
                    .filter(step -> done.containsAll(step.needs()))
                    .map(Step::id)
                    .toList());
        }
        assertThat(done).hasSize(lamb.breakdown().steps().size());
    }

    /** Only needs bind: in whatever order they allow, the same pieces are left. */
    @Test
    void any_order_that_the_needs_allow_ends_in_the_same_pieces() {
        Set<Set<String>> advised = pieces(lamb.breakdown().steps());
        Random random = new Random(20261125);
        for (int round = 0; round < 20; round++) {
            List<Step> order = shuffled(random);
            assertThat(pieces(order))
                    .as(order.stream().map(Step::id).toList().toString())
                    .isEqualTo(advised);
        }
    }

    private List<Step> shuffled(Random random) {
        List<Step> left = new ArrayList<>(lamb.breakdown().steps());
        List<Step> order = new ArrayList<>();
        Set<String> done = new HashSet<>();
        while (!left.isEmpty()) {
            List<Step> ready =
                    left.stream().filter(step -> done.containsAll(step.needs())).toList();
            Step next = ready.get(random.nextInt(ready.size()));
            left.remove(next);
            order.add(next);
            done.add(next.id());
        }
        return order;
    }

    private Set<Set<String>> pieces(List<Step> order) {
        Animal now = Animal.whole(lamb.skeleton());
        for (Step step : order) {
            now = now.after(step.operations());
        }
        return now.pieces().stream().map(Piece::names).map(Set::copyOf).collect(Collectors.toSet());
    }

    @Test
    void every_bone_is_in_exactly_one_final_cut() {
        List<String> held = new ArrayList<>();
        CHECK.proofs().get(0).pieces().forEach(piece -> {
            assertThat(lamb.cut(piece.cut()).orElseThrow().isFinal())
                    .as(piece.cut())
                    .isTrue();
            held.addAll(piece.holds());
        });
        assertThat(held).doesNotHaveDuplicates();
        assertThat(held.stream().map(part -> part.replaceAll("\\..*", "")).collect(Collectors.toSet()))
                .hasSize(lamb.skeleton().bones().size());
    }

    @Test
    void left_and_right_of_a_cut_mirror_each_other() {
        for (Cut cut : lamb.cuts()) {
            if (cut.each()) {
                List<String> mirrored = cut.bones(Side.LEFT).stream()
                        .map(part -> part.replace(".left", ".right").replaceAll("L(\\.|$)", "R$1"))
                        .toList();
                assertThat(cut.bones(Side.RIGHT)).as(cut.id()).isEqualTo(mirrored);
            }
        }
    }

    @Test
    void every_reference_table_adds_up_to_a_hundred() {
        assertThat(lamb.tables()).hasSize(3);
        for (ReferenceTable table : lamb.tables()) {
            double sum = table.rows().stream()
                    .mapToDouble(ReferenceTable.Row::expected)
                    .sum();
            assertThat(sum).as(table.id()).isBetween(99.95, 100.05);
            table.rows()
                    .forEach(row -> assertThat(row.expected() - 2 * row.sd())
                            .as(row.cut())
                            .isPositive());
        }
    }

    @Test
    void every_figure_and_claim_names_a_source_and_how_it_is_known() {
        List<RestsOn> all = new ArrayList<>();
        lamb.breakdown().steps().forEach(step -> {
            assertThat(step.restsOn()).as(step.id()).isNotEmpty();
            all.addAll(step.restsOn());
            step.questions().forEach(question -> all.addAll(question.restsOn()));
            step.criteria().forEach(criterion -> all.addAll(criterion.restsOn()));
        });
        lamb.cuts().forEach(cut -> all.addAll(cut.restsOn()));
        lamb.landmarks().forEach(landmark -> all.addAll(landmark.restsOn()));
        lamb.terms().forEach(term -> all.addAll(term.restsOn()));
        assertThat(all).hasSizeGreaterThan(300).allSatisfy(claim -> {
            assertThat(lamb.source(claim.source())).as(claim.fact()).isPresent();
            assertThat(claim.basis()).isNotBlank();
        });
        lamb.tables()
                .forEach(table ->
                        table.rows().forEach(row -> assertThat(row.grounds()).isNotEmpty()));
        lamb.trim().forEach(measure -> assertThat(measure.grounds()).isNotEmpty());
    }

    @Test
    void every_step_is_taught_watched_and_asked_about() {
        for (Step step : lamb.breakdown().steps()) {
            assertThat(step.questions()).as(step.id()).isNotEmpty();
            assertThat(step.criteria()).as(step.id()).isNotEmpty();
            assertThat(step.faults()).as(step.id()).isNotEmpty();
            assertThat(step.good()).as(step.id()).isNotEmpty();
            assertThat(step.how()).as(step.id()).isNotBlank();
            assertThat(step.caution().text()).as(step.id()).isNotBlank();
        }
    }

    @Test
    void the_version_is_the_same_in_every_language_and_zone() {
        Locale language = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG", "en-GB")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
                assertThat(ContentFiles.ours().version()).isEqualTo(CHECK.version());
                assertThat(Check.of(ContentFiles.ours()).ok()).as(tag).isTrue();
            }
        } finally {
            Locale.setDefault(language);
            TimeZone.setDefault(zone);
        }
    }
}
