package ribmark.blocksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import ribmark.basics.Words;
import ribmark.competence.Mark;
import ribmark.curriculum.Step;

/** A whole sheet as read: its stages with their steps, and what it holds in one sentence. */
public record SheetView(List<Group> stages, String summary) {

    /** A stage with its lines. */
    public record Group(String title, List<StepRow> rows) {}

    /** All steps of the sheet, each leading where the function says. */
    static SheetView all(Walk walk, Function<Step, String> href) {
        return of(walk, href, false);
    }

    /** Only the steps with a mark or an answer. */
    static SheetView marked(Walk walk, Function<Step, String> href) {
        return of(walk, href, true);
    }

    private static SheetView of(Walk walk, Function<Step, String> href, boolean onlyMarked) {
        List<Group> groups = new ArrayList<>();
        walk.stages().forEach(stage -> {
            List<StepRow> rows = walk.steps(stage).stream()
                    .filter(step -> !onlyMarked || isSeen(walk.sheet(), step))
                    .map(step -> StepRow.of(walk.sheet(), step, href.apply(step)))
                    .toList();
            if (!rows.isEmpty()) {
                groups.add(new Group(stage.title(), rows));
            }
        });
        return new SheetView(groups, summary(walk));
    }

    static boolean isSeen(BlockSheet sheet, Step step) {
        return !sheet.marksOf(step.id()).isEmpty();
    }

    /** Seven steps, ten marks: seven unaided, two prompted, one not yet. */
    static String summary(Walk walk) {
        BlockSheet sheet = walk.sheet();
        List<Step> steps = walk.breakdown().steps();
        int seen = (int) steps.stream().filter(step -> isSeen(sheet, step)).count();
        if (seen == 0) {
            return "Nothing is marked yet.";
        }
        int marks = sheet.marks().size();
        String each = java.util.Arrays.stream(Mark.values())
                .map(mark -> counted(sheet, mark))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
        return Words.capital(Words.count(seen, "step", "steps")) + ", " + Words.count(marks, "mark", "marks") + ": "
                + each + "." + unseen(steps.size() - seen);
    }

    private static String counted(BlockSheet sheet, Mark mark) {
        int count = (int) sheet.marks().stream().filter(m -> m.mark() == mark).count();
        return count == 0 ? "" : Words.count(count) + " " + mark.word();
    }

    private static String unseen(int steps) {
        return switch (steps) {
            case 0 -> "";
            case 1 -> " The other step was not seen and says nothing.";
            default -> " The other " + Words.count(steps) + " steps were not seen and say nothing.";
        };
    }
}
