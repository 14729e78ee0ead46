package ribmark.study;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import ribmark.curriculum.Breakdown;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Stage;
import ribmark.people.Access;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Where an apprentice learns, one stage at a time. */
public final class StudyPages {

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
}
