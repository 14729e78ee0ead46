package ribmark.proof;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import ribmark.anatomy.Formula;
import ribmark.anatomy.Ids;
import ribmark.anatomy.Operation;
import ribmark.anatomy.Skeleton;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Cut;
import ribmark.curriculum.Landmark;
import ribmark.curriculum.MarkWord;
import ribmark.curriculum.RestsOn;
import ribmark.curriculum.Source;
import ribmark.curriculum.Stage;
import ribmark.curriculum.Step;
import ribmark.curriculum.Term;
import ribmark.scoring.TrimMeasure;
import ribmark.scoring.Vertebrae;

/** Turns files that were found sound into the curriculum that pages and rules use. */
final class CurriculumReader {

    private final Shelf shelf;
    private final Skeleton animal;
    private final Ids ids;

    CurriculumReader(Shelf shelf, Skeleton animal) {
        this.shelf = shelf;
        this.animal = animal;
        this.ids = Ids.of(animal);
    }

    Curriculum read(String version, Curriculum.Animals animals) {
        FigureReader figures = new FigureReader();
        return new Curriculum(
                version,
                breakdown(),
                animal,
                MapRows.read(shelf.map()),
                each(shelf.cuts(), "cuts[]", this::cut),
                each(shelf.landmarks(), "landmarks[]", this::landmark),
                each(shelf.terms(), "terms[]", this::term),
                shelf.tables().stream().map(TableReader::table).toList(),
                trim(figures),
                Optional.of(shelf.weighing()).filter(Node::isThere).map(ModelReader::read),
                Optional.of(shelf.prices()).filter(Node::isThere).map(FigureReader::prices),
                figures.rule(shelf.evidence().get("rule")),
                restsOn(shelf.evidence().get("rule")),
                FigureReader.scales(shelf.scales()),
                FigureReader.permissible(shelf.scales().get("permissible"), ""),
                each(shelf.marks(), "marks[]", CurriculumReader::mark),
                each(shelf.sources(), "sources[]", CurriculumReader::source),
                animals);
    }

    /** Limits that follow a region are those of this animal. */
    private List<TrimMeasure> trim(FigureReader figures) {
        Vertebrae more = Vertebrae.compared(animal.formula().toString(), text(shelf.breakdown(), "formula"));
        return each(shelf.trim(), "measures[]", figures::measure).stream()
                .map(measure -> measure.on(more))
                .toList();
    }

    private static <T> List<T> each(Node node, String path, Function<Node, T> reading) {
        return node.all(path).stream().map(reading).toList();
    }

    private Breakdown breakdown() {
        Node file = shelf.breakdown();
        return new Breakdown(
                text(file, "id"),
                text(file, "title"),
                text(file, "version"),
                Formula.parse(text(file, "formula")),
                text(file, "dressing"),
                atIntake(file.get("at-intake")),
                stages(),
                LineRuns.read(shelf, animal),
                each(file, "assumptions[]", CurriculumReader::assumption),
                each(file, "tools[]", n -> new Breakdown.Tool(text(n, "id"), text(n, "name"), text(n, "text"))),
                each(file, "cautions[]", CurriculumReader::caution));
    }

    private List<Stage> stages() {
        List<Stage> stages = new ArrayList<>();
        int number = 1;
        for (Node stage : shelf.stages()) {
            List<Step> steps = new ArrayList<>();
            for (Node step : stage.all("steps[]")) {
                steps.add(step(step, stage.get("id").text(), number++));
            }
            stages.add(new Stage(text(stage, "id"), text(stage, "title"), text(stage, "what-for"), List.copyOf(steps)));
        }
        return List.copyOf(stages);
    }

    private static Breakdown.Assumption assumption(Node node) {
        return new Breakdown.Assumption(
                text(node, "id"),
                text(node, "text"),
                text(node, "others"),
                node.get("steps").texts(),
                restsOn(node));
    }

    private static Breakdown.Caution caution(Node node) {
        return new Breakdown.Caution(text(node, "id"), text(node, "heading"), text(node, "text"), restsOn(node));
    }

    private static Optional<Breakdown.AtIntake> atIntake(Node node) {
        return Optional.of(node)
                .filter(Node::isThere)
                .map(n -> new Breakdown.AtIntake(
                        figure(n, "lowest-kg"),
                        figure(n, "highest-kg"),
                        figure(n, "meat-at-most-c"),
                        figure(n, "kidneys-at-most-c"),
                        (int) n.get("counts-differ-by").number(),
                        restsOn(n)));
    }

    private static BigDecimal figure(Node node, String name) {
        return new BigDecimal(node.get(name).text());
    }

    private Step step(Node node, String stage, int number) {
        return new Step(
                text(node, "id"),
                number,
                stage,
                text(node, "title"),
                text(node, "what-for"),
                text(node, "sides").equals("each"),
                node.get("optional").yes(),
                node.get("needs").texts(),
                where(node.get("landmark")),
                node.get("tools").texts(),
                new Step.Caution(text(node.get("caution"), "heading"), text(node.get("caution"), "text")),
                node.get("also-mind").texts(),
                text(node, "hands"),
                node.get("how").text(),
                node.get("good").texts(),
                each(node, "faults[]", CurriculumReader::fault),
                operations(node),
                node.get("frees").texts(),
                node.get("leaves").texts(),
                restsOn(node),
                questions(text(node, "id")),
                criteria(text(node, "id")));
    }

    private Step.Where where(Node node) {
        return new Step.Where(
                text(node, "heading"), text(node, "text"), node.get("uses").texts(), bones(node, "bones"));
    }

    private List<String> bones(Node node, String name) {
        return ids.expandAll(node.get(name).texts());
    }

    private List<Operation> operations(Node step) {
        return step.get("operations").items().stream()
                .flatMap(written -> Deeds.operations(written, ids).stream())
                .toList();
    }

    private static Step.Fault fault(Node node) {
        return new Step.Fault(
                text(node, "id"), text(node, "text"), text(node, "mend"), Step.Critical.of(text(node, "critical")));
    }

    private List<Step.Question> questions(String step) {
        return shelf.questions().all("questions[]").stream()
                .filter(n -> text(n, "step").equals(step))
                .map(n -> new Step.Question(text(n, "id"), step, text(n, "ask"), text(n, "answer"), restsOn(n)))
                .toList();
    }

    private List<Step.Criterion> criteria(String step) {
        return shelf.criteria().all("criteria[]").stream()
                .filter(n -> text(n, "step").equals(step))
                .map(n -> new Step.Criterion(
                        text(n, "id"),
                        step,
                        text(n, "watch"),
                        text(n, "how"),
                        Step.Critical.of(text(n, "critical")),
                        restsOn(n)))
                .toList();
    }

    private Cut cut(Node node) {
        return new Cut(
                text(node, "id"),
                text(node, "name"),
                text(node, "comes").equals("each"),
                Cut.Becomes.valueOf(text(node, "becomes").toUpperCase(Locale.ROOT)),
                CutBook.holdings(node, ids),
                node.get("rows").texts(),
                node.get("moment").maybeText(),
                text(node, "text"),
                each(
                        node,
                        "same-as[]",
                        n -> new Cut.SameAs(
                                text(n, "system"),
                                text(n, "number"),
                                n.get("note").maybeText(),
                                text(n, "source"),
                                text(n, "basis"),
                                n.get("read-in").maybeText(),
                                bones(n, "differs"))),
                restsOn(node));
    }

    private Landmark landmark(Node node) {
        return new Landmark(
                text(node, "id"),
                text(node, "name"),
                text(node, "text"),
                bones(node, "bones"),
                bones(node, "joints"),
                restsOn(node));
    }

    private Term term(Node node) {
        return new Term(
                text(node, "trade"),
                text(node, "means"),
                text(node, "where"),
                node.get("ours").yes(),
                bones(node, "bones"),
                restsOn(node));
    }

    private static MarkWord mark(Node node) {
        return new MarkWord(text(node, "id"), text(node, "word"), text(node, "gloss"), (int)
                node.get("order").number());
    }

    private static Source source(Node node) {
        return new Source(
                text(node, "key"),
                text(node, "title"),
                node.get("publisher").maybeText(),
                node.get("year").maybeText(),
                text(node, "seen"),
                node.get("note").maybeText());
    }

    static List<RestsOn> restsOn(Node node) {
        return each(
                node,
                "rests-on[]",
                n -> new RestsOn(
                        text(n, "fact"),
                        text(n, "source"),
                        text(n, "basis"),
                        n.get("place").maybeText(),
                        n.get("checked").maybeText()));
    }

    private static String text(Node node, String name) {
        return node.get(name).text().strip();
    }
}
