package ribmark.people;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.util.Base64;
import java.util.Optional;
import java.util.UUID;
import ribmark.basics.NotFound;
import ribmark.database.Database;
import ribmark.web.Visitor;

/** Links that let somebody choose a password once: for a new account, a forgotten password, or the first administrator. */
public final class OneTimeLinks {

    private static final Duration LASTS = Duration.ofDays(3);
    private static final SecureRandom RANDOM = new SecureRandom();

    private record Link(UUID person) {}

    private final Database database;
    private final Clock clock;

    /** A link ends after three days. */
    public OneTimeLinks(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** A new link's last part; only its digest is kept. Without a person it is for the first administrator. */
    public String make(Optional<UUID> person) {
        byte[] bytes = new byte[24];
        RANDOM.nextBytes(bytes);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        database.write(handle -> handle.execute(
                "insert into one_time_links (token_digest, person_id, ends_at) values (?, ?, ?)",
                Visitor.digest(token),
                person.orElse(null),
                clock.instant().plus(LASTS)));
        return token;
    }

    /** Whom a link is for, or nothing here when it was used or has ended. */
    Optional<UUID> personOf(String token) {
        return database.reading(handle -> handle.createQuery(
                        "select person_id from one_time_links where token_digest = :digest and ends_at > :now")
                .bind("digest", Visitor.digest(token))
                .bind("now", clock.instant())
                .map((row, ctx) -> new Link(row.getObject("person_id", UUID.class)))
                .findOne()
                .map(link -> Optional.ofNullable(link.person()))
                .orElseThrow(NotFound::new));
    }

    /** A used link opens nothing. */
    void used(String token) {
        database.write(
                handle -> handle.execute("delete from one_time_links where token_digest = ?", Visitor.digest(token)));
    }
}
