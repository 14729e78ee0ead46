package ribmark.curriculum;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Where the words of the trade are looked up: ours first, and apart from them what is said elsewhere. */
public final class WordPages {

    /** Words under one heading. */
    public record Group(String id, String heading, String lead, List<TradeWords.Word> words) {}

    private final TradeWords words;

    /** The words are those of this curriculum. */
    public WordPages(Curriculum curriculum) {
        this.words = new TradeWords(curriculum);
    }

    /** Adds the address. */
    public void addTo(Routes routes) {
        routes.page("/words", this::all, Allow.of(Role.ASSESSOR, Role.TUTOR, Role.APPRENTICE));
    }

    private void all(Context ctx) {
        Group ours = new Group("here", "Said here", "What our pages mean when they say it.", words.ours());
        Group others =
                new Group("elsewhere", "Said elsewhere", "Ask which bone is meant before you cut.", words.elsewhere());
        ctx.render("curriculum/words.html", Map.of("groups", List.of(ours, others)));
    }
}
