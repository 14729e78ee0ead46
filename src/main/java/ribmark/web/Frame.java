package ribmark.web;

import java.util.List;
import java.util.UUID;

/** What stands around a page: who is acting, the places of their role, the token its forms carry, and whether this is the demo. */
public record Frame(
        String person,
        String role,
        boolean manyRoles,
        List<Place> places,
        String token,
        String styleSheet,
        boolean demo) {

    /** One of the places in the head, and whether the reader is in it. */
    public record Place(String word, String href, boolean here) {}

    /** Whether somebody is signed in. */
    public boolean signedIn() {
        return !person.isEmpty();
    }

    /** A new key for one form: sent twice, it is kept once. */
    public String key() {
        return UUID.randomUUID().toString();
    }
}
