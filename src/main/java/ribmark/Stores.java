package ribmark;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.admin.DemoStores;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.blocksheet.RanLineStore;
import ribmark.blocksheet.WordingStore;
import ribmark.carcase.CarcaseStore;
import ribmark.cuttingtests.CuttingTestStore;
import ribmark.cuttingtests.OwnTables;
import ribmark.database.Database;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.HeadFile;
import ribmark.evidence.Mirror;
import ribmark.evidence.Quoted;
import ribmark.evidence.Verifier;
import ribmark.export.ExportStore;
import ribmark.export.Reports;
import ribmark.feedback.ReplyStore;
import ribmark.people.GroupStore;
import ribmark.people.OneTimeLinks;
import ribmark.people.Passwords;
import ribmark.people.PeopleStore;
import ribmark.people.SessionStore;
import ribmark.proof.ContentInUse;
import ribmark.scales.ScaleCheckStore;
import ribmark.signing.SignOffStore;
import ribmark.signing.Standings;
import ribmark.study.Practising;
import ribmark.study.StudyStore;
import ribmark.weighing.Answering;
import ribmark.weighing.CuttingTests;
import ribmark.weighing.KeptScoreStore;
import ribmark.weighing.SlipAnswerStore;
import ribmark.weighing.WeighUpStore;
import ribmark.weighing.WeighedCarcases;

/** Everything the program keeps and looks things up in, opened and wired by hand; the pages are put on top of it in {@link App}. */
final class Stores {

    final ContentInUse content;
    final Database database;
    final EvidenceLog log;
    final PeopleStore people;
    final Passwords passwords;
    final GroupStore groups;
    final CarcaseStore carcases;
    final BlockSheetStore sheets;
    final ReplyStore replies;
    final SignOffStore signOffs;
    final Standings standings;
    final ScaleCheckStore scaleChecks;
    final CuttingTests cuttingTests;
    final OwnTables ownTables;
    final KeptScoreStore keptScores;
    final WeighUpStore weighUps;
    final WeighedCarcases weighed;
    final SlipAnswerStore slipAnswers;
    final Answering answering;
    final Reports reports;
    final ExportStore exports;
    final StudyStore studied;
    final Practising practising;
    final OneTimeLinks links;
    final SessionStore sessions;
    private final Settings settings;

    Stores(Settings settings, Clock clock, ContentInUse content) {
        this.settings = settings;
        this.content = content;
        this.database = Database.open(settings.url(), settings.keys());
        this.log = new EvidenceLog(database, clock, content.curriculum()::version);
        this.people = new PeopleStore(database, log, clock);
        this.passwords = new Passwords(database, clock);
        this.groups = new GroupStore(database, people);
        this.carcases = new CarcaseStore(database, log, people, clock);
        this.sheets = new BlockSheetStore(database, log, clock, carcases, people, groups, wordings(clock));
        this.replies = new ReplyStore(database, log, clock);
        this.signOffs = new SignOffStore(database, log, people, clock);
        this.standings = new Standings(sheets, signOffs, content::curriculum, clock, settings.zone());
        this.scaleChecks = new ScaleCheckStore(database, log, people, clock);
        this.weighUps = new WeighUpStore(database, log, people, clock);
        CuttingTestStore tests = new CuttingTestStore(database, log, people, clock);
        this.ownTables = new OwnTables(tests);
        this.keptScores = new KeptScoreStore(database, log, people, clock);
        this.weighed = new WeighedCarcases(weighUps, ownTables, content::curriculum);
        this.cuttingTests = new CuttingTests(weighed, tests, sheets, content::curriculum);
        this.slipAnswers = new SlipAnswerStore(database, log, people, clock);
        this.answering = new Answering(weighUps, weighed, slipAnswers, carcases);
        this.reports = new Reports(standings, log, clock);
        this.exports = new ExportStore(database, log);
        this.studied = new StudyStore(database, clock);
        this.practising = new Practising(studied, content::curriculum, clock, settings.zone());
        this.links = new OneTimeLinks(database, clock);
        this.sessions = new SessionStore(database, people, clock);
        headFile().ifPresent(file -> database.afterWriting(() -> file.keep(log.head())));
    }

    private WordingStore wordings(Clock clock) {
        return new WordingStore(content::curriculum, clock);
    }

    /** Those that the demo fills. */
    DemoStores forDemo() {
        return new DemoStores(
                database,
                people,
                passwords,
                groups,
                carcases,
                sheets,
                ranLines(),
                weighUps,
                answering,
                cuttingTests,
                scaleChecks,
                signOffs,
                replies,
                standings,
                reports,
                exports,
                studied,
                practising,
                content.curriculum(),
                settings.zone());
    }

    /** The tables that say again what the log says, and are compared with it. */
    static List<Mirror> mirrors() {
        return Stream.of(
                        CarcaseStore.MIRRORS,
                        BlockSheetStore.MIRRORS,
                        RanLineStore.MIRRORS,
                        SignOffStore.MIRRORS,
                        WeighUpStore.MIRRORS,
                        ExportStore.MIRRORS,
                        List.of(
                                ReplyStore.MIRROR,
                                SlipAnswerStore.MIRROR,
                                ScaleCheckStore.MIRROR,
                                CuttingTestStore.MIRROR,
                                KeptScoreStore.MIRROR))
                .flatMap(List::stream)
                .toList();
    }

    RanLineStore ranLines() {
        return new RanLineStore(database, log);
    }

    /** The long words that records name by their digest. */
    static List<Quoted> quoted() {
        return List.of(WordingStore.QUOTED);
    }

    Verifier verifier() {
        return new Verifier(database, log, mirrors(), quoted());
    }

    Optional<HeadFile> headFile() {
        return settings.data().map(folder -> new HeadFile(folder.resolve("evidence.head")));
    }
}
