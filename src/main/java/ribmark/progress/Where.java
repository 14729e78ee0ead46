package ribmark.progress;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import ribmark.competence.Standing;
import ribmark.curriculum.Stage;
import ribmark.curriculum.Step;
import ribmark.signing.RibStrip;
import ribmark.signing.StepRecord;

/** The steps of one stage with the names of people under the six standings. */
public record Where(String stage, List<Head> standings, List<Row> rows) {

    /** A standing as the head of a column. */
    public record Head(String code, String word) {}

    /** One step. */
    public record Row(String step, List<Cell> cells) {}

    /** Everybody who has this standing on the step. */
    public record Cell(String standing, List<Name> names) {}

    /** A name that leads to the evidence. */
    public record Name(String name, String href) {}

    static Where of(Stage stage, List<Progress> people) {
        return new Where(
                stage.title().toLowerCase(Locale.ROOT),
                Arrays.stream(Standing.values())
                        .map(standing -> new Head(RibStrip.code(standing), standing.word()))
                        .toList(),
                stage.steps().stream().map(step -> row(step, people)).toList());
    }

    private static Row row(Step step, List<Progress> people) {
        List<StepRecord> records =
                people.stream().map(person -> person.record().step(step.id())).toList();
        return new Row(
                step.number() + " " + step.title(),
                Arrays.stream(Standing.values())
                        .map(standing -> cell(standing, records))
                        .toList());
    }

    private static Cell cell(Standing standing, List<StepRecord> records) {
        return new Cell(
                standing.word(),
                records.stream()
                        .filter(record -> record.standing() == standing)
                        .map(record -> new Name(record.apprentice().name(), record.address()))
                        .toList());
    }
}
