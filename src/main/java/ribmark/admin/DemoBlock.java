package ribmark.admin;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.blocksheet.Answer;
import ribmark.blocksheet.Draft;
import ribmark.blocksheet.Opening;
import ribmark.blocksheet.Place;
import ribmark.blocksheet.RanLine;
import ribmark.carcase.Carcase;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Step;
import ribmark.curriculum.Step.Question;
import ribmark.moved.Way;
import ribmark.scoring.TrimMeasure;

/** Tells what was watched at the block: sheets opened, marks given one after the other, questions asked, sheets closed. */
final class DemoBlock {

    private static final Duration BETWEEN_MARKS = Duration.ofMinutes(4);

    private final DemoStores stores;
    private final DemoRoster roster;
    private final DemoStory story;
    private final Breakdown breakdown;

    DemoBlock(DemoStores stores, DemoRoster roster, DemoStory story) {
        this.stores = stores;
        this.roster = roster;
        this.story = story;
        this.breakdown = stores.curriculum().breakdown();
    }

    void tell(String apprentice, DemoSheet sheet) {
        String where = "apprentices, " + apprentice + ", lamb " + sheet.lamb();
        Instant opened = story.moments().at(sheet.opened());
        List<DemoSheet.Given> given = sheet.given(breakdown);
        story.at(opened, where, () -> open(apprentice, sheet, given));
        Instant at = opened;
        for (DemoSheet.Given each : given) {
            Instant moment = at.plus(between(sheet, opened, given.size()));
            story.at(moment, where, () -> mark(apprentice, sheet, each, moment));
            at = moment;
        }
        story.at(at, where, () -> {
            tellLines(apprentice, sheet);
            measure(apprentice, sheet);
        });
        Instant last = at;
        if (sheet.isClosed()) {
            story.at(sheet.closed(), where, () -> close(apprentice, sheet, given));
        } else if (!sheet.seen().isEmpty()) {
            story.at(last, where, () -> leave(apprentice, sheet));
        }
    }

    /** Marks are spread over the time the sheet was open, with the last part of it for reading it through. */
    private Duration between(DemoSheet sheet, Instant opened, int marks) {
        return sheet.isClosed()
                ? Duration.between(opened, story.moments().at(sheet.closed()))
                        .multipliedBy(4)
                        .dividedBy(5L * Math.max(1, marks))
                : BETWEEN_MARKS;
    }

    private void open(String apprentice, DemoSheet sheet, List<DemoSheet.Given> given) {
        checkNames(sheet, given);
        Carcase carcase = roster.lamb(sheet.lamb());
        if (!carcase.isAccepted()) {
            throw new Refused(carcase.title() + " is " + carcase.decision().standing() + ".");
        }
        Opening opening = new Opening(
                carcase,
                roster.person(apprentice),
                roster.assessor(sheet.assessor()),
                breakdown.id(),
                sheet.scope(breakdown));
        roster.remember(apprentice, sheet.lamb(), stores.sheets().open(opening));
    }

    /** Every name in the sheet must be one the content knows, at a place that is watched. */
    private void checkNames(DemoSheet sheet, List<DemoSheet.Given> given) {
        given.forEach(each -> each.fault()
                .filter(fault -> step(each.place().stepId()).fault(fault).isEmpty())
                .ifPresent(fault -> {
                    throw new Refused(
                            "“" + fault + "” is no fault of " + each.place().stepId() + ".");
                }));
        Set<String> steps = sheet.scope(breakdown).stream().map(Place::stepId).collect(Collectors.toSet());
        sheet.asked().keySet().forEach(question -> {
            if (!steps.contains(stepAsking(question).id())) {
                throw new Refused("“" + question + "” is not asked at a step of this sheet.");
            }
        });
        Set<String> marked = given.stream().map(each -> each.place().text()).collect(Collectors.toSet());
        Set<String> markedSteps =
                given.stream().map(each -> each.place().stepId()).collect(Collectors.toSet());
        sheet.words().keySet().stream()
                .filter(name -> !marked.contains(name) && !markedSteps.contains(name))
                .forEach(name -> {
                    throw new Refused("There are words at " + name + ", but no mark.");
                });
    }

    private Step step(String id) {
        return breakdown.step(id).orElseThrow(() -> new Refused("“" + id + "” is no step."));
    }

    private Step stepAsking(String question) {
        return breakdown.steps().stream()
                .filter(step -> step.questions().stream().map(Question::id).anyMatch(question::equals))
                .findFirst()
                .orElseThrow(() -> new Refused("“" + question + "” is no question."));
    }

    private void mark(String apprentice, DemoSheet sheet, DemoSheet.Given given, Instant moment) {
        UUID id = roster.sheetId(apprentice, sheet.lamb());
        stores.sheets().mark(id, given.place(), given.mark(), given.fault(), given.words(), moment);
        sheet.asked().forEach((question, answered) -> {
            if (stepAsking(question).id().equals(given.place().stepId())) {
                stores.sheets().answer(id, given.place().stepId(), question, known(answered));
            }
        });
    }

    private static Answer.Known known(String word) {
        return Answer.Known.of(word).orElseThrow(() -> new Refused("“" + word + "” is no answer."));
    }

    /** Where lines really ran: line, end, places and side, as content names them. */
    private void tellLines(String apprentice, DemoSheet sheet) {
        sheet.ran().forEach((step, words) -> {
            Way way = Way.of(breakdown, List.of(words.split(" ")))
                    .filter(each -> each.line().isCutAt(step(step)))
                    .orElseThrow(() -> new Refused("“" + words + "” is no way a line runs at " + step + "."));
            stores.ranLines()
                    .add(
                            roster.sheetId(apprentice, sheet.lamb()),
                            new RanLine(
                                    step,
                                    way.line().id(),
                                    way.run().towards(),
                                    way.run().by(),
                                    way.side().word()));
        });
    }

    private void measure(String apprentice, DemoSheet sheet) {
        sheet.measured().forEach((name, value) -> {
            String[] parts = name.split("/");
            String measure = parts[0];
            Side side = DemoSheet.side(parts.length > 1 ? parts[1] : "once");
            checkMeasure(sheet, measure, side);
            stores.weights()
                    .measure(
                            roster.sheetId(apprentice, sheet.lamb()),
                            measure,
                            side,
                            Optional.of(value),
                            roster.acting(sheet.assessor()));
        });
    }

    private void checkMeasure(DemoSheet sheet, String id, Side side) {
        TrimMeasure measure = stores.curriculum().trim().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Refused("“" + id + "” is no trim measure."));
        if (!sheet.scope(breakdown).contains(new Place(measure.step(), side))) {
            throw new Refused("“" + id + "” is measured at " + measure.step() + ", which is not on this sheet.");
        }
    }

    private void close(String apprentice, DemoSheet sheet, List<DemoSheet.Given> given) {
        Set<String> stages = given.stream()
                .map(each -> DemoSheet.stageOf(breakdown, each.place().stepId()).id())
                .collect(Collectors.toSet());
        Draft said = said(sheet);
        if (!stages.equals(sheet.seen().keySet()) || sheet.dueInDays() < 1) {
            throw new Refused("A closed sheet says what was seen at each stage marked, " + stages
                    + ", and when the next step is due.");
        }
        if (said.well().isEmpty() || said.change().isEmpty() || said.next().isEmpty()) {
            throw new Refused("A closed sheet says what was done well, what to change, and what is next.");
        }
        stores.sheets().close(roster.sheetId(apprentice, sheet.lamb()), due(sheet), said);
    }

    private void leave(String apprentice, DemoSheet sheet) {
        stores.sheets().draft(roster.sheetId(apprentice, sheet.lamb()), said(sheet));
    }

    private Draft said(DemoSheet sheet) {
        return sheet.said(due(sheet));
    }

    private LocalDate due(DemoSheet sheet) {
        String at = sheet.isClosed() ? sheet.closed() : sheet.opened();
        return story.moments().day(story.moments().at(at)).plusDays(sheet.dueInDays());
    }
}
