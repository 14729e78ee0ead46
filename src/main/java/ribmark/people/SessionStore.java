package ribmark.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.UUID;
import ribmark.database.Database;
import ribmark.web.Role;
import ribmark.web.Visitor;

/** Who is signed in. Only a digest of the cookie is kept; a session ends by itself, at once when the account is closed. */
public final class SessionStore {

    private static final Duration IDLE = Duration.ofMinutes(90);
    private static final Duration LONGEST = Duration.ofHours(10);
    private static final Duration SEEN_EVERY = Duration.ofMinutes(1);

    private record Session(UUID person, Role role, Instant openedAt, Instant seenAt) {}

    private final Database database;
    private final PeopleStore people;
    private final Clock clock;

    /** Idle for an hour and a half, or ten hours old, and it is over: a shift at the block. */
    public SessionStore(Database database, PeopleStore people, Clock clock) {
        this.database = database;
        this.people = people;
        this.clock = clock;
    }

    /** Opens a session under a new cookie. */
    public void open(String cookie, UUID person, Role role) {
        Instant now = clock.instant();
        database.write(handle -> handle.execute(
                "insert into sessions (cookie_digest, person_id, role, opened_at, seen_at) values (?, ?, ?, ?, ?)",
                Visitor.digest(cookie),
                person,
                role.word(),
                now,
                now));
    }

    /** Who acts under this cookie, if anybody does. */
    public Optional<Acting> acting(String cookie) {
        return find(Visitor.digest(cookie)).filter(this::lasts).flatMap(session -> acting(session, cookie));
    }

    private Optional<Acting> acting(Session session, String cookie) {
        Optional<Acting> acting = people.withId(session.person())
                .filter(p -> !p.disabled() && p.is(session.role()))
                .map(p -> new Acting(p, session.role()));
        if (acting.isPresent() && clock.instant().isAfter(session.seenAt().plus(SEEN_EVERY))) {
            database.write(handle -> handle.execute(
                    "update sessions set seen_at = ? where cookie_digest = ?",
                    clock.instant(),
                    Visitor.digest(cookie)));
        }
        return acting;
    }

    /** Lets somebody with several roles act in another. */
    public void actAs(String cookie, Role role) {
        database.write(handle -> handle.execute(
                "update sessions set role = ? where cookie_digest = ?", role.word(), Visitor.digest(cookie)));
    }

    /** Ends the session under this cookie. */
    public void end(String cookie) {
        database.write(
                handle -> handle.execute("delete from sessions where cookie_digest = ?", Visitor.digest(cookie)));
    }

    /** Ends every session of somebody. */
    public void endAll(UUID person) {
        database.write(handle -> handle.execute("delete from sessions where person_id = ?", person));
    }

    private boolean lasts(Session session) {
        Instant now = clock.instant();
        return now.isBefore(session.openedAt().plus(LONGEST))
                && now.isBefore(session.seenAt().plus(IDLE));
    }

    private Optional<Session> find(String digest) {
        return database.reading(handle -> handle.createQuery(
                        "select person_id, role, opened_at, seen_at from sessions where cookie_digest = :digest")
                .bind("digest", digest)
                .map((row, ctx) -> new Session(
                        row.getObject("person_id", UUID.class),
                        Role.of(row.getString("role")).orElseThrow(),
                        row.getObject("opened_at", OffsetDateTime.class).toInstant(),
                        row.getObject("seen_at", OffsetDateTime.class).toInstant()))
                .findOne());
    }
}
