package ribmark.testing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import ribmark.web.Route;

/** Follows links and nothing else, breadth first, as somebody does who only clicks; of each address it opens so many. */
public final class Crawl {

    private record Found(String path, int clicks) {}

    private final Browser browser;
    private final Map<Route, Pattern> patterns = new LinkedHashMap<>();
    private final int mostOfEach;
    private final int mostClicks;
    private final Map<Route, Integer> opened = new HashMap<>();
    private final Map<String, Page> pages = new LinkedHashMap<>();

    /** Opens at most so many pages of each address, at most so many clicks away. */
    public Crawl(Browser browser, List<Route> routes, int mostOfEach, int mostClicks) {
        this.browser = browser;
        this.mostOfEach = mostOfEach;
        this.mostClicks = mostClicks;
        routes.stream()
                .filter(route -> route.method().equals("GET"))
                .forEach(route ->
                        patterns.put(route, Pattern.compile(route.path().replaceAll("\\{[a-zA-Z]+}", "[^/]+"))));
    }

    /** Everything reached from an address, by its path. */
    public Map<String, Page> from(String start) {
        Deque<Found> next = new ArrayDeque<>(List.of(new Found(start, 0)));
        Set<String> known = new HashSet<>(Set.of(start));
        while (!next.isEmpty()) {
            Found found = next.remove();
            if (tooMany(found.path())) {
                continue;
            }
            Page page = browser.open(found.path());
            pages.put(found.path(), page);
            if (found.clicks() < mostClicks) {
                page.links().stream()
                        .map(link -> link.replaceFirst("#.*", ""))
                        .filter(link -> link.startsWith("/") && known.add(link))
                        .forEach(link -> next.add(new Found(link, found.clicks() + 1)));
            }
        }
        return pages;
    }

    private boolean tooMany(String path) {
        return route(path)
                .map(route -> opened.merge(route, 1, Integer::sum) > mostOfEach)
                .orElse(false);
    }

    /** The address a path belongs to. */
    public java.util.Optional<Route> route(String path) {
        String bare = path.replaceFirst("[?].*", "");
        return patterns.entrySet().stream()
                .filter(entry -> entry.getKey().path().equals(bare))
                .findFirst()
                .or(() -> patterns.entrySet().stream()
                        .filter(entry -> entry.getValue().matcher(bare).matches())
                        .findFirst())
                .map(Map.Entry::getKey);
    }
}
