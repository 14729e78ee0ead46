package ribmark.proof;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ribmark.basics.Words;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Where the administrator sees which content is in use, what was proved of it, and every problem of content not taken. */
public final class ContentPages {

    /** A pair of a ledger. */
    public record Fact(String caption, String value) {}

    private final Curriculum inUse;
    private final Check check;

    /** The page shows what is in use and what was found when it was read. */
    public ContentPages(ContentInUse content) {
        this.inUse = content.curriculum();
        this.check = content.check();
    }

    /** Adds the address of the page. */
    public void addTo(Routes routes) {
        routes.page("/content", this::show, Allow.of(Role.ADMINISTRATOR));
    }

    private void show(Context ctx) {
        int problems = check.problems().size();
        String title = check.ok() ? "The content is sound" : "The content was not taken";
        ctx.render(
                "proof/content.html",
                Map.of(
                        "title", title,
                        "ok", check.ok(),
                        "version", inUse.version(),
                        "count", Words.capital(Words.count(problems, "thing", "things")) + " to put right",
                        "problems", check.problems(),
                        "proofs", check.proofs().stream().map(this::proof).toList()));
    }

    private List<Fact> proof(Proof proof) {
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact("Breakdown", proof.breakdown()),
                new Fact("Vertebrae: neck, rib, loin, sacral, tail", proof.formula()),
                new Fact("Worked through", proof.stages() + " stages, " + proof.steps() + " steps"),
                new Fact("Skeleton", proof.bones() + " bones, " + proof.joints() + " joints"),
                new Fact("Comes free", proof.pieces().size() + " pieces, each bone in exactly one of them")));
        proof.piecesWithout()
                .forEach((step, pieces) ->
                        facts.add(new Fact("Without the step “" + title(step) + "”", pieces + " pieces")));
        if (!proof.alsoOn().isEmpty()) {
            facts.add(new Fact("Holds on other animals too", String.join("; ", proof.alsoOn())));
        }
        return facts;
    }

    private String title(String step) {
        return inUse.breakdown().step(step).map(Step::title).orElse(step);
    }
}
