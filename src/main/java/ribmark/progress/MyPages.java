package ribmark.progress;

import io.javalin.http.Context;
import java.util.Map;
import ribmark.feedback.ReplyStore;
import ribmark.people.Access;
import ribmark.people.Person;
import ribmark.signing.Standings;
import ribmark.study.Practising;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Where an apprentice begins: their own page. */
public final class MyPages {

    private final Standings standings;
    private final ReplyStore replies;
    private final Practising practising;
    private final BonesPages bones;

    /** Answers say which feedback is still new. */
    public MyPages(Standings standings, ReplyStore replies, Practising practising, BonesPages bones) {
        this.standings = standings;
        this.replies = replies;
        this.practising = practising;
        this.bones = bones;
    }

    /** Adds the address of the page. */
    public void addTo(Routes routes) {
        routes.page("/my-page", this::show, Allow.of().own(Role.APPRENTICE));
    }

    private void show(Context ctx) {
        Person me = Access.signedIn(ctx).person();
        Progress progress = Progress.of(standings.record(me), standings);
        MyPage page = MyPage.of(progress, standings.curriculum().breakdown(), replies.answeredBy(me.id()));
        ctx.render(
                "progress/my-page.html",
                Map.of("page", page, "study", practising.of(me.id()), "bones", bones.shown(progress)));
    }
}
