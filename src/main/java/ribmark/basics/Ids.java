package ribmark.basics;

import java.util.UUID;

/** Ids as they stand in addresses. */
public final class Ids {

    private Ids() {}

    /** The id in an address; a malformed or shortened one is simply not there, so that nothing has two addresses. */
    public static UUID of(String text) {
        try {
            UUID id = UUID.fromString(text);
            if (id.toString().equalsIgnoreCase(text)) {
                return id;
            }
        } catch (IllegalArgumentException malformed) {
            // as one that is shortened
        }
        throw new NotFound();
    }
}
