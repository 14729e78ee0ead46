package ribmark.web;

import java.util.EnumSet;
import java.util.Set;

/** Who may open an address, and which of those see only what is theirs. Nobody named means nobody. */
public record Allow(boolean anyone, Set<Role> roles, Set<Role> own) {

    /** Keeps copies, so that nobody widens them afterwards. */
    public Allow {
        roles = Set.copyOf(roles);
        own = Set.copyOf(own);
    }

    /** Open without signing in. */
    public static Allow everybody() {
        return new Allow(true, Set.of(), Set.of());
    }

    /** Open to whoever is signed in, in any role. */
    public static Allow signedIn() {
        return of(Role.values());
    }

    /** Open to these roles. */
    public static Allow of(Role... roles) {
        return new Allow(false, Set.of(roles), Set.of());
    }

    /** The same, and this role too, but only for what is theirs. */
    public Allow own(Role role) {
        Set<Role> all = EnumSet.of(role);
        all.addAll(roles);
        Set<Role> theirs = EnumSet.of(role);
        theirs.addAll(own);
        return new Allow(anyone, all, theirs);
    }

    /** Whether this role gets in; {@code null} is somebody not signed in. */
    public boolean admits(Role role) {
        return anyone || role != null && roles.contains(role);
    }
}
