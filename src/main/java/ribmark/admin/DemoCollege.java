package ribmark.admin;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import ribmark.contentfiles.ContentFiles;

/** Fills a database with an invented college, through the same doors as the pages, each thing at its own moment of the past. */
public final class DemoCollege {

    /** One sign-in of the demo: what is typed into the two fields, and the role it gives. */
    public record SignIn(String role, String name, String password) {}

    private final DemoStores stores;
    private final DemoClock clock;
    private final DemoPeople people = DemoPeople.read();

    /** The clock is the one the stores look at. */
    public DemoCollege(DemoStores stores, DemoClock clock) {
        this.stores = stores;
        this.clock = clock;
    }

    /** What the invented college has laid over the content: its prices. */
    public static ContentFiles content() {
        return ContentFiles.of(Map.of("assessments/lamb/prices.yaml", DemoFile.bytes("prices.yaml")));
    }

    /** Everybody who can sign in, in the order the people are introduced. */
    public List<SignIn> signIns() {
        return people.whoCanSignIn().stream()
                .map(member -> new SignIn(member.as().word(), member.name(), people.password()))
                .toList();
    }

    /** The page that says what to try. */
    public DemoPages pages() {
        return new DemoPages(people);
    }

    /** Fills it all in, in one writing; whatever the files say wrongly is refused with its place. */
    public void fill() {
        CompletableFuture<String> hash =
                CompletableFuture.supplyAsync(() -> stores.passwords().hash(people.password()));
        DemoStory story = story();
        try {
            stores.database().write(handle -> {
                story.playOut(clock);
                letIn(hash.join());
            });
        } finally {
            clock.run();
        }
    }

    /** One password for everybody, hashed once beside the filling, because hashing is slow on purpose. */
    private void letIn(String hash) {
        people.people()
                .forEach(member -> stores.passwords()
                        .setHash(
                                stores.people()
                                        .named(member.name())
                                        .orElseThrow()
                                        .id(),
                                hash));
    }

    private DemoStory story() {
        DemoStory story = new DemoStory(new DemoMoments(clock.instant(), stores.zone()));
        DemoRoster roster = new DemoRoster(stores);
        roster.tell(people, story);
        new DemoRail(stores, roster, story).tell(DemoCarcases.read());
        DemoBlock block = new DemoBlock(stores, roster, story);
        DemoSigning signing = new DemoSigning(stores, roster, story);
        for (String name : people.apprentices()) {
            DemoApprentice told = DemoApprentice.read(name);
            told.sheets().forEach(sheet -> block.tell(name, sheet));
            signing.tell(name, told);
        }
        new DemoScale(stores, roster, story).tell(DemoWeighUps.read());
        new DemoReports(stores, roster, story).tell(people);
        new DemoStudy(stores, roster, story).tell(DemoStudy.Told.read());
        return story;
    }
}
