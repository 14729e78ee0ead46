package ribmark.admin;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import ribmark.basics.Refused;
import ribmark.people.Person;
import ribmark.study.Asked;
import ribmark.study.Card;
import ribmark.study.Deck;
import ribmark.study.Grade;
import ribmark.study.Practice;

/** Tells on which evenings the apprentices studied; what each of them knew is left to chance, the same chance every time. */
final class DemoStudy {

    private static final Duration BETWEEN_ANSWERS = Duration.ofSeconds(40);

    /** Who studied when, and which cards hardly anybody knows or the best of them get wrong. */
    record Told(List<Studied> studied, List<String> hard, List<String> turned) {

        static Told read() {
            return DemoFile.read("study.yaml", Told.class);
        }
    }

    /** One apprentice: of a hundred questions so many are known the first time. */
    record Studied(String name, int knows, List<String> evenings) {}

    private final DemoStores stores;
    private final DemoRoster roster;
    private final DemoStory story;

    DemoStudy(DemoStores stores, DemoRoster roster, DemoStory story) {
        this.stores = stores;
        this.roster = roster;
        this.story = story;
    }

    void tell(Told told) {
        Deck deck = stores.practising().deck();
        told.hard().forEach(id -> check(deck, id));
        told.turned().forEach(id -> check(deck, id));
        for (Studied studied : told.studied()) {
            Random chance = new Random(studied.name().hashCode());
            for (String evening : studied.evenings()) {
                Instant begun = story.moments().at(evening);
                for (int at = 0; at < Practice.NEW_A_DAY; at++) {
                    Instant moment = begun.plus(BETWEEN_ANSWERS.multipliedBy(at));
                    story.at(moment, "study.yaml, " + studied.name(), () -> answerNext(studied, told, chance));
                }
            }
        }
    }

    private static void check(Deck deck, String id) {
        if (deck.find(id).isEmpty()) {
            throw new Refused("study.yaml: “" + id + "” is no card.");
        }
    }

    private void answerNext(Studied studied, Told told, Random chance) {
        Person person = roster.person(studied.name());
        Practice practice = stores.practising().of(person.id());
        practice.waiting().stream().findFirst().ifPresent(card -> {
            boolean right = chance.nextInt(100) < share(studied, told, card);
            long seed = practice.seed(person.id(), card);
            answer(person, card, seed, right, chance);
        });
    }

    private static int share(Studied studied, Told told, Card card) {
        if (told.turned().contains(card.id())) {
            return 100 - studied.knows();
        }
        return told.hard().contains(card.id()) ? studied.knows() / 5 : studied.knows();
    }

    private void answer(Person person, Card card, long seed, boolean right, Random chance) {
        Asked asked = card.ask(seed);
        Optional<Integer> chosen = asked.isOpen()
                ? Optional.empty()
                : Optional.of(
                        right
                                ? asked.right()
                                : (asked.right() + 1) % asked.choices().size());
        Grade said = !right ? Grade.DID_NOT_KNOW : chance.nextBoolean() ? Grade.AT_ONCE : Grade.WITH_EFFORT;
        Grade grade = asked.isOpen() ? said : Grade.chosen(right);
        stores.studied().add(person.id(), card, seed, chosen, grade);
    }
}
