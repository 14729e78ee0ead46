package ribmark.study;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import ribmark.basics.Ids;
import ribmark.basics.NotFound;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Stage;
import ribmark.people.Access;
import ribmark.people.Group;
import ribmark.people.GroupStore;
import ribmark.people.Person;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Which questions work: what a tutor's group had right, and what that says of each question. */
public final class QuestionPages {

    private final Practising practising;
    private final StudyStore answers;
    private final GroupStore groups;
    private final Curriculum curriculum;

    /** A tutor sees the answers of their groups, and of nobody else. */
    public QuestionPages(Practising practising, StudyStore answers, GroupStore groups, Curriculum curriculum) {
        this.practising = practising;
        this.answers = answers;
        this.groups = groups;
        this.curriculum = curriculum;
    }

    /** Adds the address. */
    public void addTo(Routes routes) {
        routes.page("/study/questions", this::show, Allow.of(Role.TUTOR));
    }

    private void show(Context ctx) {
        UUID tutor = Access.signedIn(ctx).id();
        List<Group> theirs = groups.allOf(tutor);
        if (theirs.isEmpty()) {
            ctx.render("study/no-questions.html", Map.of());
            return;
        }
        String asked = ctx.queryParam("group");
        Group group = asked == null ? theirs.get(0) : groups.find(Ids.of(asked), tutor);
        List<UUID> members =
                groups.apprentices(group.id()).stream().map(Person::id).toList();
        FirstAnswers first = FirstAnswers.of(answers.allOf(members));
        Stage stage = stage(ctx);
        ctx.render(
                "study/questions.html",
                Map.of(
                        "page", QuestionsView.of(first, practising.deck(), stage),
                        "groups", theirs,
                        "group", group,
                        "stages", curriculum.breakdown().stages(),
                        "stage", stage));
    }

    private Stage stage(Context ctx) {
        String asked = ctx.queryParam("stage");
        return asked == null
                ? curriculum.breakdown().stages().get(0)
                : curriculum.breakdown().stage(asked).orElseThrow(NotFound::new);
    }
}
