package ribmark.moved;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.curriculum.Line;
import ribmark.web.Choice;
import ribmark.web.Form;

/** What somebody asks about a line that ran elsewhere, and what is wrong with the question. */
public record MovedForm(Form form, List<Way> ways) {

    /** Longer than this, what was asked is not said again: ours. */
    private static final int SHORT = 40;

    private static final String LINE = "line";
    private static final String TOWARDS = "towards";
    private static final String BY = "by";
    private static final String SIDE = "side";

    /** The lines that can be asked about. */
    public List<Choice> lines() {
        return choices(way -> Choice.of(way.line().id(), way.line().name()));
    }

    /** The ends a line can have moved to. */
    public List<Choice> ends() {
        return choices(
                way -> Choice.of(way.run().towards(), "towards the " + way.run().towards()));
    }

    /** How far it can have gone: the number of places, each with every word there is for it. */
    public List<Choice> distances() {
        return choices(way -> Choice.of(number(way), words(number(way))));
    }

    private static String number(Way way) {
        return Integer.toString(way.run().by());
    }

    private String words(String by) {
        List<String> said = ways.stream()
                .filter(way -> number(way).equals(by))
                .map(way -> way.run().howFar())
                .distinct()
                .toList();
        return String.join(" or ", said);
    }

    /** The sides it can have gone wrong on. */
    public List<Choice> sides() {
        return choices(way -> Choice.of(
                way.side().word(),
                way.side() == Side.BOTH ? "both sides" : "the " + way.side().word() + " alone"));
    }

    private List<Choice> choices(Function<Way, Choice> choice) {
        return ways.stream().map(choice).distinct().toList();
    }

    /** Whether anything was asked at all. */
    boolean isBlank() {
        return List.of(LINE, TOWARDS, BY, SIDE).stream()
                .allMatch(field -> form.value(field).isEmpty());
    }

    /** The way asked about; when there is none, what to put right stands in the form. */
    Optional<Way> read() {
        if (lines().size() == 1 && form.value(LINE).isEmpty()) {
            form.with(LINE, lines().get(0).value());
        }
        if (form.value(SIDE).isEmpty()) {
            form.with(SIDE, Side.BOTH.word());
        }
        oneOf(LINE, "Line", lines());
        oneOf(TOWARDS, "Towards", ends());
        oneOf(BY, "How far", distances());
        oneOf(SIDE, "Side", sidesEver());
        return form.wrong() ? Optional.empty() : found();
    }

    private static List<Choice> sidesEver() {
        return Way.SIDES.stream().map(side -> Choice.of(side.word())).toList();
    }

    private void oneOf(String field, String name, List<Choice> choices) {
        String typed = form.value(field);
        if (choices.stream().noneMatch(choice -> choice.value().equals(typed))) {
            String asked = typed.length() > SHORT ? "what was asked" : "“" + typed + "”";
            String said = typed.isEmpty() ? "nothing was chosen" : asked + " is none of the choices";
            form.add(
                    field,
                    name + ": " + said + ". Choose "
                            + choices.stream()
                                    .map(Choice::label)
                                    .reduce((one, two) -> one + " or " + two)
                                    .orElse("one")
                            + ".");
        }
    }

    private Optional<Way> found() {
        List<String> asked = List.of(form.value(LINE), form.value(TOWARDS), form.value(BY), form.value(SIDE));
        Optional<Way> way =
                ways.stream().filter(each -> each.words().equals(asked)).findFirst();
        if (way.isEmpty()) {
            notSo(asked);
        }
        return way;
    }

    private void notSo(List<String> asked) {
        Line line = ways.stream()
                .map(Way::line)
                .filter(each -> each.id().equals(asked.get(0)))
                .findFirst()
                .orElseThrow();
        Optional<Line.Run> run = line.run(asked.get(1), Integer.parseInt(asked.get(2)));
        if (run.isPresent()) {
            form.add(SIDE, "Side: this line cannot go wrong on one side alone. Choose both sides.");
            return;
        }
        List<String> can = new ArrayList<>();
        line.runs().forEach(each -> can.add(each.howFar() + " towards the " + each.towards()));
        form.add(
                BY,
                "How far: nothing is worked out for that. This line can be asked about for " + Words.list(can) + ".");
    }
}
