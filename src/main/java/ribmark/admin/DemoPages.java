package ribmark.admin;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** The one page that is only in the demo: who is who at the invented college, and what to try as each. */
public final class DemoPages {

    /** One role, with everybody who has it. */
    public record Place(String role, String about, List<Somebody> people) {}

    /** Somebody to sign in as, and what to try. */
    public record Somebody(String name, String about, List<String> things) {}

    private final DemoPeople people;

    DemoPages(DemoPeople people) {
        this.people = people;
    }

    /** Adds the address. */
    public void addTo(Routes routes) {
        routes.page("/demo", this::show, Allow.everybody());
    }

    private void show(Context ctx) {
        List<Place> places = List.of(
                place(Role.ASSESSOR, "At the block"),
                place(Role.APPRENTICE, "Learning"),
                place(Role.TUTOR, "Looking after a group"),
                place(Role.ADMINISTRATOR, "Keeping accounts"));
        ctx.render("admin/demo.html", Map.of("places", places, "password", people.password()));
    }

    private Place place(Role role, String about) {
        return new Place(
                about,
                role.word(),
                people.whoCanSignIn().stream()
                        .filter(member -> member.as() == role)
                        .map(member -> somebody(member.name()))
                        .toList());
    }

    private Somebody somebody(String name) {
        return people.hints().stream()
                .filter(hint -> hint.name().equals(name))
                .findFirst()
                .map(hint -> new Somebody(name, hint.about(), hint.things()))
                .orElseGet(() -> new Somebody(name, "", List.of()));
    }
}
