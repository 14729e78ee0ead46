package ribmark.people;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import ribmark.basics.Ids;
import ribmark.basics.NotFound;
import ribmark.basics.Refused;
import ribmark.web.Allow;
import ribmark.web.Choice;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** Where the administrator adds people, closes and opens accounts, and makes links for new passwords. */
public final class PeoplePages {

    /** One person as listed. */
    public record Row(UUID id, String name, String roles, String groups, String account) {}

    private static final Allow ALLOW = Allow.of(Role.ADMINISTRATOR);

    private final PeopleStore people;
    private final GroupStore groups;
    private final OneTimeLinks links;

    /** Who has an account, and who belongs with whom. */
    public PeoplePages(PeopleStore people, GroupStore groups, OneTimeLinks links) {
        this.people = people;
        this.groups = groups;
        this.links = links;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/people", this::list, ALLOW);
        routes.page("/people/new", this::blank, ALLOW);
        routes.post("/people", this::add, ALLOW);
        routes.page("/people/{id}", this::show, ALLOW);
        routes.post("/people/{id}/account", this::change, ALLOW);
        routes.post("/people/{id}/new-link", this::reset, ALLOW);
        routes.after("/people/{id}/link/{link}", this::showLink, ALLOW);
    }

    private void list(Context ctx) {
        ctx.render(
                "people/people.html",
                Map.of("rows", people.all().stream().map(this::row).toList()));
    }

    private void blank(Context ctx) {
        renderNew(ctx, Form.blank());
    }

    private void add(Context ctx) {
        Form form = Form.typed(ctx);
        String name = form.words("name", "Name", "Type what they are called.").replace('\n', ' ');
        Set<Role> roles = roles(form);
        String group = form.fitting("group", "Group");
        if (name.length() > 200) {
            form.add("name", "Name: " + name.length() + " characters are too many to keep. Shorten it to 200.");
        }
        if (!name.isEmpty() && name.codePoints().noneMatch(Character::isLetterOrDigit)) {
            form.add("name", "Name: no letter stands in it. Type what they are called.");
        }
        if (group.length() > 200) {
            form.add("group", "Group: " + group.length() + " characters are too many to keep. Shorten it to 200.");
        }
        if (!form.wrong() && people.named(name).isPresent()) {
            form.add("name", "Name: somebody is already called “" + name + "”. Add a second name or a letter.");
        }
        if (form.wrong()) {
            renderNew(ctx.status(422), form);
            return;
        }
        Person person = people.add(name, roles, Optional.of(Access.signedIn(ctx).id()));
        if (!group.isEmpty()) {
            groups.join(groups.named(group), person);
        }
        toNewLink(ctx, person);
    }

    private static Set<Role> roles(Form form) {
        Set<Role> roles =
                form.all("roles").stream().flatMap(w -> Role.of(w).stream()).collect(Collectors.toSet());
        if (roles.isEmpty()) {
            form.add("roles", "Roles: nothing was chosen. Choose at least one.");
        }
        return roles;
    }

    private void show(Context ctx) {
        Person person = find(ctx);
        boolean self = person.id().equals(Access.signedIn(ctx).id());
        ctx.render("people/person.html", Map.of("person", row(person), "disabled", person.disabled(), "self", self));
    }

    private void change(Context ctx) {
        Person person = find(ctx);
        UUID by = Access.signedIn(ctx).id();
        if (person.id().equals(by)) {
            throw new Refused("You cannot close your own account. Ask another administrator to do it.");
        }
        boolean close = Form.typed(ctx).value("change").equals("close");
        people.change(person.id(), close, by);
        Site.see(ctx, "/people/" + person.id());
    }

    private void reset(Context ctx) {
        toNewLink(ctx, find(ctx));
    }

    private void toNewLink(Context ctx, Person person) {
        Site.see(ctx, "/people/" + person.id() + "/link/" + links.make(Optional.of(person.id())));
    }

    private void showLink(Context ctx) {
        Person person = find(ctx);
        String link = ctx.pathParam("link");
        if (!links.personOf(link).equals(Optional.of(person.id()))) {
            throw new NotFound();
        }
        String address = ctx.scheme() + "://" + ctx.host() + "/new-password/" + link;
        ctx.render(
                "people/link.html",
                Map.of("title", "A link for " + person.name(), "person", row(person), "address", address));
    }

    private Person find(Context ctx) {
        return people.find(Ids.of(ctx.pathParam("id")));
    }

    private Row row(Person person) {
        String theirs = groups.allOf(person.id()).stream().map(Group::name).collect(Collectors.joining(", "));
        return new Row(
                person.id(), person.name(), person.rolesInWords(), theirs, person.disabled() ? "closed" : "open");
    }

    private void renderNew(Context ctx, Form form) {
        List<Choice> choices =
                Arrays.stream(Role.values()).map(role -> Choice.of(role.word())).toList();
        String known = groups.all().stream().map(Group::name).collect(Collectors.joining(", "));
        String hint =
                "For apprentices and their tutor. " + (known.isEmpty() ? "None yet." : "There is: " + known + ".");
        ctx.render("people/new-person.html", Map.of("form", form, "choices", choices, "hint", hint));
    }
}
