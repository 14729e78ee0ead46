package ribmark.export;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import ribmark.basics.Ids;
import ribmark.basics.NotFound;
import ribmark.basics.Words;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.people.Group;
import ribmark.people.GroupStore;
import ribmark.people.PeopleStore;
import ribmark.people.Person;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Where a report that was taken can be fetched, by whoever took it and by the tutors of those it is about. */
public final class ExportPages {

    /** One report taken before. */
    public record Taken(UUID id, String name, String moment, String by, int rows) {}

    /** One export on its own page. */
    public record View(UUID id, String lead, String plate, List<ReportView.Fact> facts) {}

    private static final Allow ALLOW = Allow.of(Role.TUTOR);

    private final ExportStore store;
    private final GroupStore groups;
    private final PeopleStore people;
    private final ZoneId zone;

    /** Groups say who may fetch what; the zone is the college's own. */
    public ExportPages(ExportStore store, GroupStore groups, PeopleStore people, ZoneId zone) {
        this.store = store;
        this.groups = groups;
        this.people = people;
        this.zone = zone;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.after("/exports/{id}", this::show, ALLOW);
        routes.data("/exports/{id}/file", this::fetch, ALLOW);
    }

    /** What this tutor may fetch again, newest first. */
    List<Taken> taken(Acting tutor) {
        return store.all().stream()
                .filter(export -> mayFetch(export, tutor))
                .map(this::taken)
                .toList();
    }

    private Taken taken(Export export) {
        return new Taken(
                export.id(),
                about(export) + ", " + export.format().name(),
                Words.moment(export.takenAt(), zone),
                people.find(export.byId()).name(),
                export.rows());
    }

    private void show(Context ctx) {
        Export export = find(ctx);
        String what =
                "Progress report of " + about(export) + " as " + export.format().name();
        ctx.render(
                "export/export.html",
                Map.of(
                        "page",
                        new View(
                                export.id(),
                                what + ", " + Words.count(export.rows(), "row", "rows") + ".",
                                "Fetch " + name(export),
                                facts(export))));
    }

    private List<ReportView.Fact> facts(Export export) {
        return List.of(
                new ReportView.Fact("Taken by", people.find(export.byId()).name()),
                new ReportView.Fact("Taken", Words.moment(export.takenAt(), zone)),
                new ReportView.Fact("Rows", Integer.toString(export.rows())),
                new ReportView.Fact("Digest", export.digest()));
    }

    private void fetch(Context ctx) {
        Export export = find(ctx);
        ctx.contentType(export.format().type())
                .header("Content-Disposition", "attachment; filename=\"" + name(export) + "\"")
                .result(store.content(export.id()));
    }

    private Export find(Context ctx) {
        Export export = store.find(Ids.of(ctx.pathParam("id")));
        if (!mayFetch(export, Access.signedIn(ctx))) {
            throw new NotFound();
        }
        return export;
    }

    private boolean mayFetch(Export export, Acting tutor) {
        return export.byId().equals(tutor.id()) || looksAfter(export, tutor);
    }

    private boolean looksAfter(Export export, Acting tutor) {
        List<Group> theirs = groups.allOf(tutor.id());
        return export.covers() == Export.Covers.GROUP
                ? theirs.stream().anyMatch(group -> group.id().equals(export.subjectId()))
                : theirs.stream()
                        .flatMap(group -> groups.apprentices(group.id()).stream())
                        .anyMatch(person -> person.id().equals(export.subjectId()));
    }

    private String about(Export export) {
        Optional<String> name = export.covers() == Export.Covers.GROUP
                ? groups.all().stream()
                        .filter(group -> group.id().equals(export.subjectId()))
                        .map(Group::name)
                        .findFirst()
                : Optional.of(people.find(export.subjectId())).map(Person::name);
        return name.orElseThrow(NotFound::new);
    }

    /** Letters and figures only, whatever people are called. */
    private String name(Export export) {
        String plain = about(export)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        return "progress-" + (plain.isEmpty() ? "report" : plain) + "-" + LocalDate.ofInstant(export.takenAt(), zone)
                + "." + export.format().word();
    }
}
