package ribmark.web;

import io.javalin.http.Handler;
import java.util.ArrayList;
import java.util.List;

/** The table of every address; a part adds its own, and says who may open each. */
public final class Routes {

    private final List<Route> all = new ArrayList<>();

    /** A page that links lead to. */
    public void page(String path, Handler handler, Allow allow) {
        add("GET", path, handler, allow, "page", false);
    }

    /** A page that only a POST or a one-time link leads to. */
    public void after(String path, Handler handler, Allow allow) {
        add("GET", path, handler, allow, "after", false);
    }

    /** A style sheet, script, icon or picture. */
    public void file(String path, Handler handler, Allow allow) {
        add("GET", path, handler, allow, "file", false);
    }

    /** Something to take away: CSV, JSON. */
    public void data(String path, Handler handler, Allow allow) {
        add("GET", path, handler, allow, "data", false);
    }

    /** Something done: kept once, however often it is sent. The page it leads to comes after it. */
    public void post(String path, Handler handler, Allow allow) {
        add("POST", path, handler, allow, "after", true);
    }

    /** Signing in or out: leaves nothing that could be kept twice, so it needs no key. */
    public void postWithoutKey(String path, Handler handler, Allow allow) {
        add("POST", path, handler, allow, "after", false);
    }

    /** All of them, in the order added. */
    public List<Route> list() {
        return List.copyOf(all);
    }

    private void add(String method, String path, Handler handler, Allow allow, String shows, boolean keyed) {
        all.add(new Route(method, path, allow, shows, keyed, handler));
    }
}
