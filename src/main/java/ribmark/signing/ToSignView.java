package ribmark.signing;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.basics.Words;
import ribmark.people.Acting;

/** What waits for a signature, oldest first, and what one more block sheet can settle. */
public record ToSignView(String lead, List<Part> parts, List<Near> near) {

    /** One heap of it. */
    public record Part(String head, String says, List<Row> rows) {}

    /** One step of one apprentice. */
    public record Row(String href, String step, String apprentice, String since, String says) {}

    /** One apprentice with the steps that one more sheet can settle. */
    public record Near(String apprentice, List<Link> steps) {}

    /** A step that leads to its evidence. */
    public record Link(String href, String step) {}

    private static final Comparator<StepRecord> OLDEST = Comparator.comparing(
                    (StepRecord step) -> day(step).orElse(LocalDate.MAX))
            .thenComparing(step -> step.apprentice().name())
            .thenComparing(step -> step.step().number());

    static ToSignView of(List<ApprenticeRecord> records, Acting reader) {
        List<StepRecord> ready = steps(records)
                .filter(step -> step.derived().mayBeSigned())
                .sorted(OLDEST)
                .toList();
        List<StepRecord> mine =
                ready.stream().filter(step -> isFor(step, reader)).toList();
        List<StepRecord> others =
                ready.stream().filter(step -> !isFor(step, reader)).toList();
        List<Part> parts = Stream.of(
                        waiting("For your name", "You closed at least one of the sheets. Oldest first.", mine),
                        waiting("For others", "These wait for somebody who watched. Oldest first.", others))
                .filter(part -> !part.rows().isEmpty())
                .toList();
        List<Near> near = records.stream()
                .map(ToSignView::near)
                .filter(person -> !person.steps().isEmpty())
                .toList();
        return new ToSignView(lead(mine.size(), others.size()), parts, near);
    }

    private static Part waiting(String head, String says, List<StepRecord> steps) {
        return new Part(head, says, steps.stream().map(ToSignView::row).toList());
    }

    private static Optional<LocalDate> day(StepRecord step) {
        return step.readySince().or(() -> step.derived().tally().newest());
    }

    private static Stream<StepRecord> steps(List<ApprenticeRecord> records) {
        return records.stream().flatMap(record -> record.steps().stream());
    }

    private static boolean isFor(StepRecord step, Acting reader) {
        return step.wasWatchedBy(reader.id()) && !step.apprentice().id().equals(reader.id());
    }

    private static boolean isNear(StepRecord step) {
        return step.derived().missingTags().size() == 1
                && !step.derived().tally().counting().isEmpty();
    }

    private static String lead(int mine, int others) {
        if (mine + others == 0) {
            return "Nothing waits today. Close a block sheet, and what is ready stands here.";
        }
        String waits = Words.capital(Words.count(mine, "step waits", "steps wait")) + " for your name";
        if (mine == 0) {
            return "Nothing waits for your name; " + Words.count(others, "step waits", "steps wait") + " for others.";
        }
        return others == 0 ? waits + "." : waits + ", " + Words.count(others) + " for others.";
    }

    private static Near near(ApprenticeRecord record) {
        return new Near(
                record.apprentice().name(),
                record.steps().stream()
                        .filter(ToSignView::isNear)
                        .map(step -> new Link(step.address(), step.name()))
                        .toList());
    }

    private static Row row(StepRecord step) {
        return new Row(
                step.address(),
                step.name(),
                step.apprentice().name(),
                step.readySince().map(Words::day).orElse(""),
                evidence(step));
    }

    private static String evidence(StepRecord step) {
        int carcases = step.derived().tally().carcaseNames().size();
        return Words.count(step.derived().tally().sheets(), "sheet", "sheets") + ", "
                + Words.count(carcases, "carcase", "carcases") + ", "
                + Words.list(step.derived().tally().assessorNames());
    }
}
