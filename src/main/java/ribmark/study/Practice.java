package ribmark.study;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;
import ribmark.basics.Words;

/** Where somebody stands with their cards on a day, worked out anew from everything they answered. */
public final class Practice {

    /** More new cards than that on a day pile up on the days after (ours). */
    public static final int NEW_A_DAY = 10;

    /** One card: how often and when, the day it is due, and whether today's answer settled it. */
    private record Known(Repetition repetition, LocalDate first, LocalDate answered, LocalDate due, boolean settled) {

        /** An answer before it was due does not move the schedule; it only settles the day. */
        Known after(int grade, LocalDate day) {
            boolean settles = Repetition.settles(grade);
            if (day.isBefore(due)) {
                return new Known(repetition, first, answered, due, settled || settles);
            }
            return begun(repetition, first, grade, day);
        }

        static Known begun(Repetition before, LocalDate first, int grade, LocalDate day) {
            Repetition now = before.after(grade);
            return new Known(now, first, day, day.plusDays(now.intervalDays()), Repetition.settles(grade));
        }
    }

    private final Deck deck;
    private final LocalDate today;
    private final Map<String, Known> known = new HashMap<>();
    private final Map<String, Integer> times = new HashMap<>();

    private Practice(Deck deck, LocalDate today) {
        this.deck = deck;
        this.today = today;
    }

    static Practice of(Deck deck, List<StudyAnswer> answers, Instant now, ZoneId zone) {
        Practice practice = new Practice(deck, LocalDate.ofInstant(now, zone));
        answers.forEach(answer -> practice.take(answer, LocalDate.ofInstant(answer.at(), zone)));
        return practice;
    }

    private void take(StudyAnswer answer, LocalDate day) {
        times.merge(answer.card(), 1, Integer::sum);
        Known before = known.get(answer.card());
        known.put(
                answer.card(),
                before == null
                        ? Known.begun(Repetition.START, day, answer.grade(), day)
                        : before.after(answer.grade(), day));
    }

    /** Cards seen before that are due, the longest overdue first. */
    public List<Card> due() {
        return seen(one -> !one.due().isAfter(today))
                .sorted(Comparator.comparing(card -> known.get(card.id()).due()))
                .toList();
    }

    /** Cards like this never seen, as many as today still takes. */
    private List<Card> fresh(Predicate<Card> like) {
        long begunToday =
                known.values().stream().filter(one -> one.first().equals(today)).count();
        return deck.cards().stream()
                .filter(card -> !known.containsKey(card.id()) && like.test(card))
                .limit(Math.max(0, NEW_A_DAY - begunToday))
                .toList();
    }

    /** Cards answered today, but not well enough yet. */
    public List<Card> again() {
        return seen(one -> one.answered().equals(today) && !one.settled()).toList();
    }

    private Stream<Card> seen(Predicate<Known> like) {
        return deck.cards().stream().filter(card -> known.containsKey(card.id()) && like.test(known.get(card.id())));
    }

    /** Everything that waits today: due, then new, then once more. */
    public List<Card> waiting() {
        return waiting(card -> true);
    }

    /** What waits today among cards like this. */
    public List<Card> waiting(Predicate<Card> like) {
        return Stream.of(due(), fresh(like), again())
                .flatMap(List::stream)
                .filter(like)
                .toList();
    }

    /** What waits today, in words, and what kinds it is made of. */
    public String inWords() {
        int due = due().size();
        int fresh = fresh(card -> true).size();
        int again = again().size();
        if (due + fresh + again == 0) {
            return "Nothing waits today."
                    + nextDay()
                            .map(day -> " The next question is due on " + Words.day(day) + ".")
                            .orElse("");
        }
        List<String> kinds = new ArrayList<>();
        add(kinds, due, " to ask again");
        add(kinds, fresh, " new");
        add(kinds, again, " missed today");
        return Words.capital(Words.count(due + fresh + again, "question waits", "questions wait")) + " for you today: "
                + Words.list(kinds) + ".";
    }

    private static void add(List<String> kinds, int count, String kind) {
        if (count > 0) {
            kinds.add(Words.count(count) + kind);
        }
    }

    /** The first day after today on which something is due. */
    public Optional<LocalDate> nextDay() {
        return known.values().stream()
                .map(Known::due)
                .filter(day -> day.isAfter(today))
                .min(Comparator.naturalOrder());
    }

    /** The day a card is asked again, if it was ever answered; today while it is not settled. */
    public Optional<LocalDate> dueDay(String card) {
        return Optional.ofNullable(known.get(card))
                .map(one -> one.answered().equals(today) && !one.settled() ? today : one.due());
    }

    /** How many cards were answered at least once. */
    public int begun() {
        return known.size();
    }

    /** The seed of the next question of a card: the same until it is answered. */
    public long seed(UUID apprentice, Card card) {
        return (apprentice + " " + card.id()).hashCode() * 31L + times.getOrDefault(card.id(), 0);
    }

    /** The day this was worked out for. */
    public LocalDate today() {
        return today;
    }
}
