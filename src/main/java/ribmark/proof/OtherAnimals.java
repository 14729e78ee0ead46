package ribmark.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import ribmark.anatomy.Skeleton;
import ribmark.contentfiles.ContentProblem;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.ContentProblem.Place;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/**
 * Proves a breakdown that holds for the usual animal on others, with more or fewer vertebrae, and names what counts by number
 * where the last one is meant.
 */
final class OtherAnimals {

    private static final Pattern NUMBERED = Pattern.compile("(?<![A-Za-z0-9])([A-Za-z]+)([1-9][0-9]?)(?![0-9])");

    private final Shelf shelf;
    private final Skeleton usual;
    private final Findings found;
    private final Map<Node, String> told = new LinkedHashMap<>();
    private final Set<Place> places = new HashSet<>();

    OtherAnimals(Shelf shelf, Skeleton usual, Findings found) {
        this.shelf = shelf;
        this.usual = usual;
        this.found = found;
    }

    /** What was proven on this animal; if it does not hold there, the steps to blame are among the findings. */
    Optional<Proof> prove(Skeleton animal) {
        Findings quiet = new Findings();
        BoneNames.checkTeaching(shelf, animal, quiet);
        BoneNames.checkWork(shelf, animal, quiet);
        Optional<Proof> proof = quiet.none() ? Proof.inAdvisedOrder(shelf, animal, quiet) : Optional.empty();
        List<Node> numbers = new ArrayList<>(byNumber(taught(), animal));
        if (!quiet.none()) {
            numbers.addAll(byNumber(worked(), animal));
            if (numbers.isEmpty()) {
                quiet.list().forEach(problem -> tell(problem, animal));
            }
        }
        numbers.forEach(number -> told.putIfAbsent(number, animal.formula().toString()));
        return quiet.none() && numbers.isEmpty() ? proof : Optional.empty();
    }

    /** Told once for each number, however many animals it fails on. */
    void tellNumbers() {
        told.forEach((number, formula) -> found.add(
                "C028",
                number,
                "“" + number.text() + "” goes by the number of the last one of this animal.",
                "On an animal with vertebrae " + formula + " the last has another number. Write (last) for it, as in "
                        + suggested(number.text()) + "."));
    }

    /** Each place is told for the first animal it fails on. */
    private void tell(ContentProblem problem, Skeleton animal) {
        if (!places.add(problem.at())) {
            return;
        }
        found.add(
                "C028",
                problem.at(),
                "On an animal with vertebrae " + animal.formula() + " this does not hold.",
                problem.headline() + " " + problem.help(),
                problem.also().toArray(Also[]::new));
    }

    private List<Node> byNumber(Stream<Node> written, Skeleton animal) {
        return written.filter(id -> namesLast(id.text(), animal)).toList();
    }

    /** Where the finger is shown the last one by its number, it points at another on every other animal, and no proof would fail. */
    private Stream<Node> taught() {
        return Stream.of(
                        shelf.landmarks().all("landmarks[].bones[]").stream(),
                        shelf.landmarks().all("landmarks[].joints[]").stream(),
                        shelf.terms().all("terms[].bones[]").stream(),
                        shelf.steps().stream().flatMap(step -> step.all("landmark.bones[]").stream()))
                .flatMap(nodes -> nodes);
    }

    private Stream<Node> worked() {
        Stream<Node> done = shelf.steps().stream()
                .flatMap(step -> step.get("operations").items().stream())
                .flatMap(operation -> Deeds.written(operation).stream());
        Stream<Node> held =
                Stream.concat(shelf.cuts().all("cuts[].bones[]").stream(), shelf.cuts().all("cuts[].or[]").stream());
        return Stream.concat(done, held);
    }

    private boolean namesLast(String written, Skeleton animal) {
        Matcher found = NUMBERED.matcher(written);
        boolean names = false;
        while (found.find()) {
            OptionalInt last = usual.last(found.group(1));
            names |= last.isPresent()
                    && last.getAsInt() == Integer.parseInt(found.group(2))
                    && !last.equals(animal.last(found.group(1)));
        }
        return names;
    }

    private String suggested(String written) {
        return NUMBERED.matcher(written)
                .replaceAll(found -> usual.last(found.group(1)).orElse(0) == Integer.parseInt(found.group(2))
                        ? found.group(1) + "(last)"
                        : found.group());
    }
}
