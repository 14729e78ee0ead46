package ribmark.export;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import ribmark.basics.Words;
import ribmark.competence.EvidenceRule;
import ribmark.curriculum.Breakdown;
import ribmark.evidence.EvidenceLog;
import ribmark.people.Acting;
import ribmark.people.Group;
import ribmark.people.Person;
import ribmark.progress.GroupProgress;
import ribmark.signing.ApprenticeRecord;
import ribmark.signing.Standings;
import ribmark.web.PaperFile;

/** Makes progress reports, as a page and as files; the numbers are the same in each because they come from the same rows. */
public final class Reports {

    /** Of whom a report is: one person or a whole group, and how the college calls them. */
    public record About(Export.Covers covers, UUID id, String name, String within, List<Person> people) {

        static About of(Person apprentice, List<Group> groups) {
            String within = groups.stream().map(Group::name).collect(Collectors.joining(", "));
            return new About(Export.Covers.APPRENTICE, apprentice.id(), apprentice.name(), within, List.of(apprentice));
        }

        static About of(Group group, List<Person> apprentices) {
            return new About(Export.Covers.GROUP, group.id(), group.name(), "", apprentices);
        }

        boolean group() {
            return covers == Export.Covers.GROUP;
        }

        String address() {
            return (group() ? "/reports/groups/" : "/reports/apprentices/") + id;
        }

        String template() {
            return group() ? "export/group-report.html" : "export/report.html";
        }
    }

    private final Standings standings;
    private final EvidenceLog log;
    private final Clock clock;
    private final PaperFile paper = new PaperFile();

    /** The log gives the head that every report carries. */
    public Reports(Standings standings, EvidenceLog log, Clock clock) {
        this.standings = standings;
        this.log = log;
        this.clock = clock;
    }

    /** The rows of a report on these people. */
    public List<ProgressRow> rows(List<Person> people) {
        return ProgressRows.of(standings.records(people), breakdown(), zone());
    }

    /** What ties a report made now to the evidence. */
    public Receipt receipt() {
        return new Receipt(log.head(), standings.curriculum().version(), clock.instant());
    }

    /** The report as a page, with links and the plates to take it away. */
    ReportView page(About about, Acting reader) {
        return view(about, reader, receipt(), true);
    }

    /** A report about to be taken away. */
    Taking taking(About about, Export.Format format) {
        return new Taking(about.covers(), about.id(), about.name(), format, rows(about.people()), receipt());
    }

    /** The file itself. */
    String file(About about, Taking taking, Acting reader) {
        return switch (taking.format()) {
            case CSV -> CsvFile.of(taking.rows(), taking.receipt());
            case JSON -> JsonFile.of(taking.about(), taking.rows(), taking.receipt());
            case HTML -> paper.of(about.template(), Map.of("page", view(about, reader, taking.receipt(), false)));
        };
    }

    private ReportView view(About about, Acting reader, Receipt receipt, boolean links) {
        List<ApprenticeRecord> records = standings.records(about.people());
        List<PersonReport> people = records.stream()
                .map(record -> PersonReport.of(record, breakdown(), zone(), links))
                .toList();
        return new ReportView(
                "Progress report: " + about.name(),
                links,
                links ? about.address() + "/exports" : null,
                facts(about, reader, receipt, records),
                GroupProgress.of(records, standings).stagesInWords(),
                people,
                about.group() && links ? List.of() : people,
                rule(standings.curriculum().rule()),
                ReportView.ReceiptView.of(receipt));
    }

    private List<ReportView.Fact> facts(About about, Acting reader, Receipt receipt, List<ApprenticeRecord> records) {
        List<ReportView.Fact> facts = new ArrayList<>();
        String within = about.within().isEmpty() ? "" : ", " + about.within();
        facts.add(
                about.group()
                        ? new ReportView.Fact(
                                "Group",
                                about.name() + ", " + Words.count(about.people().size(), "apprentice", "apprentices"))
                        : new ReportView.Fact("Apprentice", about.name() + within));
        facts.add(new ReportView.Fact("Period", period(records)));
        facts.add(new ReportView.Fact(
                "Breakdown",
                breakdown().title() + ", "
                        + Words.count(breakdown().steps().size(), "step", "steps") + ", version "
                        + breakdown().version()));
        facts.add(new ReportView.Fact(
                "Made for", reader.name() + ", " + reader.role().word() + ", " + Words.moment(receipt.at(), zone())));
        return facts;
    }

    private String period(List<ApprenticeRecord> records) {
        Optional<LocalDate> first = records.stream()
                .flatMap(record -> record.closed().stream())
                .flatMap(sheet -> sheet.closing().stream())
                .map(closing -> LocalDate.ofInstant(closing.closedAt(), zone()))
                .min(LocalDate::compareTo);
        return first.map(day -> Words.day(day) + " to ").orElse("Up to ") + Words.day(standings.today());
    }

    private static String rule(EvidenceRule rule) {
        return "A step is signed off by an assessor, never by a count. The count says when it may be: "
                + Words.count(rule.sheets(), "closed sheet", "closed sheets")
                + " unaided since the last not yet or stopped, on "
                + Words.count(rule.carcases(), "carcase", "carcases") + ", seen by "
                + Words.count(rule.assessors(), "assessor", "assessors") + ", the newest within " + rule.withinDays()
                + " days. These numbers are " + rule.whose() + ", since " + Words.day(rule.since())
                + ". No yield or trim score counts towards it.";
    }

    private Breakdown breakdown() {
        return standings.curriculum().breakdown();
    }

    private ZoneId zone() {
        return standings.zone();
    }
}
