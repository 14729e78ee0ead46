package ribmark;

import io.javalin.Javalin;
import io.javalin.http.Context;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import ribmark.admin.DemoClock;
import ribmark.admin.DemoCollege;
import ribmark.admin.DemoStores;
import ribmark.blocksheet.BlockPages;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.blocksheet.ClosingPages;
import ribmark.blocksheet.MarkPages;
import ribmark.blocksheet.OpeningPages;
import ribmark.blocksheet.SheetPages;
import ribmark.blocksheet.SignOffPages;
import ribmark.blocksheet.SignOffStore;
import ribmark.blocksheet.Standings;
import ribmark.blocksheet.TodayPages;
import ribmark.bonemap.BoneMap;
import ribmark.bonemap.BoneMapPages;
import ribmark.bonemap.BonePictures;
import ribmark.carcase.CarcasePages;
import ribmark.carcase.CarcaseStore;
import ribmark.curriculum.ContentInUse;
import ribmark.curriculum.ContentPages;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.StepPages;
import ribmark.database.Database;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.HeadFile;
import ribmark.evidence.LogPages;
import ribmark.evidence.Mirror;
import ribmark.evidence.Once;
import ribmark.evidence.Verification;
import ribmark.evidence.Verifier;
import ribmark.export.ExportPages;
import ribmark.export.ExportStore;
import ribmark.export.ReportPages;
import ribmark.export.Reports;
import ribmark.feedback.FeedbackPages;
import ribmark.feedback.ReplyStore;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.people.Apprentices;
import ribmark.people.GroupStore;
import ribmark.people.Guesses;
import ribmark.people.NewPasswordPages;
import ribmark.people.OneTimeLinks;
import ribmark.people.Passwords;
import ribmark.people.PeoplePages;
import ribmark.people.PeopleStore;
import ribmark.people.SessionStore;
import ribmark.people.SignInPages;
import ribmark.progress.MyPages;
import ribmark.progress.ProgressPages;
import ribmark.study.StudyPages;
import ribmark.web.Allow;
import ribmark.web.Route;
import ribmark.web.Routes;
import ribmark.web.Site;
import ribmark.weighing.TrimPages;
import ribmark.weighing.WeighUpPages;
import ribmark.weighing.WeighUpStore;
import ribmark.weighing.WeighedCarcases;

/** The whole program wired by hand, part by part: open this first. */
public final class App implements AutoCloseable {

    private final Settings settings;
    private final Clock clock;
    private final ContentInUse content;
    private final Database database;
    private final EvidenceLog log;
    private final PeopleStore people;
    private final Passwords passwords;
    private final GroupStore groups;
    private final CarcaseStore carcases;
    private final BlockSheetStore sheets;
    private final ReplyStore replies;
    private final SignOffStore signOffs;
    private final Standings standings;
    private final WeighUpStore weighUps;
    private final WeighedCarcases weighed;
    private final OneTimeLinks links;
    private final Access access;
    private final SessionStore sessions;
    private final Optional<DemoCollege> college;
    private final Routes routes = new Routes();
    private final Javalin server;

    /** Opens the database and puts every part together; nothing listens yet. */
    public App(Settings settings, Clock clock) {
        this(settings, clock, Optional.empty());
    }

    /** The same with an invented college in it, not filled in yet. */
    static App demo(Settings settings, DemoClock clock) {
        return new App(settings, clock, Optional.of(clock));
    }

    private App(Settings settings, Clock clock, Optional<DemoClock> demo) {
        this.settings = settings;
        this.clock = clock;
        this.content = ContentInUse.read(settings.content());
        this.database = Database.open(settings.url(), settings.keys());
        this.log = new EvidenceLog(database, clock, content.curriculum()::version);
        this.people = new PeopleStore(database, log, clock);
        this.passwords = new Passwords(database, clock);
        this.groups = new GroupStore(database, people);
        this.carcases = new CarcaseStore(database, log, people, clock);
        this.sheets = new BlockSheetStore(database, log, clock, carcases, people, groups);
        this.replies = new ReplyStore(database, log, clock);
        this.signOffs = new SignOffStore(database, log, people, clock);
        this.standings = new Standings(sheets, signOffs, content::curriculum, clock, settings.zone());
        this.weighUps = new WeighUpStore(database, log, people, clock);
        this.weighed = new WeighedCarcases(weighUps, content::curriculum);
        this.links = new OneTimeLinks(database, clock);
        this.sessions = new SessionStore(database, people, clock);
        this.access = new Access(sessions);
        headFile().ifPresent(file -> database.afterWriting(() -> file.keep(log.head())));
        this.college = demo.map(stopped -> new DemoCollege(stores(), stopped));
        addRoutes();
        Once once = new Once(database, log, clock, this::who);
        this.server = new Site(routes, this::frame, access::role, once::keep).server();
    }

    private void addRoutes() {
        routes.page("/", this::home, Allow.everybody());
        new SignInPages(people, passwords, sessions, access, new Guesses(database, clock)).addTo(routes);
        new NewPasswordPages(people, passwords, sessions, links).addTo(routes);
        new PeoplePages(people, groups, links).addTo(routes);
        new CarcasePages(carcases, content.curriculum(), clock, settings.zone()).addTo(routes);
        BoneMap map = new BoneMap(content.curriculum());
        new BoneMapPages(map).addTo(routes);
        new StepPages(content.curriculum(), new BonePictures(map)).addTo(routes);
        new ContentPages(content).addTo(routes);
        new StudyPages(content.curriculum()).addTo(routes);
        new LogPages(log, verifier(), headFile(), settings.zone()).addTo(routes);
        addBlockSheets();
        addStandings();
        addWeighUps();
        addFeedback();
        college.ifPresent(invented -> invented.pages().addTo(routes));
    }

    private void addWeighUps() {
        new WeighUpPages(weighUps, weighed, carcases, sheets, content::curriculum, settings.zone()).addTo(routes);
        new TrimPages(weighUps, weighed, sheets, content::curriculum).addTo(routes);
    }

    private void addFeedback() {
        new FeedbackPages(sheets, replies, weighed, content.curriculum().breakdown(), settings.zone()).addTo(routes);
        new MyPages(standings, replies).addTo(routes);
    }

    private DemoStores stores() {
        return new DemoStores(
                database,
                people,
                passwords,
                groups,
                carcases,
                sheets,
                weighUps,
                signOffs,
                replies,
                standings,
                content.curriculum(),
                settings.zone());
    }

    private void addBlockSheets() {
        Supplier<Curriculum> curriculum = content::curriculum;
        new TodayPages(sheets, carcases, curriculum, clock, settings.zone()).addTo(routes);
        new OpeningPages(sheets, carcases, people, curriculum).addTo(routes);
        new SheetPages(sheets, curriculum, settings.zone()).addTo(routes);
        BlockPages block = new BlockPages(sheets, curriculum);
        block.addTo(routes);
        new MarkPages(block, sheets, clock).addTo(routes);
        new ClosingPages(sheets, curriculum, passwords, clock, settings.zone()).addTo(routes);
    }

    private void addStandings() {
        Apprentices apprentices = new Apprentices(people, groups);
        new SignOffPages(standings, signOffs, apprentices, passwords).addTo(routes);
        new ProgressPages(standings, apprentices, groups).addTo(routes);
        Reports reports = new Reports(standings, log, clock);
        ExportStore store = new ExportStore(database, log);
        ExportPages exports = new ExportPages(store, groups, people, settings.zone());
        new ReportPages(reports, store, exports, standings, groups).addTo(routes);
        exports.addTo(routes);
    }

    /** The tables that say again what the log says, and are compared with it. */
    static List<Mirror> mirrors() {
        return Stream.of(
                        CarcaseStore.MIRRORS,
                        BlockSheetStore.MIRRORS,
                        SignOffStore.MIRRORS,
                        WeighUpStore.MIRRORS,
                        ExportStore.MIRRORS,
                        List.of(ReplyStore.MIRROR))
                .flatMap(List::stream)
                .toList();
    }

    /** Checks the evidence log against itself and the head kept beside it. */
    public Verification verify() {
        return verifier().verify(headFile().flatMap(HeadFile::read));
    }

    private Verifier verifier() {
        return new Verifier(database, log, mirrors());
    }

    private Optional<HeadFile> headFile() {
        return settings.data().map(folder -> new HeadFile(folder.resolve("evidence.head")));
    }

    private ribmark.web.Frame frame(Context ctx) {
        return Places.frame(ctx, access.acting(ctx), college.isPresent());
    }

    private String who(Context ctx) {
        return access.acting(ctx).map(Acting::id).map(Object::toString).orElse("nobody");
    }

    private void home(Context ctx) {
        Site.see(ctx, access.role(ctx).map(Places::first).orElse("/sign-in"));
    }

    /** The invented college of the demo. */
    DemoCollege college() {
        return college.orElseThrow();
    }

    /** Begins to listen on loopback and answers the address. */
    public String start() {
        server.start("127.0.0.1", settings.port());
        return "http://127.0.0.1:" + server.port();
    }

    /** Every address of the program. */
    public List<Route> routes() {
        return routes.list();
    }

    /** The accounts, for the demo and for tests. */
    public PeopleStore people() {
        return people;
    }

    /** Lets somebody in with a password hash made before. */
    public void letIn(ribmark.people.Person person, String hash) {
        passwords.setHash(person.id(), hash);
    }

    /** The passwords of this program. */
    public Passwords passwords() {
        return passwords;
    }

    /** The groups of this program. */
    public GroupStore groups() {
        return groups;
    }

    /** The carcases of this program. */
    public CarcaseStore carcases() {
        return carcases;
    }

    /** The block sheets of this program. */
    public BlockSheetStore sheets() {
        return sheets;
    }

    /** What is taught and judged. */
    public Curriculum curriculum() {
        return content.curriculum();
    }

    /** What was weighed and measured in this program. */
    public WeighUpStore weighUps() {
        return weighUps;
    }

    /** The database of this program. */
    public Database database() {
        return database;
    }

    /** Where apprentices stand, for commands and tests. */
    public Standings standings() {
        return standings;
    }

    /** The sign-offs of this program. */
    public SignOffStore signOffs() {
        return signOffs;
    }

    /** The evidence log of this program. */
    public EvidenceLog log() {
        return log;
    }

    /** On an empty database, the last part of the link by which the first administrator begins. */
    public Optional<String> firstAdministratorLink() {
        return people.isEmpty() ? Optional.of(links.make(Optional.empty())) : Optional.empty();
    }

    @Override
    public void close() {
        server.stop();
        database.close();
    }

    /** Runs one command. */
    public static void main(String[] args) {
        System.exit(Commands.run(args));
    }
}
