package ribmark.drills;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import ribmark.curriculum.Curriculum;

/** Every kind of question that can be made from one curriculum. */
public final class Drills {

    /** Seeds that follow each other would all begin alike; multiplied by this odd number they lie far apart. */
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private final List<DrillMaker> makers;
    private final Map<DrillKind, Map<String, Subject>> subjects = new EnumMap<>(DrillKind.class);

    /** Works the usual animal through once, to know what opens and what comes free. */
    public Drills(Curriculum curriculum) {
        this(curriculum, new TermPlaces(curriculum));
    }

    /** The same, with the words of the trade laid out already. */
    public Drills(Curriculum curriculum, TermPlaces places) {
        InWords words = new InWords(curriculum.skeleton());
        Worked worked = new Worked(curriculum);
        this.makers = List.of(
                new OrderDrills(worked),
                new BoneDrills(worked, curriculum.skeleton(), words),
                new RibDrills(curriculum),
                new JointDrills(worked, words),
                new FreeDrills(worked, curriculum),
                new CutDrills(worked, words),
                new MovedDrills(curriculum, words),
                new WordDrills(places, words));
        makers.forEach(maker -> subjects.put(maker.kind(), byId(maker)));
    }

    private static Map<String, Subject> byId(DrillMaker maker) {
        return maker.subjects().stream()
                .collect(Collectors.toMap(Subject::id, subject -> subject, (one, same) -> one, LinkedHashMap::new));
    }

    /** Everything that can be asked about in this way, in the order worked. */
    public List<Subject> subjects(DrillKind kind) {
        return List.copyOf(subjects.get(kind).values());
    }

    /** A question of this kind about one of its subjects; the same seed makes the same question. */
    public Drill make(DrillKind kind, String subject, long seed) {
        return maker(kind).make(subjects.get(kind).get(subject), new Random(seed));
    }

    /** Any question, by chance; the same seed makes the same question. */
    public Drill any(long seed) {
        Random random = new Random(seed * SPREAD);
        DrillMaker maker = Drill.oneOf(makers, random);
        return maker.make(Drill.oneOf(subjects(maker.kind()), random), random);
    }

    private DrillMaker maker(DrillKind kind) {
        return makers.stream().filter(one -> one.kind() == kind).findFirst().orElseThrow();
    }
}
