package ribmark.study;

import java.time.Clock;
import java.time.ZoneId;
import java.util.UUID;
import java.util.function.Supplier;
import ribmark.curriculum.Curriculum;

/** Where each apprentice stands with their cards now; the deck is laid out once for each version of the content. */
public final class Practising {

    private record Laid(String version, Deck deck) {}

    private final StudyStore answers;
    private final Supplier<Curriculum> curriculum;
    private final Clock clock;
    private final ZoneId zone;
    private volatile Laid laid;

    /** Days are those of the college's zone. */
    public Practising(StudyStore answers, Supplier<Curriculum> curriculum, Clock clock, ZoneId zone) {
        this.answers = answers;
        this.curriculum = curriculum;
        this.clock = clock;
        this.zone = zone;
    }

    /** The cards of the content in use. */
    public Deck deck() {
        Curriculum now = curriculum.get();
        Laid there = laid;
        if (there == null || !there.version().equals(now.version())) {
            there = new Laid(now.version(), new Deck(now));
            laid = there;
        }
        return there.deck();
    }

    /** Where this apprentice stands today. */
    public Practice of(UUID apprentice) {
        return Practice.of(deck(), answers.allOf(apprentice), clock.instant(), zone);
    }
}
