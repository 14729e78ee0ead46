package ribmark.study;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import ribmark.basics.Ids;
import ribmark.basics.NotFound;
import ribmark.basics.Refused;
import ribmark.curriculum.StepPicture;
import ribmark.people.Access;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** Where an apprentice is asked one card after the other, and reads after each what was right and where it lies. */
public final class PracticePages {

    private static final Allow ALLOW = Allow.of().own(Role.APPRENTICE);

    /** A card as it is put now: the seed makes the same question when the answer comes. */
    private record Put(Card card, long seed, Asked asked) {

        static Put of(Card card, long seed) {
            return new Put(card, seed, card.ask(seed));
        }

        List<String> choices() {
            return IntStream.range(0, asked.choices().size())
                    .mapToObj(Integer::toString)
                    .toList();
        }
    }

    private final Practising practising;
    private final StudyStore answers;
    private final Function<List<String>, Optional<StepPicture>> pictures;

    /** Answers are kept; where somebody stands is worked out from them; pictures show bones alone. */
    public PracticePages(
            Practising practising, StudyStore answers, Function<List<String>, Optional<StepPicture>> pictures) {
        this.practising = practising;
        this.answers = answers;
        this.pictures = pictures;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/study/practice", this::next, ALLOW);
        routes.post("/study/answers", this::answer, ALLOW);
        routes.after("/study/answers/{id}", this::answered, ALLOW);
    }

    private void next(Context ctx) {
        UUID me = Access.signedIn(ctx).id();
        Practice practice = practising.of(me);
        String stage = Optional.ofNullable(ctx.queryParam("stage")).orElse("");
        Optional<Card> first = practice.waiting(ofStage(stage)).stream().findFirst();
        first.ifPresentOrElse(
                card -> show(ctx, Put.of(card, practice.seed(me, card)), practice, stage, Form.blank()),
                () -> ctx.render("study/nothing.html", Map.of("words", nothing(practice, stage))));
    }

    private static String nothing(Practice practice, String stage) {
        return stage.isEmpty() || practice.waiting().isEmpty()
                ? practice.inWords()
                : "Nothing of this stage waits today. " + practice.inWords();
    }

    private Predicate<Card> ofStage(String stage) {
        return card -> stage.isEmpty() || practising.deck().step(card).stageId().equals(stage);
    }

    private void show(Context ctx, Put put, Practice practice, String stage, Form form) {
        int more = practice.waiting(ofStage(stage)).size() - 1;
        CardView page = CardView.of(put.card(), put.asked(), practising.deck().step(put.card()), more);
        ctx.render(
                "study/practice.html",
                Map.of(
                        "page", page,
                        "seed", Long.toString(put.seed()),
                        "stage", stage,
                        "form", form,
                        "picture", put.asked().isShownFirst() ? picture(put.asked()) : Optional.empty()));
    }

    private Optional<StepPicture> picture(Asked asked) {
        return pictures.apply(asked.shows());
    }

    private void answer(Context ctx) {
        Form form = Form.typed(ctx);
        UUID me = Access.signedIn(ctx).id();
        Put put = put(form);
        Optional<Integer> chosen = put.asked().isOpen()
                ? Optional.empty()
                : Optional.of(form.oneOf("choice", "Your answer", put.choices()))
                        .filter(put.choices()::contains)
                        .map(Integer::valueOf);
        Optional<Grade> grade = put.asked().isOpen()
                ? Grade.said(form.value("grade"))
                : chosen.map(choice -> Grade.chosen(choice == put.asked().right()));
        if (grade.isEmpty()) {
            ctx.status(422);
            show(ctx, put, practising.of(me), form.value("stage"), form);
            return;
        }
        UUID kept = answers.add(me, put.card(), put.seed(), chosen, grade.get());
        Site.see(ctx, "/study/answers/" + kept + CardView.ofStage(form.value("stage")));
    }

    /** The question that was shown, made again; refused when its words are others by now. */
    private Put put(Form form) {
        Card card = practising.deck().find(form.value("card")).orElseThrow(NotFound::new);
        Put put = Put.of(card, seed(form.value("seed")));
        if (!put.asked().digest().equals(form.value("digest"))) {
            throw new Refused("This question has changed since it was shown. Open the next one and answer that.");
        }
        return put;
    }

    private static long seed(String sent) {
        try {
            return Long.parseLong(sent);
        } catch (NumberFormatException noNumber) {
            throw new NotFound();
        }
    }

    private void answered(Context ctx) {
        UUID me = Access.signedIn(ctx).id();
        StudyAnswer answer = answers.find(Ids.of(ctx.pathParam("id")), me).orElseThrow(NotFound::new);
        Deck deck = practising.deck();
        Card card = deck.find(answer.card()).orElseThrow(NotFound::new);
        String stage = Optional.ofNullable(ctx.queryParam("stage")).orElse("");
        AnswerView page = AnswerView.of(answer, card, deck.step(card), practising.of(me), CardView.ofStage(stage));
        ctx.render(
                "study/answered.html",
                Map.of("page", page, "picture", page.isSame() ? picture(card.ask(answer.seed())) : Optional.empty()));
    }
}
