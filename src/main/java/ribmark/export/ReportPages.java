package ribmark.export;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import ribmark.basics.Ids;
import ribmark.basics.NotFound;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.people.Group;
import ribmark.people.GroupStore;
import ribmark.people.Person;
import ribmark.signing.ApprenticeRecord;
import ribmark.signing.RibStrip;
import ribmark.signing.Standings;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** Where a tutor reads the progress report and takes it away. */
public final class ReportPages {

    /** A group on the page that asks whom to report on. */
    public record GroupRow(UUID id, String name, List<PersonLine> people) {}

    /** One apprentice there. */
    public record PersonLine(UUID id, String name, String words) {}

    /** That page. */
    public record Choosing(List<GroupRow> groups, List<ExportPages.Taken> taken) {}

    private static final Allow ALLOW = Allow.of(Role.TUTOR);

    private final Reports reports;
    private final ExportStore store;
    private final ExportPages exports;
    private final Standings standings;
    private final GroupStore groups;

    /** Groups say whom a tutor may report on. */
    public ReportPages(
            Reports reports, ExportStore store, ExportPages exports, Standings standings, GroupStore groups) {
        this.reports = reports;
        this.store = store;
        this.exports = exports;
        this.standings = standings;
        this.groups = groups;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/reports", this::choose, ALLOW);
        routes.page("/reports/apprentices/{id}", ctx -> show(ctx, person(ctx)), ALLOW);
        routes.page("/reports/groups/{id}", ctx -> show(ctx, group(ctx)), ALLOW);
        routes.post("/reports/apprentices/{id}/exports", ctx -> take(ctx, person(ctx)), ALLOW);
        routes.post("/reports/groups/{id}/exports", ctx -> take(ctx, group(ctx)), ALLOW);
    }

    private void choose(Context ctx) {
        Acting tutor = Access.signedIn(ctx);
        List<GroupRow> rows = groups.allOf(tutor.id()).stream().map(this::row).toList();
        ctx.render("export/reports.html", Map.of("page", new Choosing(rows, exports.taken(tutor))));
    }

    private GroupRow row(Group group) {
        List<ApprenticeRecord> records = standings.records(groups.apprentices(group.id()));
        return new GroupRow(
                group.id(), group.name(), records.stream().map(this::line).toList());
    }

    private PersonLine line(ApprenticeRecord record) {
        String words = RibStrip.of(standings.curriculum().breakdown(), record).words();
        return new PersonLine(record.apprentice().id(), record.apprentice().name(), words);
    }

    private void show(Context ctx, Reports.About about) {
        ctx.render(about.template(), Map.of("page", reports.page(about, Access.signedIn(ctx))));
    }

    private void take(Context ctx, Reports.About about) {
        Export.Format format =
                Export.Format.of(String.valueOf(ctx.formParam("format"))).orElseThrow(NotFound::new);
        Acting tutor = Access.signedIn(ctx);
        Taking taking = reports.taking(about, format);
        Export export = store.keep(tutor, taking, reports.file(about, taking, tutor));
        Site.see(ctx, "/exports/" + export.id());
    }

    private Reports.About person(Context ctx) {
        Person apprentice = groups.apprenticeOf(Access.signedIn(ctx).id(), Ids.of(ctx.pathParam("id")));
        return Reports.About.of(apprentice, groups.allOf(apprentice.id()));
    }

    private Reports.About group(Context ctx) {
        Group group =
                groups.find(Ids.of(ctx.pathParam("id")), Access.signedIn(ctx).id());
        return Reports.About.of(group, groups.apprentices(group.id()));
    }
}
