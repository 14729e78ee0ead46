package ribmark.curriculum;

import java.util.Optional;

/** A publication, practice or decision that figures were taken from, and how it was seen. */
public record Source(
        String key,
        String title,
        Optional<String> publisher,
        Optional<String> year,
        String seen,
        Optional<String> note) {}
