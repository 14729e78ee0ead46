package ribmark.drills;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import ribmark.curriculum.Term;

/** Which bones a word of the trade names, and which word names these bones; always with the place where it is said. */
final class WordDrills implements DrillMaker {

    private final TermPlaces places;
    private final InWords words;
    private final Map<String, Term> withBones = new LinkedHashMap<>();

    WordDrills(TermPlaces places, InWords words) {
        this.places = places;
        this.words = words;
        places.terms().forEach((id, term) -> {
            if (!term.bones().isEmpty()
                    && others(term, places.terms().values().stream()).count() > 2) {
                withBones.put(id, term);
            }
        });
    }

    @Override
    public DrillKind kind() {
        return DrillKind.WORD;
    }

    @Override
    public List<Subject> subjects() {
        return withBones.entrySet().stream()
                .map(each -> new Subject(
                        each.getKey(),
                        places.step(each.getKey()),
                        "“" + each.getValue().trade() + "”"))
                .toList();
    }

    @Override
    public Drill make(Subject subject, Random random) {
        Term term = withBones.get(subject.id());
        boolean fromWord = random.nextBoolean();
        String ask = fromWord
                ? "“" + term.trade() + "”, as said here: " + term.where() + ". Which bones does it point at?"
                : "Which word of the trade points at " + words.bothSides(term.bones()) + "? Said here: " + term.where()
                        + ".";
        Drill.About about = new Drill.About(
                kind(), List.of(subject.id(), fromWord ? "from word" : "from bones"), ask, term.bones());
        Stream<Term> others = others(term, Drill.shuffled(List.copyOf(withBones.values()), random).stream());
        return about.with(choice(term, fromWord), others.map(other -> choice(other, fromWord)), random);
    }

    /** Terms that name neither more nor fewer nor the same of these bones, so that none of them could be meant. */
    private static Stream<Term> others(Term term, Stream<Term> all) {
        Set<String> mine = Set.copyOf(term.bones());
        return all.filter(other -> !other.bones().isEmpty())
                .filter(other -> !other.trade().equals(term.trade()))
                .filter(other ->
                        !mine.containsAll(other.bones()) && !other.bones().containsAll(mine));
    }

    private Drill.Choice choice(Term term, boolean fromWord) {
        String bones = words.bothSides(term.bones());
        String teaches = "“" + term.trade() + "” (" + term.where() + "): " + term.means() + " Bones: " + bones + ".";
        return new Drill.Choice(places.id(term), fromWord ? bones : term.trade(), teaches);
    }
}
