package ribmark.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What each person answered to each card the first time; later answers show what they learned, not what the question is worth. */
record FirstAnswers(Map<UUID, Map<String, Boolean>> byPerson) {

    static FirstAnswers of(List<StudyAnswer> answers) {
        Map<UUID, Map<String, Boolean>> byPerson = new LinkedHashMap<>();
        answers.forEach(answer -> byPerson.computeIfAbsent(answer.apprentice(), who -> new LinkedHashMap<>())
                .putIfAbsent(answer.card(), answer.right()));
        return new FirstAnswers(byPerson);
    }

    int people() {
        return byPerson.size();
    }

    Map<String, ItemAnalysis.Item> items() {
        return ItemAnalysis.of(List.copyOf(byPerson.values()));
    }
}
