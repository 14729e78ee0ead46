package ribmark.contentfiles;

import java.util.List;
import java.util.stream.Stream;

/** The files that belong to one breakdown. */
public record Shelf(
        Node breakdown,
        List<Node> stages,
        Node lines,
        Node bones,
        Node joints,
        Node map,
        Node landmarks,
        Node cuts,
        Node terms,
        Node criteria,
        Node questions,
        Node evidence,
        Node trim,
        Node weighing,
        Node prices,
        List<Node> tables,
        Node sources,
        Node marks,
        Node scales) {

    /** The files of the breakdown of this name; one that is missing is among the findings and read as empty. */
    public static Shelf of(String name, Library library) {
        Node breakdown = library.need("content/" + name + "/breakdown.yaml", Node.nothingIn("content"));
        Node species = breakdown.get("skeleton");
        boolean known = library.hasSpecies(species);
        String ofSpecies = "content/" + species.text() + "/";
        String ofAssessments = "assessments/" + name + "/";
        return new Shelf(
                breakdown,
                breakdown.get("stages").items().stream()
                        .map(stage -> library.need("content/" + name + "/" + stage.text() + ".yaml", stage))
                        .toList(),
                library.maybe("content/" + name + "/lines.yaml"),
                library.need(known, ofSpecies + "skeleton.csv", species),
                library.need(known, ofSpecies + "joints.csv", species),
                library.need(known, ofSpecies + "bone-map.csv", species),
                library.need(known, ofSpecies + "landmarks.yaml", species),
                library.need(known, ofSpecies + "cuts.yaml", species),
                library.need(known, ofSpecies + "terms.yaml", species),
                library.need(ofAssessments + "criteria.yaml", breakdown),
                library.need(ofAssessments + "questions.yaml", breakdown),
                library.need(ofAssessments + "evidence.yaml", breakdown),
                library.need(ofAssessments + "trim.yaml", breakdown),
                library.maybe(ofAssessments + "weighing-model.yaml"),
                library.maybe(ofAssessments + "prices.yaml"),
                library.in(ofAssessments + "references/"),
                library.need("content/sources.yaml", breakdown),
                library.need("assessments/marks.yaml", breakdown),
                library.need("assessments/scales.yaml", breakdown));
    }

    /** Every file. */
    public List<Node> all() {
        Stream<Node> single = Stream.of(
                breakdown, lines, landmarks, cuts, terms, criteria, questions, evidence, trim, weighing, prices,
                sources, marks, scales);
        return Stream.of(single, stages.stream(), tables.stream())
                .flatMap(s -> s)
                .toList();
    }

    /** The files that say what is done to the skeleton. */
    public List<Node> work() {
        return Stream.concat(Stream.of(breakdown, lines, bones, joints, cuts), stages.stream())
                .toList();
    }

    /** The files that say what is done and where. */
    public List<Node> teaching() {
        return Stream.concat(work().stream(), Stream.of(landmarks)).toList();
    }

    /** Whether the breakdown names stages and each of them could be read. */
    public boolean hasAllStages() {
        return !stages.isEmpty() && stages.stream().allMatch(Node::isThere);
    }

    /** The steps of all stages in the order worked. */
    public List<Node> steps() {
        return stages.stream()
                .flatMap(stage -> stage.get("steps").items().stream())
                .toList();
    }

    /** The id the breakdown gives itself. */
    public String id() {
        return breakdown.get("id").text();
    }
}
