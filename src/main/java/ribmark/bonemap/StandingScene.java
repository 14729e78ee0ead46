package ribmark.bonemap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import ribmark.basics.Words;
import ribmark.competence.Standing;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.MapRow.Role;
import ribmark.curriculum.Step;

/**
 * The scene of where one apprentice stands: each bone filled by the standing on the step that is about the fewest bones,
 * of equals the one furthest behind; each line
 * solid once every step that cuts along it is signed off.
 */
final class StandingScene {

    /** Furthest behind first. */
    private static final List<Standing> BEHIND = List.of(
            Standing.NOT_STARTED,
            Standing.PRACTISING,
            Standing.THIN_EVIDENCE,
            Standing.DUE_AGAIN,
            Standing.READY_TO_SIGN,
            Standing.SIGNED_OFF);

    private final Curriculum curriculum;
    private final Drawing drawing;
    private final Function<Step, Standing> standing;
    private final Naming naming;
    private final Map<String, Step> steps = new LinkedHashMap<>();

    StandingScene(Curriculum curriculum, Drawing drawing, Function<Step, Standing> standing) {
        this.curriculum = curriculum;
        this.drawing = drawing;
        this.standing = standing;
        this.naming = new Naming(drawing);
        curriculum.breakdown().steps().stream()
                .sorted(Comparator.<Step>comparingInt(
                                step -> step.landmark().bones().size())
                        .thenComparingInt(step -> BEHIND.indexOf(standing.apply(step)))
                        .thenComparingInt(Step::number))
                .forEach(step -> step.landmark().bones().forEach(bone -> steps.putIfAbsent(bone, step)));
    }

    Scene scene() {
        Map<String, List<Portion>> portions = new HashMap<>();
        drawing.bones().keySet().forEach(bone -> portions.put(bone, List.of(portion(bone))));
        return new Scene(
                drawing,
                curriculum.breakdown().title(),
                "where each step stands",
                portions,
                lines(),
                tags(),
                curriculum.breakdown().steps().stream().map(this::mark).toList(),
                List.of());
    }

    private Portion portion(String bone) {
        return Optional.ofNullable(steps.get(bone))
                .map(standing)
                .filter(held -> held != Standing.NOT_STARTED)
                .map(held -> Portion.whole(bone, Fill.of(held)))
                .orElseGet(() -> Portion.faint(bone));
    }

    /** What stands on the picture at the bones of a step. */
    private String label(Step step) {
        return step.number() + " " + standing.apply(step).word();
    }

    private List<Tag> tags() {
        List<Tag> tags = new ArrayList<>();
        for (Step step : curriculum.breakdown().steps()) {
            largest(step).ifPresent(bone -> tags.add(Tag.near(Naming.anchor(bone), bone.points(), label(step), false)));
        }
        return tags;
    }

    /** The largest of its bones in sight. */
    Optional<Shape> largest(Step step) {
        return bones(step).stream()
                .flatMap(bone -> drawing.bone(bone).stream())
                .filter(bone -> !drawing.isCovered(Naming.anchor(bone), bone))
                .max(Comparator.comparingDouble(bone -> bone.box().area()));
    }

    private List<String> bones(Step step) {
        return steps.keySet().stream()
                .filter(bone -> steps.get(bone).equals(step))
                .toList();
    }

    private List<DrawnLine> lines() {
        return drawing.all(Role.LINE).stream()
                .filter(line -> !cutting(line.of()).isEmpty())
                .map(line -> new DrawnLine(
                        line,
                        cutting(line.of()).stream().allMatch(step -> standing.apply(step) == Standing.SIGNED_OFF)))
                .toList();
    }

    /** The steps that part something along a landmark’s line. */
    private List<Step> cutting(String landmark) {
        return curriculum.breakdown().steps().stream()
                .filter(step -> step.landmark().uses().contains(landmark))
                .filter(step -> !step.operations().isEmpty())
                .toList();
    }

    private Mark mark(Step step) {
        List<String> said = new ArrayList<>();
        List<String> here = bones(step);
        if (!here.isEmpty()) {
            said.add(word(step) + ": " + naming.sayIds(here));
        }
        lines().stream()
                .filter(line -> cutting(line.shape().of()).contains(step))
                .map(line -> line.word() + ": " + line.name(curriculum))
                .distinct()
                .forEach(said::add);
        return new Mark(label(step), said.isEmpty() ? elsewhere(step) : Words.capital(String.join("; ", said)));
    }

    private String word(Step step) {
        Standing held = standing.apply(step);
        return held == Standing.NOT_STARTED
                ? Portion.FAINT_IN_WORDS
                : Fill.of(held).word();
    }

    private String elsewhere(Step step) {
        Set<Step> others =
                step.landmark().bones().stream().map(steps::get).collect(Collectors.toCollection(HashSet::new));
        List<String> numbers =
                others.stream().map(Step::number).sorted().map(String::valueOf).toList();
        return numbers.isEmpty()
                ? "No bones"
                : "Its bones carry step" + (numbers.size() > 1 ? "s " : " ") + Words.list(numbers);
    }
}
