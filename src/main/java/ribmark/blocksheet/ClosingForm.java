package ribmark.blocksheet;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.curriculum.Stage;
import ribmark.curriculum.Step;
import ribmark.web.Form;

/** What was typed when a sheet is closed: words beside marks, a sentence for each stage seen, what is next and when. */
final class ClosingForm {

    /** A field for words beside a mark. */
    public record Beside(String id, String label, String hint) {}

    /** A field for what was seen of a stage. */
    public record Seen(String id, String label) {}

    private final Walk walk;
    private final Form form;

    ClosingForm(Walk walk, Form form) {
        this.walk = walk;
        this.form = form;
    }

    /** The same fields, filled with what was said so far. */
    static Form found(Walk walk, Optional<Draft> draft) {
        Form form = Form.blank();
        walk.sheet().marks().forEach(mark -> form.with(id(mark), mark.words()));
        draft.ifPresent(said -> {
            said.stages().forEach((stage, words) -> form.with(Draft.STAGE + stage, words));
            form.with("well", said.well()).with("change", said.change()).with("next", said.next());
            form.with("day", said.nextDay());
        });
        return form;
    }

    /** A field for every mark that is not plain unaided. */
    List<Beside> beside() {
        return walk.sheet().marks().stream()
                .filter(mark -> mark.mark() != ribmark.competence.Mark.UNAIDED)
                .filter(mark -> walk.breakdown().step(mark.stepId()).isPresent())
                .map(mark -> new Beside(id(mark), label(mark), hint(mark)))
                .toList();
    }

    /** A field for every stage something was seen of. */
    List<Seen> seen() {
        return stagesSeen().stream()
                .map(stage -> new Seen(Draft.STAGE + stage.id(), stage.title() + ": what you saw"))
                .toList();
    }

    private List<Stage> stagesSeen() {
        return walk.stages().stream()
                .filter(stage -> stage.steps().stream().anyMatch(step -> SheetView.isSeen(walk.sheet(), step)))
                .toList();
    }

    /** Puts a sentence beside every field that keeps the sheet from being closed. */
    void check(LocalDate today) {
        walk.sheet().marks().forEach(this::checkReason);
        String name = walk.sheet().apprentice().name();
        stagesSeen()
                .forEach(stage ->
                        form.words(Draft.STAGE + stage.id(), stage.title(), "Type one sentence " + name + " can use."));
        form.words("well", "One thing done well", "Type one thing you saw.");
        form.words("change", "One thing to change", "Type one thing to do otherwise.");
        form.words("next", "Next step", "Type what " + name + " does next.");
        checkDay(today);
    }

    /** Puts a sentence beside a field that holds too much, for leaving the sheet open. */
    void checkLengths() {
        walk.sheet().marks().forEach(mark -> form.fitting(id(mark), label(mark)));
        stagesSeen().forEach(stage -> form.fitting(Draft.STAGE + stage.id(), stage.title()));
        form.fitting("well", "One thing done well");
        form.fitting("change", "One thing to change");
        form.fitting("next", "Next step");
        if (form.value("day").length() > 40) {
            form.add("day", "Day: that is too long for a day. Pick one.");
        }
    }

    private void checkReason(Mark mark) {
        String typed = form.fitting(id(mark), label(mark));
        if (mark.needsReason() && mark.faultId().isEmpty() && typed.isEmpty()) {
            form.add(
                    id(mark),
                    "Say why " + step(mark).number() + " " + step(mark).title() + side(mark.side()) + " was "
                            + mark.mark().word() + ": type what you saw, or go back and tap a reason.");
        }
    }

    private void checkDay(LocalDate today) {
        String typed = form.value("day");
        if (typed.isEmpty()) {
            form.add("day", "Day: nothing was chosen. Choose when the next step is due.");
            return;
        }
        Optional<LocalDate> day = day();
        if (day.isEmpty()) {
            form.add("day", "Day: “" + typed + "” is not a day. Type it like 2026-11-27.");
        } else if (day.get().isBefore(today)) {
            form.add("day", "Day: " + Words.day(day.get()) + " is past. Choose today or a later day.");
        } else if (day.get().isAfter(today.plusYears(1))) {
            form.add("day", "Day: " + Words.day(day.get()) + " is more than a year away. Choose a nearer day.");
        }
    }

    Optional<LocalDate> day() {
        try {
            return Optional.of(LocalDate.parse(form.value("day")));
        } catch (DateTimeParseException notADay) {
            return Optional.empty();
        }
    }

    /** The words said at the end, as typed. */
    Draft said() {
        Map<String, String> stages = new LinkedHashMap<>();
        stagesSeen().forEach(stage -> stages.put(stage.id(), form.value(Draft.STAGE + stage.id())));
        return new Draft(stages, form.value("well"), form.value("change"), form.value("next"), form.value("day"));
    }

    /** The words typed beside marks that say something else than before. */
    Map<Mark, String> changedWords() {
        Map<Mark, String> changed = new LinkedHashMap<>();
        walk.sheet().marks().stream()
                .filter(mark -> mark.mark() != ribmark.competence.Mark.UNAIDED)
                .filter(mark -> !form.all(id(mark)).isEmpty())
                .filter(mark -> !form.value(id(mark)).equals(mark.words()))
                .forEach(mark -> changed.put(mark, form.value(id(mark))));
        return changed;
    }

    private Step step(Mark mark) {
        return walk.step(mark.stepId());
    }

    private String label(Mark mark) {
        return step(mark).number() + "\u00a0" + step(mark).title() + side(mark.side()) + ": "
                + mark.mark().word();
    }

    private String hint(Mark mark) {
        return mark.faultId()
                .flatMap(step(mark)::fault)
                .map(fault -> "Tapped: " + fault.text() + ".")
                .orElse(mark.needsReason() ? "No reason was tapped: say what you saw." : "If you want to say more.");
    }

    private static String side(Side side) {
        return side == Side.ONCE ? "" : ", " + side.word();
    }

    private static String id(Mark mark) {
        return "words-" + mark.stepId() + "-" + mark.side().word();
    }
}
