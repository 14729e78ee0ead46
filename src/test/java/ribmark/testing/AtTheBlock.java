package ribmark.testing;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import ribmark.carcase.Carcase;
import ribmark.carcase.Decision;
import ribmark.people.Person;
import ribmark.web.Role;

/** Maeve at the block with Ada and a lamb: what every test of block sheets begins with. */
public final class AtTheBlock implements AutoCloseable {

    /** The running program. */
    public final TestApp app = new TestApp();

    /** The apprentice. */
    public final Person ada = app.person("Ada", Role.APPRENTICE);

    /** The assessor. */
    public final Person maeve = app.person("Maeve", Role.ASSESSOR);

    /** An accepted lamb. */
    public final Carcase lamb = lamb(31, Decision.ACCEPT);

    private Browser browser;

    /** A lamb with this number, decided on. */
    public Carcase lamb(int number, Decision decision) {
        return app.app.carcases().add(number, Carcases.lambOf("20.120"), decision, "as seen", maeve);
    }

    /** Maeve's browser. */
    public Browser maeve() {
        if (browser == null) {
            browser = app.as("Maeve", Role.ASSESSOR);
        }
        return browser;
    }

    /** Opens a sheet on the lamb for the whole breakdown, and answers the page it leads to. */
    public Page open() {
        return maeve().open("/block-sheets/new?carcase=" + lamb.id())
                .choose("apprentice", ada.id().toString())
                .press("Open a sheet on lamb 31");
    }

    /** Opens a sheet for Ada on one stage, both sides. */
    public Page openStage(String stage) {
        return maeve().open("/block-sheets/new?carcase=" + lamb.id())
                .choose("apprentice", ada.id().toString())
                .choose("part", "chosen")
                .choose("stages", stage)
                .press("Open a sheet on lamb 31");
    }

    /** Sends a form of ours by hand, as an old page or another browser would. */
    public static Page send(Browser browser, String address, Map<String, String> fields) {
        List<Map.Entry<String, String>> all = new java.util.ArrayList<>(fields.entrySet());
        Page page = browser.open("/today");
        all.add(Map.entry("token", page.all("input[name=token]").get(0).attr("value")));
        all.add(Map.entry("key", UUID.randomUUID().toString()));
        return browser.post(address, all);
    }

    @Override
    public void close() {
        app.close();
    }
}
