package ribmark.progress;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import ribmark.basics.Words;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Stage;
import ribmark.signing.ApprenticeRecord;
import ribmark.signing.Standings;

/** Where several apprentices stand today, one beside the other. */
public record GroupProgress(Breakdown breakdown, List<Progress> people, String today) {

    /** Keeps a copy, by name. */
    public GroupProgress {
        people = List.copyOf(people);
    }

    /** Derives it today. */
    public static GroupProgress of(List<ApprenticeRecord> records, Standings standings) {
        return new GroupProgress(
                standings.curriculum().breakdown(),
                records.stream().map(record -> Progress.of(record, standings)).toList(),
                Words.day(standings.today()));
    }

    /** One row a person. */
    public List<PersonRow> rows() {
        return people.stream().map(person -> PersonRow.of(person, breakdown)).toList();
    }

    /** How many, of what, until when. */
    public String lead() {
        return Words.capital(Words.count(people.size(), "apprentice", "apprentices")) + ", "
                + Words.count(breakdown.steps().size(), "step", "steps") + ", up to " + today + ".";
    }

    /** How many steps wait for a signature, in bold. */
    public String waiting() {
        return Words.capital(Words.count(toSign(), "step", "steps"));
    }

    /** The rest of that sentence. */
    public String waitWords() {
        return toSign() == 1 ? "waits for a signature." : "wait for a signature.";
    }

    /** The stages in the order worked, as they stand above the strips. */
    public String stagesInWords() {
        return Words.capital(breakdown.stages().stream()
                .map(stage -> stage.title().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", ")));
    }

    /** What the count is of. */
    public String ofSteps() {
        return "signed off, of\u00a0" + breakdown.steps().size();
    }

    /** Who stands where on the steps of a stage. */
    public Where where(Stage stage) {
        return Where.of(stage, people);
    }

    private int toSign() {
        return people.stream().mapToInt(person -> person.record().toSign()).sum();
    }
}
