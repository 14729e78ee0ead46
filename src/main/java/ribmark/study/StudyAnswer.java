package ribmark.study;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** What an apprentice answered to a card: the question as it was put, the choice taken if there were any, and the grade. */
public record StudyAnswer(
        UUID id,
        UUID apprentice,
        String card,
        long seed,
        String digest,
        Optional<Integer> chosen,
        boolean right,
        int grade,
        Instant at) {}
