package ribmark.people;

import java.util.UUID;
import ribmark.web.Role;

/** Somebody signed in, and the one role they act in now. */
public record Acting(Person person, Role role) {

    /** Who it is. */
    public UUID id() {
        return person.id();
    }

    /** What they are called. */
    public String name() {
        return person.name();
    }

    /** Whether they act in this role. */
    public boolean as(Role asked) {
        return role == asked;
    }
}
