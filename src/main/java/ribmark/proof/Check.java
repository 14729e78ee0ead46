package ribmark.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ribmark.anatomy.Formula;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Refused;
import ribmark.contentfiles.ContentFiles;
import ribmark.contentfiles.ContentProblem;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Library;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;
import ribmark.curriculum.Curriculum;

/** Everything that was proven of a set of content files, or every problem found in them. */
public record Check(String version, List<Curriculum> curricula, List<Proof> proofs, List<ContentProblem> problems) {

    /** Whether nothing is wrong. */
    public boolean ok() {
        return problems.isEmpty();
    }

    /** The curriculum, when nothing is wrong; with several breakdowns, the first by the name of its folder. */
    public Optional<Curriculum> curriculum() {
        return curricula.stream().findFirst();
    }

    /** Checks the files on the usual animal. */
    public static Check of(ContentFiles files) {
        return of(files, Optional.empty());
    }

    /** Checks the files, and proves the breakdowns on an animal with these numbers when some are given; refuses numbers that no animal of these files can have. */
    public static Check of(ContentFiles files, Optional<Formula> formula) {
        Findings found = new Findings();
        Library library = Library.of(files, found);
        List<Course> courses = new ArrayList<>();
        for (String name : library.breakdowns()) {
            courses.add(new Course(Shelf.of(name, library), found));
        }
        courses.forEach(course -> course.check(formula));
        unused(library, courses, found);
        List<Shelf> shelves = courses.stream().map(Course::shelf).toList();
        if (shelves.stream().noneMatch(shelf -> found.any(List.of("C00", "C01", "C02"), shelf.teaching()))) {
            Unused.check(shelves, found);
        }
        List<Proof> proofs = courses.stream().flatMap(c -> c.proof().stream()).toList();
        List<Curriculum> curricula = found.none()
                ? courses.stream().map(c -> c.curriculum(files.version())).toList()
                : List.of();
        return new Check(files.version(), curricula, found.none() ? proofs : List.of(), found.list());
    }

    private static void unused(Library library, List<Course> courses, Findings found) {
        if (courses.isEmpty()) {
            found.add(
                    "C008",
                    Node.nothingIn("content"),
                    "There is no breakdown here.",
                    "A folder such as content/lamb needs a breakdown.yaml that names its stages.");
            return;
        }
        courses.stream()
                .filter(course -> course.shelf().hasAllStages())
                .forEach(course -> unused(library, course, found));
    }

    private static void unused(Library library, Course course, Findings found) {
        String breakdown = course.shelf().breakdown().file();
        String folder = breakdown.substring(0, breakdown.lastIndexOf('/') + 1);
        Set<String> used = course.shelf().all().stream().map(Node::file).collect(Collectors.toSet());
        for (Node file : library.in(folder)) {
            if (!used.contains(file.file()) && Library.schemaOf(file.file()).equals("stage")) {
                found.addInstead(
                        "C007", file, "No breakdown names this stage.", "Name it under stages, or take the file away.");
            }
        }
    }

    /** One breakdown on its way from files to curriculum. */
    private static final class Course {

        /** With one of these among its own files a working would only echo them. */
        private static final List<String> NOT_READY =
                List.of("C00", "C01", "C020", "C021", "C022", "C023", "C026", "C03", "C046");

        /** With one of these what is written for readers would be judged on half of what was meant. */
        private static final List<String> NOT_READABLE = List.of("C00", "C01", "C02");

        private final Shelf shelf;
        private final Findings found;
        private Optional<Skeleton> usual = Optional.empty();
        private Optional<Proof> proof = Optional.empty();

        Course(Shelf shelf, Findings found) {
            this.shelf = shelf;
            this.found = found;
        }

        Shelf shelf() {
            return shelf;
        }

        Optional<Proof> proof() {
            return proof;
        }

        Curriculum curriculum(String version) {
            return new ReadForOthers(shelf, usual.orElseThrow(), version).read();
        }

        /** A breakdown that could not be read was reported; without it nothing else can be judged. */
        void check(Optional<Formula> formula) {
            if (shelf.breakdown().isThere()) {
                checkAll(formula);
            }
        }

        private void checkAll(Optional<Formula> formula) {
            References.check(shelf, found);
            Order.check(shelf, found);
            Teaching.check(shelf, found);
            Figures.check(shelf, found);
            if (!found.any(NOT_READABLE, shelf.teaching())) {
                Remainders.check(shelf, found);
                Sides.check(shelf, found);
            }
            Optional<Skeleton> rows = SkeletonRows.read(shelf.bones(), shelf.joints(), found);
            rows.ifPresent(animal -> Twins.check(animal, shelf.bones(), shelf.joints(), found));
            String own = shelf.breakdown().get("formula").text();
            Optional<Skeleton> sound =
                    rows.filter(animal -> !found.any(List.of("C022"), List.of(shelf.bones(), shelf.joints())));
            sound.ifPresent(animal -> MapCheck.check(shelf, animal, found));
            usual = sound.flatMap(animal -> withFormula(animal, own, shelf.breakdown()));
            usual.ifPresent(animal -> checkOn(animal, formula));
        }

        private void checkOn(Skeleton animal, Optional<Formula> formula) {
            BoneNames.checkTeaching(shelf, animal, found);
            BoneNames.checkWork(shelf, animal, found);
            if (!found.any(NOT_READABLE, shelf.teaching())) {
                Touched.check(shelf, animal, found);
            }
            if (!found.any(NOT_READY, shelf.work())) {
                proof = Proof.of(shelf, animal, found);
            }
            if (proof.isPresent() && !found.any(List.of("C"), shelf.teaching())) {
                WithinReach.check(shelf, new Deeds(animal), found);
                Equivalents.check(shelf, animal, found);
            }
            if (proof.isPresent() && !found.any(List.of("C"), shelf.work())) {
                onOthers(animal, formula);
            }
        }

        /** The animals the breakdown names, or the one asked for. */
        private void onOthers(Skeleton animal, Optional<Formula> formula) {
            OtherAnimals others = new OtherAnimals(shelf, animal, found);
            List<Node> named = shelf.breakdown().all("also-on[].formula");
            if (formula.isPresent()) {
                Skeleton other = animal.withFormula(formula.get());
                proof = other == animal ? proof : others.prove(other);
            } else {
                List<String> sound = new ArrayList<>();
                for (Node other : named) {
                    withFormula(animal, other.text(), other)
                            .flatMap(others::prove)
                            .ifPresent(holds -> sound.add(holds.formula()));
                }
                proof = proof.map(usually -> usually.alsoOn(sound));
            }
            others.tellNumbers();
        }

        private Optional<Skeleton> withFormula(Skeleton skeleton, String formula, Node blamed) {
            try {
                return Optional.of(skeleton.withFormula(Formula.parse(formula)));
            } catch (Refused e) {
                if (!found.any(List.of("C01"), List.of(shelf.breakdown()))) {
                    Node at = blamed.get("formula").isThere() ? blamed.get("formula") : blamed;
                    Saying.of(e).add("C037", at, found);
                }
                return Optional.empty();
            }
        }
    }
}
