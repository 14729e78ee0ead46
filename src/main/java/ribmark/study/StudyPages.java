package ribmark.study;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.curriculum.BoneWords;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Known;
import ribmark.curriculum.Stage;
import ribmark.curriculum.Term;
import ribmark.people.Access;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Where an apprentice learns, one stage at a time, and looks words up. */
public final class StudyPages {

    /** A word of the trade with the bones it points at. */
    public record Word(String trade, String means, String where, String bones, List<Known> known) {}

    private static final Allow ALLOW = Allow.of().own(Role.APPRENTICE);

    private final Curriculum curriculum;
    private final Practising practising;

    /** The questions are drawn from this curriculum. */
    public StudyPages(Curriculum curriculum, Practising practising) {
        this.curriculum = curriculum;
        this.practising = practising;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/study", this::cards, ALLOW);
        routes.page("/study/words", this::words, Allow.of(Role.APPRENTICE));
    }

    private void cards(Context ctx) {
        Breakdown breakdown = curriculum.breakdown();
        Stage stage = Optional.ofNullable(ctx.queryParam("stage"))
                .flatMap(breakdown::stage)
                .orElse(breakdown.stages().get(0));
        ctx.render(
                "study/cards.html",
                Map.of(
                        "stages",
                        breakdown.stages(),
                        "stage",
                        stage,
                        "today",
                        practising.of(Access.signedIn(ctx).id()),
                        "cards",
                        stage.steps().stream().map(StepQuestions::of).toList()));
    }

    private void words(Context ctx) {
        BoneWords bones = new BoneWords(curriculum.skeleton());
        List<Word> words =
                curriculum.terms().stream().map(term -> word(term, bones)).toList();
        ctx.render("study/words.html", Map.of("words", words));
    }

    private Word word(Term term, BoneWords bones) {
        return new Word(
                term.trade(),
                term.means(),
                term.where(),
                bones.say(term.bones()),
                Known.of(curriculum, term.restsOn().stream()));
    }
}
