package ribmark;

import io.javalin.Javalin;
import io.javalin.http.Context;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import ribmark.blocksheet.BlockPages;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.blocksheet.ClosingPages;
import ribmark.blocksheet.MarkPages;
import ribmark.blocksheet.OpeningPages;
import ribmark.blocksheet.SheetPages;
import ribmark.blocksheet.TodayPages;
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
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.people.GroupStore;
import ribmark.people.Guesses;
import ribmark.people.NewPasswordPages;
import ribmark.people.OneTimeLinks;
import ribmark.people.Passwords;
import ribmark.people.PeoplePages;
import ribmark.people.PeopleStore;
import ribmark.people.SessionStore;
import ribmark.people.SignInPages;
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
    private final WeighUpStore weighUps;
    private final WeighedCarcases weighed;
    private final OneTimeLinks links;
    private final Access access;
    private final SessionStore sessions;
    private final Routes routes = new Routes();
    private final Javalin server;

    /** Opens the database and puts every part together; nothing listens yet. */
    public App(Settings settings, Clock clock) {
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
        this.weighUps = new WeighUpStore(database, log, people, clock);
        this.weighed = new WeighedCarcases(weighUps, content::curriculum);
        this.links = new OneTimeLinks(database, clock);
        this.sessions = new SessionStore(database, people, clock);
        this.access = new Access(sessions);
        headFile().ifPresent(file -> database.afterWriting(() -> file.keep(log.head())));
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
        new StepPages(content.curriculum()).addTo(routes);
        new ContentPages(content).addTo(routes);
        new StudyPages(content.curriculum()).addTo(routes);
        new LogPages(log, verifier(), headFile(), settings.zone()).addTo(routes);
        addBlockSheets();
        addWeighUps();
    }

    private void addWeighUps() {
        new WeighUpPages(weighUps, weighed, carcases, sheets, content::curriculum, settings.zone()).addTo(routes);
        new TrimPages(weighUps, weighed, sheets, content::curriculum).addTo(routes);
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

    /** The tables that say again what the log says, and are compared with it. */
    static List<Mirror> mirrors() {
        return Stream.of(CarcaseStore.MIRRORS, BlockSheetStore.MIRRORS, WeighUpStore.MIRRORS)
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
        return Places.frame(ctx, access.acting(ctx));
    }

    private String who(Context ctx) {
        return access.acting(ctx).map(Acting::id).map(Object::toString).orElse("nobody");
    }

    private void home(Context ctx) {
        Site.see(ctx, access.role(ctx).map(Places::first).orElse("/sign-in"));
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

    /** The weigh-ups of this program, reckoned through. */
    public WeighedCarcases weighed() {
        return weighed;
    }

    /** What was weighed and measured in this program. */
    public WeighUpStore weighUps() {
        return weighUps;
    }

    /** The database of this program. */
    public Database database() {
        return database;
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
