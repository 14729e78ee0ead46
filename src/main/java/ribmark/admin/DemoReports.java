package ribmark.admin;

import java.util.List;
import ribmark.export.CsvFile;
import ribmark.export.Export.Covers;
import ribmark.export.Export.Format;
import ribmark.export.ProgressRow;
import ribmark.export.Receipt;
import ribmark.export.Taking;
import ribmark.people.Group;
import ribmark.people.Person;

/** Tells which progress reports a tutor took away. */
final class DemoReports {

    private final DemoStores stores;
    private final DemoRoster roster;
    private final DemoStory story;

    DemoReports(DemoStores stores, DemoRoster roster, DemoStory story) {
        this.stores = stores;
        this.roster = roster;
        this.story = story;
    }

    void tell(DemoPeople told) {
        told.reports()
                .forEach(
                        report -> story.at(report.when(), "people.yaml, report of " + report.of(), () -> take(report)));
    }

    private void take(DemoPeople.Report report) {
        stores.groups()
                .find(report.of())
                .ifPresentOrElse(
                        group -> takeGroup(report, group), () -> takePerson(report, roster.person(report.of())));
    }

    private void takeGroup(DemoPeople.Report report, Group group) {
        List<ProgressRow> rows = stores.reports().rows(stores.groups().apprentices(group.id()));
        Receipt receipt = stores.reports().receipt();
        keep(report, new Taking(Covers.GROUP, group.id(), group.name(), Format.CSV, rows, receipt));
    }

    private void takePerson(DemoPeople.Report report, Person person) {
        List<ProgressRow> rows = stores.reports().rows(List.of(person));
        Receipt receipt = stores.reports().receipt();
        keep(report, new Taking(Covers.APPRENTICE, person.id(), person.name(), Format.CSV, rows, receipt));
    }

    private void keep(DemoPeople.Report report, Taking taking) {
        stores.exports().keep(roster.acting(report.by()), taking, CsvFile.of(taking.rows(), taking.receipt()));
    }
}
