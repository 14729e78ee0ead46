package ribmark.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.curriculum.Term;
import ribmark.drills.DrillKind;
import ribmark.drills.Drills;
import ribmark.drills.Subject;
import ribmark.drills.TermPlaces;

/** Every card of one curriculum, step after step in the order worked: questions, made questions, words, faults. */
public final class Deck {

    private final Curriculum curriculum;
    private final Drills drills;
    private final TermPlaces terms;
    private final Map<String, Card> cards = new LinkedHashMap<>();

    /** Lays all cards out. */
    public Deck(Curriculum curriculum) {
        this.curriculum = curriculum;
        this.terms = new TermPlaces(curriculum);
        this.drills = new Drills(curriculum, terms);
        curriculum.breakdown().steps().forEach(this::lay);
    }

    private void lay(Step step) {
        step.questions().forEach(question -> put("question/" + question.id(), step, question.ask(), question.answer()));
        layDrills(EnumSet.complementOf(EnumSet.of(DrillKind.WORD)), step);
        layWords(step);
        step.faults().forEach(fault -> put("fault/" + step.id() + "/" + fault.id(), step, said(fault), fault.mend()));
    }

    private static String said(Step.Fault fault) {
        return fault.text() + ". How do you mend it?";
    }

    private void put(String id, Step step, String ask, String answer) {
        add(new Card(id, step.id(), ask, seed -> Asked.open(ask, answer)));
    }

    private void layDrills(Set<DrillKind> kinds, Step step) {
        for (DrillKind kind : kinds) {
            for (Subject subject : drills.subjects(kind)) {
                if (subject.step().equals(step.id())) {
                    add(new Card(
                            "drill/" + kind.code() + "/" + subject.id(),
                            step.id(),
                            kind.word() + ": " + subject.words(),
                            seed -> Asked.of(drills.make(kind, subject.id(), seed))));
                }
            }
        }
    }

    private void layWords(Step step) {
        terms.terms().forEach((id, term) -> {
            if (terms.step(id).equals(step.id())) {
                put("term/" + id, step, meaning(term), term.means());
            }
        });
        layDrills(EnumSet.of(DrillKind.WORD), step);
    }

    private static String meaning(Term term) {
        return "What does “" + term.trade() + "” mean? Said here: " + term.where() + ".";
    }

    private void add(Card card) {
        cards.put(card.id(), card);
    }

    /** All cards in their order. */
    public List<Card> cards() {
        return new ArrayList<>(cards.values());
    }

    /** The card with this id, if there still is one. */
    public Optional<Card> find(String id) {
        return Optional.ofNullable(cards.get(id));
    }

    /** The step a card belongs to. */
    public Step step(Card card) {
        return curriculum.breakdown().step(card.step()).orElseThrow();
    }
}
