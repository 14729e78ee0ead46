package ribmark.weighing;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import ribmark.basics.Ids;
import ribmark.basics.Refused;
import ribmark.carcase.Carcase;
import ribmark.carcase.CarcaseStore;
import ribmark.curriculum.Curriculum;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.slips.Cause;
import ribmark.slips.Finding;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;
import ribmark.weighing.SlipAnswer.Choice;

/** Where an open question about a reading takes the screen while the piece is still on the block, and is answered. */
public final class SlipQuestionPages {

    private final WeighUpStore store;
    private final WeighedCarcases weighed;
    private final SlipAnswerStore answers;
    private final CarcaseStore carcases;
    private final Supplier<Curriculum> curriculum;

    /** Answers are kept beside the readings they are about. */
    public SlipQuestionPages(
            WeighUpStore store,
            WeighedCarcases weighed,
            SlipAnswerStore answers,
            CarcaseStore carcases,
            Supplier<Curriculum> curriculum) {
        this.store = store;
        this.weighed = weighed;
        this.answers = answers;
        this.carcases = carcases;
        this.curriculum = curriculum;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.after("/weigh-ups/{carcase}/question", this::show, Allow.of(Role.ASSESSOR));
        routes.post("/weigh-ups/{carcase}/question", this::answer, Allow.of(Role.ASSESSOR));
    }

    /** The question open on a carcase. */
    Optional<Question> open(Carcase carcase, Reckoning reckoning, Optional<Finding> finding) {
        return finding.filter(f -> !f.amongWeighed().isEmpty())
                .flatMap(f -> Question.open(reckoning, f, answers.of(carcase.id())));
    }

    /** Whether a question is open on a carcase. */
    boolean isOpen(Carcase carcase) {
        return weighed.reckon(carcase, List.of())
                .flatMap(r -> open(carcase, r, weighed.finding(r)))
                .isPresent();
    }

    private Optional<QuestionView.Asked> asked(Carcase carcase) {
        List<KeptReading> counting = weighed.counting(carcase);
        return weighed.reckon(carcase, counting, List.of())
                .flatMap(now -> weighed.finding(now)
                        .flatMap(finding -> open(carcase, now, Optional.of(finding))
                                .map(q -> new QuestionView.Asked(
                                        carcase,
                                        q,
                                        now,
                                        weighed.reckon(carcase, q.putRight(counting), List.of()),
                                        finding))));
    }

    private Carcase carcase(Context ctx) {
        return carcases.find(Ids.of(ctx.pathParam("carcase")));
    }

    private void show(Context ctx) {
        Carcase carcase = carcase(ctx);
        Optional<QuestionView.Asked> asked = asked(carcase);
        if (asked.isEmpty()) {
            Site.see(ctx, "/weigh-ups/" + carcase.id());
            return;
        }
        render(ctx, asked.get(), Form.blank(), ctx.queryParam("keep") != null);
    }

    private void render(Context ctx, QuestionView.Asked asked, Form form, boolean keeping) {
        Curriculum content = curriculum.get();
        Map<String, Object> model = new HashMap<>();
        model.put(
                "page",
                QuestionView.of(
                        asked,
                        WeighUpView.strip(asked.carcase(), content),
                        Access.signedIn(ctx),
                        content.weighing().orElseThrow()));
        model.put("form", form);
        model.put("keeping", keeping);
        ctx.render("weighing/question.html", model);
    }

    private void answer(Context ctx) {
        Carcase carcase = carcase(ctx);
        Form form = Form.typed(ctx);
        QuestionView.Asked asked = asked(carcase)
                .filter(a -> a.question().token().equals(form.value("about")))
                .orElseThrow(() -> new Refused(
                        "This question is open no more: it was answered, or the list has changed. Look at the list."));
        Choice choice = Choice.of(form.value("answer")).orElse(Choice.KEEP);
        if (choice == Choice.KEEP) {
            form.words("words", "Why it stays", "Say it in a few words, for example: I read the scale again.");
        }
        if (form.wrong()) {
            render(ctx.status(422), asked, form, true);
            return;
        }
        Acting by = Access.signedIn(ctx);
        switch (choice) {
            case USE -> use(carcase, asked.question(), by);
            case AGAIN -> again(carcase, asked.question(), by);
            case KEEP -> answers.add(carcase.id(), asked.question(), choice, List.of(), form.value("words"), by);
        }
        Site.see(ctx, next(asked, choice));
    }

    private void use(Carcase carcase, Question question, Acting by) {
        SlipWords words = new SlipWords(question);
        List<UUID> used = new ArrayList<>();
        for (Question.Doubt doubt : question.doubts()) {
            store.strike(doubt.reading(), words.struck(Choice.USE, doubt), by);
            question.meant(doubt).ifPresent(typed -> used.add(store.keep(carcase.id(), typed, by)));
        }
        answers.add(carcase.id(), question, Choice.USE, used, "", by);
    }

    /** What was weighed twice is weighed once again, so every reading of the piece comes off. */
    private void again(Carcase carcase, Question question, Acting by) {
        SlipWords words = new SlipWords(question);
        Question.Doubt first = question.doubts().get(0);
        question.doubts().forEach(doubt -> store.strike(doubt.reading(), words.struck(Choice.AGAIN, doubt), by));
        if (question.because() == Cause.WEIGHED_TWICE) {
            weighed.counting(carcase).stream()
                    .filter(kept -> kept.isOfSamePiece(first.reading()))
                    .forEach(kept -> store.strike(kept, words.struck(Choice.AGAIN, first), by));
        }
        answers.add(carcase.id(), question, Choice.AGAIN, List.of(), "", by);
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
