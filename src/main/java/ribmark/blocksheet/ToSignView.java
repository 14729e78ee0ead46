package ribmark.blocksheet;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.basics.Words;
import ribmark.people.Acting;

/** What waits for a signature, oldest first, and what one more block sheet can settle. */
public record ToSignView(String lead, List<Part> parts) {

    /** One heap of it. */
    public record Part(String head, String says, String third, String fourth, List<Row> rows) {

        /** The third head in small letters, where a table is folded. */
        public String thirdSmall() {
            return third.toLowerCase(java.util.Locale.ROOT);
        }

        /** The fourth head in small letters, where a table is folded. */
        public String fourthSmall() {
            return fourth.toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** One step of one apprentice. */
    public record Row(String href, String step, String apprentice, String since, String says) {}

    static ToSignView of(List<ApprenticeRecord> records, Acting reader) {
        List<StepRecord> ready = steps(records)
                .filter(step -> step.derived().mayBeSigned())
                .sorted(OLDEST)
                .toList();
        List<StepRecord> mine =
                ready.stream().filter(step -> isFor(step, reader)).toList();
        List<StepRecord> others =
                ready.stream().filter(step -> !isFor(step, reader)).toList();
        List<StepRecord> nearly =
                steps(records).filter(ToSignView::isNear).sorted(OLDEST).toList();
        return new ToSignView(
                lead(mine.size(), others.size()),
                List.of(
                        new Part(
                                "For your name",
                                "You closed at least one of the sheets. Oldest first.",
                                "Ready since",
                                "On what",
                                ready(mine)),
                        new Part(
                                "For others",
                                "These wait for somebody who watched.",
                                "Ready since",
                                "On what",
                                ready(others)),
                        new Part(
                                "Nearly there",
                                "One more block sheet can settle each of these.",
                                "Newest",
                                "Still needed",
                                nearly.stream().map(ToSignView::near).toList())));
    }

    private static final Comparator<StepRecord> OLDEST = Comparator.comparing(
                    (StepRecord step) -> day(step).orElse(LocalDate.MAX))
            .thenComparing(step -> step.apprentice().name())
            .thenComparing(step -> step.step().number());

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
        return Words.capital(Words.count(mine, "step waits", "steps wait")) + " for your name, " + Words.count(others)
                + " for others.";
    }

    private static List<Row> ready(List<StepRecord> steps) {
        return steps.stream()
                .map(step -> row(step, step.readySince(), evidence(step)))
                .toList();
    }

    private static Row near(StepRecord step) {
        String missing = step.derived().missing().orElse("");
        String needed = missing.substring(missing.indexOf(": ") + 1).strip();
        return row(step, step.derived().tally().newest(), needed);
    }

    private static Row row(StepRecord step, Optional<LocalDate> since, String says) {
        return new Row(
                step.address(),
                step.name(),
                step.apprentice().name(),
                since.map(Words::day).orElse(""),
                says);
    }

    private static String evidence(StepRecord step) {
        return Words.count(step.derived().tally().sheets(), "sheet", "sheets") + ": "
                + Words.list(step.derived().tally().carcaseNames()) + ", by "
                + Words.list(step.derived().tally().assessorNames());
    }
}
