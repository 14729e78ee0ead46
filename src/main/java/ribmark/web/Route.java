package ribmark.web;

import io.javalin.http.Handler;
import java.util.List;

/** One address: how it is asked for, who may open it, and what it shows. */
public record Route(String method, String path, Allow allow, String shows, boolean keyed, Handler handler) {

    /** The roles that may open it, as words, or {@code anyone}. */
    public List<String> mayOpen() {
        return allow.anyone() ? List.of("anyone") : words(allow.roles());
    }

    /** The roles that see only what is theirs, as words. */
    public List<String> own() {
        return words(allow.own());
    }

    private static List<String> words(java.util.Set<Role> roles) {
        return roles.stream().sorted().map(Role::word).toList();
    }
}
