package ribmark.web;

import io.javalin.security.RouteRole;
import java.util.Locale;
import java.util.Optional;

/** In what role somebody acts; one at a time. */
public enum Role implements RouteRole {
    ASSESSOR,
    APPRENTICE,
    TUTOR,
    ADMINISTRATOR;

    /** The word on the page, in files and in the database. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The role a word names, if it names one. */
    public static Optional<Role> of(String word) {
        for (Role role : values()) {
            if (role.word().equals(word)) {
                return Optional.of(role);
            }
        }
        return Optional.empty();
    }
}
