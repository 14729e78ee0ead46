package ribmark.weighing;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import ribmark.basics.Ids;
import ribmark.basics.Refused;
import ribmark.carcase.Carcase;
import ribmark.carcase.CarcaseStore;
import ribmark.curriculum.Curriculum;
import ribmark.people.Access;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;
import ribmark.weighing.SlipAnswer.Choice;
import ribmark.weighup.Balances;

/** Where an open question about a reading takes the screen while the piece is still on the block, and is answered. */
public final class SlipQuestionPages {

    private static final String OPEN_NO_MORE =
            "This question is open no more: it was answered, or the list has changed. Look at the list.";

    /** What the page offers: the three answers, the reason for keeping, or the field for weighing the carcase again. */
    private static final String ASK = "ask";

    private static final String KEEP = "keep";
    private static final String AGAIN = "again";

    private final Answering answering;
    private final CarcaseStore carcases;
    private final Supplier<Curriculum> curriculum;

    /** The curriculum brings the model by which weights are doubted. */
    public SlipQuestionPages(Answering answering, CarcaseStore carcases, Supplier<Curriculum> curriculum) {
        this.answering = answering;
        this.carcases = carcases;
        this.curriculum = curriculum;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.after("/weigh-ups/{carcase}/question", this::show, Allow.of(Role.ASSESSOR));
        routes.post("/weigh-ups/{carcase}/question", this::answer, Allow.of(Role.ASSESSOR));
    }

    private Carcase carcase(Context ctx) {
        return carcases.find(Ids.of(ctx.pathParam("carcase")));
    }

    private void show(Context ctx) {
        Carcase carcase = carcase(ctx);
        Optional<QuestionView.Asked> asked = answering.asked(carcase);
        Optional<CarcaseQuestionView.Asked> whole =
                asked.isPresent() ? Optional.empty() : answering.askedOfCarcase(carcase);
        if (asked.isPresent()) {
            render(ctx, view(ctx, asked.get()), Form.blank(), ctx.queryParam("keep") != null ? KEEP : ASK);
        } else if (whole.isPresent()) {
            String state = ctx.queryParam("keep") != null ? KEEP : ctx.queryParam("again") != null ? AGAIN : ASK;
            render(ctx, view(whole.get()), Form.blank(), state);
        } else {
            Site.see(ctx, "/weigh-ups/" + carcase.id());
        }
    }

    private QuestionView view(Context ctx, QuestionView.Asked asked) {
        Curriculum content = curriculum.get();
        return QuestionView.of(
                asked,
                WeighUpView.strip(asked.carcase(), content),
                Access.signedIn(ctx),
                content.weighing().orElseThrow());
    }

    private QuestionView view(CarcaseQuestionView.Asked asked) {
        Curriculum content = curriculum.get();
        return CarcaseQuestionView.of(
                asked,
                WeighUpView.strip(asked.question().carcase(), content),
                content.weighing().orElseThrow());
    }

    private static void render(Context ctx, QuestionView page, Form form, String state) {
        Map<String, Object> model = new HashMap<>();
        model.put("page", page);
        model.put("form", form);
        model.put("state", state);
        ctx.render("weighing/question.html", model);
    }

    /** Answers what is asked about the whole carcase. */
    private void answerOfCarcase(Context ctx, Carcase carcase, Form form) {
        CarcaseQuestionView.Asked asked = answering
                .askedOfCarcase(carcase)
                .filter(a -> a.question().token().equals(form.value("about")))
                .orElseThrow(() -> new Refused(OPEN_NO_MORE));
        Choice choice = Choice.of(form.value("answer")).orElse(Choice.KEEP);
        if (choice == Choice.KEEP) {
            form.words("words", "Why it stays", "Say it in a few words, for example: I read the scale again.");
        }
        if (choice == Choice.AGAIN) {
            WeighUpForm.weight(form, "weight", "Weight of the carcase");
        }
        if (form.wrong()) {
            render(ctx.status(422), view(asked), form, choice == Choice.KEEP ? KEEP : AGAIN);
            return;
        }
        answering.answer(asked.question(), choice, form.value("weight"), form.value("words"), Access.signedIn(ctx));
        Site.see(ctx, "/weigh-ups/" + carcase.id());
    }

    private void answer(Context ctx) {
        Carcase carcase = carcase(ctx);
        Form form = Form.typed(ctx);
        if (form.value("about").startsWith(Balances.CARCASE + " ")) {
            answerOfCarcase(ctx, carcase, form);
            return;
        }
        QuestionView.Asked asked = answering
                .asked(carcase)
                .filter(a -> a.question().token().equals(form.value("about")))
                .orElseThrow(() -> new Refused(OPEN_NO_MORE));
        Choice choice = Choice.of(form.value("answer")).orElse(Choice.KEEP);
        if (choice == Choice.KEEP) {
            form.words("words", "Why it stays", "Say it in a few words, for example: I read the scale again.");
        }
        if (form.wrong()) {
            render(ctx.status(422), view(ctx, asked), form, KEEP);
            return;
        }
        answering.answer(carcase, asked.question(), choice, form.value("words"), Access.signedIn(ctx));
        Site.see(ctx, next(asked, choice));
    }

    private static String next(QuestionView.Asked asked, Choice choice) {
        String list = "/weigh-ups/" + asked.carcase().id();
        if (choice != Choice.AGAIN) {
            return list;
        }
        return asked.now()
                .pieces()
                .of(asked.question().doubts().get(0).reading())
                .map(piece -> list + "?stage=" + piece.stage() + "&piece=" + piece.code())
                .orElse(list);
    }
}
