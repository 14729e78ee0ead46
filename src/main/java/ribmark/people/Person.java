package ribmark.people;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import ribmark.web.Role;

/** Somebody with an account: what they are called, and the roles they may act in. */
public record Person(UUID id, String name, Set<Role> roles, boolean disabled) {

    /** Keeps a copy of the roles. */
    public Person {
        roles = Set.copyOf(roles);
    }

    /** The roles in a fixed order. */
    public List<Role> rolesInOrder() {
        return roles.stream().sorted().toList();
    }

    /** Whether this person may act in a role. */
    public boolean is(Role role) {
        return roles.contains(role);
    }

    /** The roles as words. */
    public String rolesInWords() {
        return String.join(", ", rolesInOrder().stream().map(Role::word).toList());
    }
}
