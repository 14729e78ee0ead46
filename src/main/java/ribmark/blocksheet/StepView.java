package ribmark.blocksheet;

import java.util.List;
import java.util.Optional;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.curriculum.BoneWords;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.people.Acting;

/** One step at the block as it stands on the screen: where, what to mind, what each side holds, and where to go from here. */
public record StepView(
        Step step,
        String bones,
        String showMe,
        String address,
        String at,
        String side,
        List<Field> fields,
        boolean stopped,
        boolean saysWhy,
        boolean mayMark,
        String why,
        List<Button> buttons,
        Link before,
        Link after,
        String sheet,
        String carcase) {

    /** A side of the switch, or what a step done once holds: its word, what it says, and whether it is shown now. */
    public record Field(String side, String word, String says, boolean here, boolean held, String href) {}

    /** One of the four marks to press. */
    public record Button(String code, String word, String gloss) {}

    /** A step beside this one. */
    public record Link(String words, String href) {}

    static StepView of(Walk walk, Place place, Acting acting) {
        BlockSheet sheet = walk.sheet();
        Step step = walk.step(place.stepId());
        Optional<Mark> held = sheet.mark(place);
        boolean mayMark = sheet.isOpen() && sheet.isKeptBy(acting.id());
        return new StepView(
                step,
                bones(walk, step),
                "/steps/" + step.id() + walk.animal().query(),
                address(sheet, step.id()),
                step.number() + " of " + walk.breakdown().steps().size(),
                place.side().word(),
                fields(sheet, step, place.side(), mayMark),
                held.filter(mark -> mark.mark() == ribmark.competence.Mark.STOPPED)
                        .isPresent(),
                held.filter(mark -> !mark.lacksReason()).isPresent(),
                mayMark,
                why(sheet),
                buttons(walk.animal().curriculum()),
                walk.beside(step, -1).map(other -> link(sheet, other)).orElse(null),
                walk.beside(step, 1).map(other -> link(sheet, other)).orElse(null),
                "/block-sheets/" + sheet.id(),
                "/weigh-ups/" + sheet.carcase().id());
    }

    /** The bones of the landmark that the usual animal does not have there; all of them where it only has more. */
    private static String bones(Walk walk, Step step) {
        List<String> here = step.landmark().bones();
        List<String> usual = walk.usual()
                .step(step.id())
                .map(other -> other.landmark().bones())
                .orElse(here);
        List<String> others =
                here.stream().filter(bone -> !usual.contains(bone)).toList();
        BoneWords words = new BoneWords(walk.animal().curriculum().skeleton());
        return words.say(others.isEmpty() && !here.equals(usual) ? here : others);
    }

    /** The address of a step of a sheet. */
    static String address(BlockSheet sheet, String step) {
        return "/block-sheets/" + sheet.id() + "/steps/" + step;
    }

    /** The address of a step and side of a sheet; a step done once needs no side. */
    static String address(BlockSheet sheet, Place place) {
        return address(sheet, place.stepId())
                + (place.side() == Side.ONCE ? "" : "?side=" + place.side().word());
    }

    /** The marks as buttons, in the words of the content. */
    static List<Button> buttons(Curriculum curriculum) {
        return curriculum.marks().stream()
                .map(mark -> new Button(mark.id(), Words.capital(mark.word()), mark.gloss()))
                .toList();
    }

    private static Link link(BlockSheet sheet, Step step) {
        return new Link("Step\u00a0" + step.number(), address(sheet, step.id()));
    }

    private static String why(BlockSheet sheet) {
        return sheet.isOpen()
                ? sheet.assessor().name() + " keeps this sheet and marks it."
                : "This sheet is closed. What stands on it stays.";
    }

    private static List<Field> fields(BlockSheet sheet, Step step, Side here, boolean mayMark) {
        return sheet.sidesOf(step.id()).stream()
                .sorted()
                .filter(side -> side != Side.ONCE || sheet.mark(step.id(), side).isPresent())
                .map(side -> field(sheet, step, side, side == here, mayMark))
                .toList();
    }

    private static Field field(BlockSheet sheet, Step step, Side side, boolean here, boolean mayMark) {
        Optional<Mark> held = sheet.mark(step.id(), side);
        String empty = here && mayMark ? "mark it now" : "not marked";
        return new Field(
                side.word(),
                side == Side.ONCE ? "Marked" : Words.capital(side.word()),
                held.map(mark -> mark.mark().word()).orElse(empty),
                here,
                held.isPresent() && mayMark,
                address(sheet, new Place(step.id(), side)));
    }
}
