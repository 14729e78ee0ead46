package ribmark.study;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.statement.StatementContext;
import ribmark.database.Database;

/** Answers given while studying. They are no evidence and not in the log; none is ever changed. */
public final class StudyStore {

    private static final String COLUMNS =
            "select id, apprentice_id, card_id, seed, item_digest, chosen, answered_right, grade, answered_at"
                    + " from study_answers";

    private final Database database;
    private final Clock clock;

    /** The clock is the server's. */
    public StudyStore(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** Keeps one answer and says which it is. */
    public UUID add(UUID apprentice, Card card, long seed, Optional<Integer> chosen, Grade grade) {
        UUID id = UUID.randomUUID();
        database.write(handle -> handle.execute(
                "insert into study_answers (id, apprentice_id, card_id, seed, item_digest, chosen, answered_right, grade,"
                        + " answered_at) values (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                id,
                apprentice,
                card.id(),
                seed,
                card.ask(seed).digest(),
                chosen.orElse(null),
                grade.isRight() ? "yes" : "no",
                grade.points(),
                clock.instant()));
        return id;
    }

    /** Everything somebody answered, oldest first. */
    public List<StudyAnswer> allOf(UUID apprentice) {
        return database.reading(
                handle -> handle.createQuery(COLUMNS + " where apprentice_id = :apprentice order by seq")
                        .bind("apprentice", apprentice)
                        .map(StudyStore::read)
                        .list());
    }

    /** Everything these people answered, oldest first. */
    public List<StudyAnswer> allOf(List<UUID> apprentices) {
        return apprentices.isEmpty()
                ? List.of()
                : database.reading(
                        handle -> handle.createQuery(COLUMNS + " where apprentice_id in (<apprentices>) order by seq")
                                .bindList("apprentices", apprentices)
                                .map(StudyStore::read)
                                .list());
    }

    /** One answer of somebody's, if it is theirs. */
    public Optional<StudyAnswer> find(UUID id, UUID apprentice) {
        return database.reading(
                handle -> handle.createQuery(COLUMNS + " where id = :id and apprentice_id = :apprentice")
                        .bind("id", id)
                        .bind("apprentice", apprentice)
                        .map(StudyStore::read)
                        .findOne());
    }

    private static StudyAnswer read(ResultSet row, StatementContext ctx) throws SQLException {
        return new StudyAnswer(
                row.getObject("id", UUID.class),
                row.getObject("apprentice_id", UUID.class),
                row.getString("card_id"),
                row.getLong("seed"),
                row.getString("item_digest"),
                Optional.ofNullable(row.getObject("chosen", Integer.class)),
                row.getString("answered_right").equals("yes"),
                row.getInt("grade"),
                row.getObject("answered_at", OffsetDateTime.class).toInstant());
    }
}
