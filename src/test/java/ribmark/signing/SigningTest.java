package ribmark.signing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.competence.EvidenceRule;
import ribmark.competence.Mark;
import ribmark.competence.SheetEvidence;
import ribmark.competence.Standing;
import ribmark.competence.StepSignedOff;
import ribmark.curriculum.Step;
import ribmark.people.Acting;
import ribmark.people.Person;
import ribmark.proof.ContentInUse;
import ribmark.web.Role;

/** S-46: whatever happens in whatever order, a signature is allowed just when a second, plainer working of the rule says so. */
class SigningTest {

    private static final int ORDERS = 10_000;
    private static final LocalDate FIRST = LocalDate.of(2026, 9, 1);

    private final List<Step> steps =
            ContentInUse.read(Optional.empty()).curriculum().breakdown().steps();
    private final Person ada = person("Ada", Role.APPRENTICE, Role.ASSESSOR);
    private final List<Person> assessors = List.of(ada, person("Maeve", Role.ASSESSOR), person("Osric", Role.ASSESSOR));
    private final EvidenceRule rule = new EvidenceRule(3, 3, 2, 180, "ours", FIRST);

    /** What has happened so far to one step of Ada's. */
    private static final class Story {
        final List<SheetEvidence> sheets = new ArrayList<>();
        final List<StepSignedOff> signed = new ArrayList<>();
        LocalDate today = FIRST;
        long sequence;
        int allowed;
    }

    @Test
    void nobody_signs_for_themselves_or_without_enough_evidence_in_any_order() {
        Random random = new Random(46);
        int allowed = 0;
        for (int order = 0; order < ORDERS; order++) {
            Step step = steps.get(random.nextInt(steps.size()));
            Story story = new Story();
            for (int happening = 0; happening < 12; happening++) {
                happen(story, step, random);
            }
            allowed += story.allowed;
        }
        assertThat(allowed).as("signatures that were allowed at all").isGreaterThan(200);
    }

    private void happen(Story story, Step step, Random random) {
        story.sequence++;
        int what = random.nextInt(20);
        if (what < 14) {
            story.sheets.add(sheet(story, step, random));
        } else if (what < 18) {
            sign(story, step, assessors.get(random.nextInt(assessors.size())));
        } else if (what < 19) {
            story.signed.replaceAll(s -> new StepSignedOff(s.id(), s.sequence(), s.day(), true));
        } else {
            story.today = story.today.plusDays(random.nextInt(200));
        }
    }

    private void sign(Story story, Step step, Person who) {
        StepRecord record = new StepRecord(
                ada,
                step,
                Standing.derivedFrom(story.sheets, story.signed, rule, step.eachSide(), story.today),
                List.of(),
                List.of());
        boolean allowed = isAllowed(record, who);
        assertThat(allowed).as("%s after %s", who.name(), story.sheets).isEqualTo(plainly(story, step, who));
        if (allowed) {
            story.allowed++;
            story.signed.add(new StepSignedOff(UUID.randomUUID().toString(), story.sequence, story.today, false));
        }
    }

    private static boolean isAllowed(StepRecord record, Person who) {
        try {
            Signing.mustBeAllowed(record, new Acting(who, Role.ASSESSOR), ZoneOffset.UTC);
            return true;
        } catch (Refused no) {
            assertThat(no.getMessage()).endsWith(".");
            return false;
        }
    }

    /** The rule once more, as a person would work it out with a finger on the list. */
    private boolean plainly(Story story, Step step, Person who) {
        List<SheetEvidence> counting = new ArrayList<>();
        for (SheetEvidence sheet : story.sheets) {
            Set<Mark> marks = new HashSet<>(sheet.marks().values());
            if (marks.contains(Mark.NOT_YET) || marks.contains(Mark.STOPPED)) {
                counting.clear();
            } else if (marks.equals(Set.of(Mark.UNAIDED))) {
                counting.add(sheet);
            }
        }
        boolean enough = counting.size() >= 3
                && counting.stream().map(SheetEvidence::carcase).distinct().count() >= 3
                && counting.stream().map(SheetEvidence::assessor).distinct().count() >= 2
                && recent(counting, story)
                && (!step.eachSide() || sides(counting).containsAll(Set.of(Side.LEFT, Side.RIGHT)));
        boolean watched =
                counting.stream().anyMatch(s -> s.assessor().equals(who.id().toString()));
        return enough && watched && !who.equals(ada) && !holds(story);
    }

    private static boolean holds(Story story) {
        return story.signed.stream()
                .filter(s -> !s.withdrawn())
                .reduce((older, newer) -> newer)
                .filter(s -> recent(story.sheets, story))
                .filter(s -> story.sheets.stream()
                        .noneMatch(sheet -> sheet.sequence() > s.sequence()
                                && (sheet.marks().containsValue(Mark.NOT_YET)
                                        || sheet.marks().containsValue(Mark.STOPPED))))
                .isPresent();
    }

    private static boolean recent(List<SheetEvidence> sheets, Story story) {
        return sheets.stream().anyMatch(s -> ChronoUnit.DAYS.between(s.closedOn(), story.today) <= 180);
    }

    private static Set<Side> sides(List<SheetEvidence> sheets) {
        return sheets.stream().flatMap(s -> s.marks().keySet().stream()).collect(Collectors.toSet());
    }

    private SheetEvidence sheet(Story story, Step step, Random random) {
        Person by = assessors.get(1 + random.nextInt(2));
        int lamb = 20 + random.nextInt(5);
        Map<Side, Mark> marks = new EnumMap<>(Side.class);
        for (Side side : step.sides()) {
            if (marks.isEmpty() || random.nextInt(3) > 0) {
                int mark = random.nextInt(12);
                marks.put(side, mark < 9 ? Mark.UNAIDED : mark < 11 ? Mark.PROMPTED : Mark.NOT_YET);
            }
        }
        return new SheetEvidence(
                UUID.randomUUID().toString(),
                "carcase " + lamb,
                "lamb " + lamb,
                by.id().toString(),
                by.name(),
                story.today,
                story.sequence,
                marks);
    }

    private static Person person(String name, Role... roles) {
        return new Person(UUID.randomUUID(), name, Set.of(roles), false);
    }
}
