package ribmark.admin;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import ribmark.basics.Words;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** The one page that is only in the demo: who is who at the invented college, and what to try as each. */
public final class DemoPages {

    /** One role, with those of its people who are introduced, and the names of the others. */
    public record Place(String heading, String role, List<Somebody> people, String others) {}

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

    private Place place(Role role, String heading) {
        List<String> names = people.whoCanSignIn().stream()
                .filter(member -> member.as() == role)
                .map(DemoPeople.Member::name)
                .toList();
        List<Somebody> introduced = people.hints().stream()
                .filter(hint -> names.contains(hint.name()))
                .map(hint -> new Somebody(hint.name(), hint.about(), hint.things()))
                .toList();
        List<String> others = names.stream()
                .filter(name -> introduced.stream().noneMatch(one -> one.name().equals(name)))
                .toList();
        return new Place(
                heading, role.word(), introduced, others.isEmpty() ? "" : "Also here: " + Words.list(others) + ".");
    }
}
