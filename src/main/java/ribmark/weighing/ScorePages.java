package ribmark.weighing;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import ribmark.basics.Ids;
import ribmark.basics.Refused;
import ribmark.carcase.Carcase;
import ribmark.carcase.CarcaseStore;
import ribmark.curriculum.Curriculum;
import ribmark.cuttingtests.CuttingTest;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** What a carcase scored, each time it was asked, and whether its weigh-up counts as a cutting test. */
public final class ScorePages {

    private static final String WHO = "who";
    private static final String WHY = "why";

    private final WeighedCarcases weighed;
    private final KeptScoreStore scores;
    private final CuttingTests tests;
    private final CarcaseStore carcases;
    private final Supplier<Curriculum> curriculum;
    private final ZoneId zone;

    /** Weigh-ups are reckoned, scores and cutting tests kept; the zone is the college's. */
    public ScorePages(
            WeighedCarcases weighed,
            KeptScoreStore scores,
            CuttingTests tests,
            CarcaseStore carcases,
            Supplier<Curriculum> curriculum,
            ZoneId zone) {
        this.weighed = weighed;
        this.scores = scores;
        this.tests = tests;
        this.carcases = carcases;
        this.curriculum = curriculum;
        this.zone = zone;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page(
                "/weigh-ups/{carcase}/scores",
                ctx -> render(ctx, carcase(ctx), Form.blank()),
                Allow.of(Role.ASSESSOR, Role.TUTOR));
        routes.post("/weigh-ups/{carcase}/scores", this::keep, Allow.of(Role.ASSESSOR));
        routes.post("/weigh-ups/{carcase}/cutting-test", this::enter, Allow.of(Role.ASSESSOR));
        routes.post("/weigh-ups/{carcase}/cutting-test/withdrawal", this::takeBack, Allow.of(Role.ASSESSOR));
    }

    private Carcase carcase(Context ctx) {
        return carcases.find(Ids.of(ctx.pathParam("carcase")));
    }

    private void keep(Context ctx) {
        Carcase carcase = carcase(ctx);
        Reckoning now = weighed.reckonNow(carcase).orElseThrow(() -> new Refused(nothing(carcase)));
        scores.keep(carcase.id(), now.score(), weighed.judging(carcase, true).version(), Access.signedIn(ctx));
        back(ctx, carcase);
    }

    private static String nothing(Carcase carcase) {
        return "Nothing of " + carcase.name() + " was weighed, so there is nothing to score.";
    }

    private void enter(Context ctx) {
        Carcase carcase = carcase(ctx);
        tests.offered(carcase).whyNot().ifPresent(why -> {
            throw new Refused(why);
        });
        Form form = Form.typed(ctx);
        String who = form.words(WHO, "Who cut it", "Write the name of whoever cut the whole carcase.");
        if (form.wrong()) {
            render(ctx.status(422), carcase, form);
            return;
        }
        tests.enter(carcase, who, Access.signedIn(ctx));
        back(ctx, carcase);
    }

    private void takeBack(Context ctx) {
        Carcase carcase = carcase(ctx);
        CuttingTest test = tests.of(carcase)
                .filter(CuttingTest::counts)
                .orElseThrow(() -> new Refused(carcase.title() + " does not count as a cutting test."));
        Form form = Form.typed(ctx);
        String why =
                form.words(WHY, "Why it counts no more", "Say it in a few words, for example: a saw cut went wrong.");
        if (form.wrong()) {
            render(ctx.status(422), carcase, form);
            return;
        }
        tests.takeBack(test, why, Access.signedIn(ctx));
        back(ctx, carcase);
    }

    private static void back(Context ctx, Carcase carcase) {
        Site.see(ctx, "/weigh-ups/" + carcase.id() + "/scores");
    }

    private void render(Context ctx, Carcase carcase, Form form) {
        Acting acting = Access.signedIn(ctx);
        Optional<CuttingTest> test = tests.of(carcase);
        TestOffered offered = tests.offered(carcase);
        List<KeptScore> kept = scores.of(carcase.id());
        Map<String, Object> model = new HashMap<>();
        model.put("carcase", carcase);
        model.put("strip", WeighUpView.strip(carcase, curriculum.get()));
        model.put("title", "What did " + carcase.name() + " score?");
        model.put("writes", acting.as(Role.ASSESSOR));
        model.put("weighed", offered.isWeighed());
        model.put(
                "kept",
                kept.stream().map(score -> KeptScoreView.of(score, zone)).toList());
        model.put("stands", KeptScoreView.stands(weighed, carcase));
        model.put("test", test.map(told -> KeptScoreView.said(told, zone)).orElse(null));
        model.put("counts", test.filter(CuttingTest::counts).isPresent());
        model.put(
                "costing",
                weighed.reckon(carcase, List.of())
                        .flatMap(reckoning ->
                                reckoning.score().costing(curriculum.get().prices()))
                        .orElse(null));
        model.put("prices", curriculum.get().prices().orElse(null));
        model.put("whyNot", offered.whyNot().orElse(null));
        model.put("form", form);
        ctx.render("weighing/scores.html", model);
    }
}
