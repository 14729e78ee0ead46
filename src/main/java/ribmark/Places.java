package ribmark;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.people.Acting;
import ribmark.web.Frame;
import ribmark.web.Role;
import ribmark.web.Visitor;

/** The four places of each role, and the frame that stands around every page. */
final class Places {

    private record Place(String word, String href, List<String> also) {

        boolean holds(String path) {
            return begins(path, href) || also.stream().anyMatch(other -> begins(path, other));
        }

        private static boolean begins(String path, String with) {
            return path.equals(with) || path.startsWith(with + "/");
        }
    }

    private static final Map<Role, List<Place>> ALL = Map.of(
            Role.ASSESSOR,
            List.of(
                    new Place("Today", "/today", List.of("/block-sheets")),
                    new Place("Carcases", "/carcases", List.of("/weigh-ups", "/scales")),
                    new Place("To sign", "/to-sign", List.of()),
                    new Place(
                            "Apprentices",
                            "/apprentices",
                            List.of("/steps", "/stages", "/cuts", "/bones", "/words", "/sources"))),
            Role.APPRENTICE,
            List.of(
                    new Place("My page", "/my-page", List.of("/apprentices")),
                    new Place("Feedback", "/feedback", List.of("/block-sheets")),
                    new Place("Steps", "/steps", List.of("/stages", "/cuts", "/bones", "/words", "/sources")),
                    new Place("Study", "/study", List.of())),
            Role.TUTOR,
            List.of(
                    new Place("Group", "/group", List.of("/apprentices", "/block-sheets", "/study")),
                    new Place("Reports", "/reports", List.of("/exports")),
                    new Place("Carcases", "/carcases", List.of("/weigh-ups", "/scales")),
                    new Place("Steps", "/steps", List.of("/stages", "/cuts", "/bones", "/words", "/sources"))),
            Role.ADMINISTRATOR,
            List.of(
                    new Place("People", "/people", List.of()),
                    new Place("Content", "/content", List.of()),
                    new Place("Log", "/log", List.of())));

    private Places() {}

    /** Where a role begins. */
    static String first(Role role) {
        return ALL.get(role).get(0).href();
    }

    /** The frame of a page for whoever is acting. */
    static Frame frame(Context ctx, Optional<Acting> acting, boolean demo) {
        String token = Visitor.token(ctx);
        return acting.map(who -> new Frame(
                        who.name(),
                        who.role().word(),
                        who.person().roles().size() > 1,
                        places(who.role(), ctx.path()),
                        token,
                        "",
                        demo))
                .orElseGet(() -> new Frame("", "", false, List.of(), token, "", demo));
    }

    private static List<Frame.Place> places(Role role, String path) {
        return ALL.get(role).stream()
                .map(place -> new Frame.Place(place.word(), place.href(), place.holds(path)))
                .toList();
    }
}
