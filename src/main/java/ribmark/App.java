package ribmark;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.util.JavalinBindException;
import io.javalin.util.JavalinLogger;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import ribmark.admin.DemoClock;
import ribmark.admin.DemoCollege;
import ribmark.basics.Refused;
import ribmark.blocksheet.BlockPages;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.blocksheet.ClosingPages;
import ribmark.blocksheet.CountPages;
import ribmark.blocksheet.MarkPages;
import ribmark.blocksheet.OpeningPages;
import ribmark.blocksheet.RanLinePages;
import ribmark.blocksheet.RanLines;
import ribmark.blocksheet.SheetPages;
import ribmark.blocksheet.TodayPages;
import ribmark.bonemap.BoneMap;
import ribmark.bonemap.BoneMapPages;
import ribmark.bonemap.BonePictures;
import ribmark.bonemap.StandingPictures;
import ribmark.carcase.CarcasePages;
import ribmark.carcase.CarcaseStore;
import ribmark.curriculum.Curriculum;
import ribmark.database.Database;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.HeadFile;
import ribmark.evidence.LogPages;
import ribmark.evidence.Once;
import ribmark.evidence.Verification;
import ribmark.export.ExportPages;
import ribmark.export.ReportPages;
import ribmark.feedback.FeedbackPages;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.people.Apprentices;
import ribmark.people.AskedAgain;
import ribmark.people.GroupStore;
import ribmark.people.Guesses;
import ribmark.people.NewPasswordPages;
import ribmark.people.Passwords;
import ribmark.people.PeoplePages;
import ribmark.people.PeopleStore;
import ribmark.people.SignInPages;
import ribmark.progress.BonesPages;
import ribmark.progress.MyPages;
import ribmark.progress.ProgressPages;
import ribmark.proof.ContentInUse;
import ribmark.proof.ContentPages;
import ribmark.signing.SignOffPages;
import ribmark.signing.SignOffStore;
import ribmark.signing.Standings;
import ribmark.web.Allow;
import ribmark.web.Route;
import ribmark.web.Routes;
import ribmark.web.Site;
import ribmark.weighing.WeighUpStore;
import ribmark.weighing.WeighedCarcases;

/** The whole program wired by hand, part by part: open this first. */
public final class App implements AutoCloseable {

    private final Settings settings;
    private final Clock clock;
    private final Stores stores;
    private final Access access;
    private final Guesses guesses;
    private final Optional<DemoCollege> college;
    private final Routes routes = new Routes();
    private final Javalin server;

    /** Opens the database and puts every part together; nothing listens yet. */
    public App(Settings settings, Clock clock) {
        this(settings, clock, Optional.empty());
    }

    /** The same with an invented college in it, not filled in yet. */
    public static App demo(Settings settings, DemoClock clock) {
        return new App(settings, clock, Optional.of(clock));
    }

    private static ContentInUse content(Settings settings, boolean demo) {
        return demo
                ? ContentInUse.read(DemoCollege.content(), settings.content())
                : ContentInUse.read(settings.content());
    }

    private App(Settings settings, Clock clock, Optional<DemoClock> demo) {
        this.settings = settings;
        this.clock = clock;
        this.stores = new Stores(settings, clock, content(settings, demo.isPresent()));
        this.access = new Access(stores.sessions);
        this.guesses = new Guesses(stores.database, clock);
        this.college = demo.map(stopped -> new DemoCollege(stores.forDemo(), stopped));
        addRoutes();
        Once once = new Once(stores.database, stores.log, clock, this::who);
        this.server = new Site(routes, this::frame, access::role, once::keep).server();
    }

    private void addRoutes() {
        routes.page("/", this::home, Allow.everybody());
        new SignInPages(stores.people, stores.passwords, stores.sessions, access, guesses).addTo(routes);
        new NewPasswordPages(stores.people, stores.passwords, stores.sessions, stores.links).addTo(routes);
        new PeoplePages(stores.people, stores.groups, stores.links).addTo(routes);
        new CarcasePages(stores.carcases, stores.content.curriculum(), clock, settings.zone()).addTo(routes);
        BoneMap map = new BoneMap(stores.content.curriculum());
        new BoneMapPages(map).addTo(routes);
        BonePictures pictures = new BonePictures(map);
        new AtTheBook(stores, pictures).addTo(routes);
        new ContentPages(stores.content).addTo(routes);
        new LogPages(stores.log, stores.verifier(), stores.headFile(), settings.zone()).addTo(routes);
        RanLines lines = new RanLines(stores.ranLines(), stores.content::curriculum, pictures::ran);
        addBlockSheets(lines);
        addStandings(map);
        new AtTheScale(stores, settings.zone()).addTo(routes);
        addFeedback(pictures, lines);
        college.ifPresent(invented -> invented.pages().addTo(routes));
    }

    private void addFeedback(BonePictures pictures, RanLines lines) {
        new FeedbackPages(
                        stores.sheets,
                        lines,
                        stores.replies,
                        stores.weighed,
                        stores.content::curriculum,
                        pictures,
                        settings.zone())
                .addTo(routes);
    }

    private void addBlockSheets(RanLines lines) {
        Supplier<Curriculum> curriculum = stores.content::curriculum;
        new TodayPages(stores.sheets, stores.carcases, curriculum, clock, settings.zone()).addTo(routes);
        new OpeningPages(stores.sheets, stores.carcases, stores.people, curriculum).addTo(routes);
        new SheetPages(stores.sheets, lines, curriculum, settings.zone()).addTo(routes);
        new CountPages(stores.sheets, stores.carcases, curriculum, settings.zone()).addTo(routes);
        BlockPages block = new BlockPages(stores.sheets, curriculum);
        block.addTo(routes);
        new MarkPages(block, stores.sheets, clock).addTo(routes);
        new RanLinePages(block, lines).addTo(routes);
        new ClosingPages(stores.sheets, curriculum, new AskedAgain(stores.passwords, guesses), clock, settings.zone())
                .addTo(routes);
    }

    private void addStandings(BoneMap map) {
        Apprentices apprentices = new Apprentices(stores.people, stores.groups);
        new SignOffPages(stores.standings, stores.signOffs, apprentices, new AskedAgain(stores.passwords, guesses))
                .addTo(routes);
        BonesPages bones = new BonesPages(stores.standings, apprentices, new StandingPictures(map));
        bones.addTo(routes);
        new MyPages(stores.standings, stores.replies, stores.practising, bones).addTo(routes);
        new ProgressPages(stores.standings, apprentices, stores.groups, bones).addTo(routes);
        ExportPages exports = new ExportPages(stores.exports, stores.groups, stores.people, settings.zone());
        new ReportPages(stores.reports, stores.exports, exports, stores.standings, stores.groups).addTo(routes);
        exports.addTo(routes);
    }

    /** Checks the evidence log against itself and the head kept beside it. */
    public Verification verify() {
        return stores.verifier().verify(stores.headFile().flatMap(HeadFile::read));
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
    public DemoCollege college() {
        return college.orElseThrow();
    }

    /** Begins to listen on loopback and answers the address; a port in use is said once, by us. */
    public String start() {
        JavalinLogger.enabled = false;
        try {
            server.start("127.0.0.1", settings.port());
        } catch (JavalinBindException taken) {
            close();
            throw new Refused("Port " + settings.port() + " is in use. Name another one with --port, or 0 for any.");
        } finally {
            JavalinLogger.enabled = true;
        }
        return "http://127.0.0.1:" + server.port();
    }

    /** Every address of the program. */
    public List<Route> routes() {
        return routes.list();
    }

    /** The accounts, for the demo and for tests. */
    public PeopleStore people() {
        return stores.people;
    }

    /** Lets somebody in with a password hash made before. */
    public void letIn(ribmark.people.Person person, String hash) {
        stores.passwords.setHash(person.id(), hash);
    }

    /** The passwords of this program. */
    public Passwords passwords() {
        return stores.passwords;
    }

    /** The groups of this program. */
    public GroupStore groups() {
        return stores.groups;
    }

    /** The carcases of this program. */
    public CarcaseStore carcases() {
        return stores.carcases;
    }

    /** The block sheets of this program. */
    public BlockSheetStore sheets() {
        return stores.sheets;
    }

    /** The weigh-ups of this program, reckoned through. */
    public WeighedCarcases weighed() {
        return stores.weighed;
    }

    /** What is taught and judged. */
    public Curriculum curriculum() {
        return stores.content.curriculum();
    }

    /** What was weighed and measured in this program. */
    public WeighUpStore weighUps() {
        return stores.weighUps;
    }

    /** The database of this program. */
    public Database database() {
        return stores.database;
    }

    /** Where apprentices stand, for commands and tests. */
    public Standings standings() {
        return stores.standings;
    }

    /** The sign-offs of this program. */
    public SignOffStore signOffs() {
        return stores.signOffs;
    }

    /** The evidence log of this program. */
    public EvidenceLog log() {
        return stores.log;
    }

    /** On an empty database, the last part of the link by which the first administrator begins. */
    public Optional<String> firstAdministratorLink() {
        return stores.people.isEmpty() ? Optional.of(stores.links.make(Optional.empty())) : Optional.empty();
    }

    @Override
    public void close() {
        server.stop();
        stores.database.close();
    }

    /** Runs one command. */
    public static void main(String[] args) {
        System.exit(Commands.run(args));
    }
}
