package ribmark.basics;

import java.util.UUID;

/** Ids as they stand in addresses. */
public final class Ids {

    private Ids() {}

    /** The id in an address; a malformed one is simply not there. */
    public static UUID of(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException malformed) {
            throw new NotFound();
        }
    }
}
