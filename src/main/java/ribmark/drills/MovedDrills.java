package ribmark.drills;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import ribmark.anatomy.Comparison.Pair;
import ribmark.anatomy.Comparison.Whereabouts;
import ribmark.basics.Words;
import ribmark.curriculum.Curriculum;
import ribmark.moved.Outcome;
import ribmark.moved.Way;

/** Where a bone is once a line ran elsewhere, or which bone went over; whole bones alone are asked about. */
final class MovedDrills implements DrillMaker {

    private final Curriculum curriculum;
    private final InWords words;
    private final Map<String, List<Outcome>> outcomes = new LinkedHashMap<>();

    MovedDrills(Curriculum curriculum, InWords words) {
        this.curriculum = curriculum;
        this.words = words;
        for (Way way : Way.all(curriculum.breakdown())) {
            Outcome outcome = Outcome.of(curriculum, way);
            if (outcome.comparison().elsewhere().stream().anyMatch(MovedDrills::isWhole)) {
                outcomes.computeIfAbsent(id(way), id -> new ArrayList<>()).add(outcome);
            }
        }
    }

    private static String id(Way way) {
        return way.line().id() + "-" + way.run().towards() + "-" + way.run().by();
    }

    private static boolean isWhole(Whereabouts bone) {
        return bone.part().name().equals(bone.part().bone().id());
    }

    @Override
    public DrillKind kind() {
        return DrillKind.MOVED;
    }

    @Override
    public List<Subject> subjects() {
        return outcomes.entrySet().stream()
                .map(asked -> {
                    Way way = asked.getValue().get(0).way();
                    List<String> steps = way.line().steps();
                    return new Subject(
                            asked.getKey(),
                            steps.get(steps.size() - 1),
                            way.line().name() + ", " + way.run().howFar() + " towards the "
                                    + way.run().towards());
                })
                .toList();
    }

    @Override
    public Drill make(Subject subject, Random random) {
        Outcome outcome = Drill.oneOf(outcomes.get(subject.id()), random);
        return random.nextBoolean() ? where(outcome, random) : which(outcome, random);
    }

    private Drill where(Outcome outcome, Random random) {
        Whereabouts bone = Drill.oneOf(random.nextInt(3) > 0 ? gone(outcome) : near(outcome), random);
        List<String> given = new ArrayList<>(outcome.way().words());
        given.add(bone.part().name());
        Drill.About about = new Drill.About(
                kind(),
                List.copyOf(given),
                outcome.way().says() + ". Where is " + say(bone) + " now?",
                outcome.way().words());
        Stream<Drill.Choice> others = changed(outcome).stream()
                .filter(piece -> !piece.equals(bone.is()))
                .map(piece -> new Drill.Choice(first(piece), "in " + outcome.name(piece), why(outcome, bone)));
        return about.with(
                new Drill.Choice(first(bone.is()), "in " + outcome.name(bone.is()), why(outcome, bone)),
                Stream.concat(
                        others,
                        Stream.of(new Drill.Choice(
                                "", "by itself", "It still hangs on something. " + why(outcome, bone)))),
                random);
    }

    private Drill which(Outcome outcome, Random random) {
        Whereabouts gone = Drill.oneOf(gone(outcome), random);
        Drill.About about = new Drill.About(
                kind(),
                outcome.way().words(),
                outcome.way().says() + ". Which of these bones ended up in another piece?",
                outcome.way().words());
        return about.with(
                choice(outcome, gone),
                Drill.shuffled(near(outcome), random).stream().map(bone -> choice(outcome, bone)),
                random);
    }

    private Drill.Choice choice(Outcome outcome, Whereabouts bone) {
        return new Drill.Choice(bone.part().name(), say(bone), why(outcome, bone));
    }

    private String say(Whereabouts bone) {
        return words.bone(bone.part().name());
    }

    private String why(Outcome outcome, Whereabouts bone) {
        String said = Words.capital(say(bone));
        return bone.isElsewhere()
                ? said + " should be in " + outcome.name(bone.should()) + " and is in " + outcome.name(bone.is()) + "."
                : said + " is in " + outcome.name(bone.is()) + ", where it should be.";
    }

    private static String first(Pair piece) {
        return piece.is().orElseThrow().first().name();
    }

    private static List<Whereabouts> gone(Outcome outcome) {
        return outcome.comparison().elsewhere().stream()
                .filter(MovedDrills::isWhole)
                .toList();
    }

    private static List<Pair> changed(Outcome outcome) {
        return outcome.comparison().pieces().stream()
                .filter(pair -> !pair.isAsItShouldBe())
                .toList();
    }

    /** Bones that stayed where they should be and touch, or mirror, one that did not. */
    private List<Whereabouts> near(Outcome outcome) {
        List<String> gone =
                gone(outcome).stream().map(bone -> bone.part().name()).toList();
        return outcome.comparison().bones().stream()
                .filter(bone -> isWhole(bone) && !bone.isElsewhere())
                .filter(bone -> changed(outcome).contains(bone.is()))
                .filter(bone ->
                        touches(bone.part().name(), gone) || mirrors(bone.part().name(), gone))
                .toList();
    }

    private boolean touches(String bone, List<String> others) {
        return curriculum.skeleton().joints().stream()
                .filter(joint -> joint.holds(bone))
                .anyMatch(joint -> others.stream().anyMatch(joint::holds));
    }

    private boolean mirrors(String bone, List<String> others) {
        String name = words.bothSides(List.of(bone));
        return others.stream().anyMatch(other -> words.bothSides(List.of(other)).equals(name));
    }
}
