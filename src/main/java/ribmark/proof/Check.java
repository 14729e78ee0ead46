package ribmark.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ribmark.anatomy.Formula;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Refused;
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
                found.add(
                        "C007", file, "No breakdown names this stage.", "Name it under stages, or take the file away.");
            }
        }
    }

    /** One breakdown on its way from files to curriculum. */
    private static final class Course {

        /** With one of these among its own files a working would only echo them. */
        private static final List<String> NOT_READY = List.of("C00", "C01", "C020", "C021", "C022", "C023", "C03");

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
            return new CurriculumReader(shelf, usual.orElseThrow()).read(version);
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
            String own = shelf.breakdown().get("formula").text();
            Optional<Skeleton> drawn = SkeletonRows.read(shelf.bones(), shelf.joints(), found);
            drawn.ifPresent(bones -> MapCheck.check(shelf, bones, found));
            usual = drawn.flatMap(bones -> withFormula(bones, own));
            usual.ifPresent(animal -> BoneNames.checkTeaching(shelf, animal, found));
            Optional<Skeleton> animal =
                    formula.isEmpty() ? usual : usual.map(bones -> bones.withFormula(formula.get()));
            animal.ifPresent(this::prove);
        }

        private void prove(Skeleton animal) {
            BoneNames.checkWork(shelf, animal, found);
            if (!found.any(NOT_READY, shelf.work())) {
                proof = Proof.of(shelf, animal, found);
            }
        }

        private Optional<Skeleton> withFormula(Skeleton skeleton, String formula) {
            try {
                return Optional.of(skeleton.withFormula(Formula.parse(formula)));
            } catch (Refused e) {
                if (!found.any(List.of("C01"), List.of(shelf.breakdown()))) {
                    Saying.of(e).add("C037", shelf.breakdown().get("formula"), found);
                }
                return Optional.empty();
            }
        }
    }
}
