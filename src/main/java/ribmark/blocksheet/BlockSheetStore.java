package ribmark.blocksheet;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Update;
import ribmark.basics.NotFound;
import ribmark.carcase.CarcaseStore;
import ribmark.database.Database;
import ribmark.evidence.Entry;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.Mirror;
import ribmark.people.Acting;
import ribmark.people.GroupStore;
import ribmark.people.PeopleStore;

/** Block sheets and everything on them. Rows are only ever added: the newest mark of a step and side is the one that counts. */
public final class BlockSheetStore {

    /** The tables that say again what the log says of block sheets. */
    public static final List<Mirror> MIRRORS = List.of(
            new Mirror(
                    "sheet-opened",
                    "opened_sheets",
                    List.of("id", "carcase_id", "apprentice_id", "assessor_id", "breakdown_id", "scope")),
            new Mirror(
                    "step-marked",
                    "marks",
                    List.of("id", "sheet_id", "step_id", "side", "mark", "fault_id", "wording")),
            new Mirror("question-answered", "answers", List.of("id", "sheet_id", "step_id", "question_id", "answered")),
            new Mirror("closing-drafted", "closing_drafts", List.of("id", "sheet_id", "next_day")),
            new Mirror("sheet-closed", "closings", List.of("sheet_id", "next_day")));

    private static final String SHEETS = "select s.* from block_sheets s ";
    private static final String MARK =
            "insert into marks (id, sheet_id, step_id, side, mark, fault_id, wording, observed_at, recorded_at, evidence_seq)"
                    + " values (:id, :sheet, :step, :side, :mark, :fault, :wording, :observed, :now, :seq)";
    private static final String NOT_CLOSED = "not exists (select 1 from closings c where c.sheet_id = s.id)";

    private final Database database;
    private final EvidenceLog log;
    private final Clock clock;
    private final CarcaseStore carcases;
    private final PeopleStore people;
    private final GroupStore groups;
    private final WordingStore wordings;

    /** Carcases and people give the rows their names; groups say which sheets a tutor sees, wordings what marks were judged by. */
    public BlockSheetStore(
            Database database,
            EvidenceLog log,
            Clock clock,
            CarcaseStore carcases,
            PeopleStore people,
            GroupStore groups,
            WordingStore wordings) {
        this.database = database;
        this.log = log;
        this.clock = clock;
        this.carcases = carcases;
        this.people = people;
        this.groups = groups;
        this.wordings = wordings;
    }

    /** A sheet this person may see, or nothing here: assessors see all, tutors their groups', apprentices their own closed ones. */
    public BlockSheet find(UUID id, Acting acting) {
        BlockSheet sheet = find(id).orElseThrow(NotFound::new);
        switch (acting.role()) {
            case ASSESSOR -> {
                return sheet;
            }
            case TUTOR -> groups.apprenticeOf(acting.id(), sheet.apprentice().id());
            case APPRENTICE -> mustBeTheirs(sheet, acting);
            default -> throw new NotFound();
        }
        return sheet;
    }

    private static void mustBeTheirs(BlockSheet sheet, Acting acting) {
        if (sheet.isOpen() || !sheet.apprentice().id().equals(acting.id())) {
            throw new NotFound();
        }
    }

    /** The sheet with this id, whoever asks: for the program's own work, never for a page. */
    public Optional<BlockSheet> find(UUID id) {
        return sheets("where s.id = :id", Map.of("id", id)).stream().findFirst();
    }

    /** Every sheet, oldest first. */
    public List<BlockSheet> all() {
        return sheets("", Map.of());
    }

    /** Every open sheet, oldest first. */
    public List<BlockSheet> allOpen() {
        return sheets("where " + NOT_CLOSED, Map.of());
    }

    /** The open sheets on a carcase, oldest first. */
    public List<BlockSheet> openOf(UUID carcase) {
        return sheets("where s.carcase_id = :carcase and " + NOT_CLOSED, Map.of("carcase", carcase));
    }

    /** All sheets on a carcase, oldest first. */
    public List<BlockSheet> allOf(UUID carcase) {
        return sheets("where s.carcase_id = :carcase", Map.of("carcase", carcase));
    }

    /** The closed sheets of an apprentice, in the order they were closed. */
    public List<BlockSheet> closedOf(UUID apprentice) {
        return sheets(
                "join closings c on c.sheet_id = s.id where s.apprentice_id = :apprentice",
                "c.evidence_seq",
                Map.of("apprentice", apprentice));
    }

    /** Every closed sheet, in the order they were closed. */
    public List<BlockSheet> allClosed() {
        return sheets("join closings c on c.sheet_id = s.id", "c.evidence_seq", Map.of());
    }

    /** Opens a sheet and answers its id. */
    public UUID open(Opening opening) {
        opening.check();
        UUID id = UUID.randomUUID();
        database.write(handle -> insert(handle, id, opening));
        return id;
    }

    private void insert(Handle handle, UUID id, Opening opening) {
        String scope =
                String.join(" ", opening.scope().stream().map(Place::text).toList());
        long record = log.append(Entry.of("sheet-opened")
                .fact("id", id)
                .fact("carcase_id", opening.carcase().id())
                .fact("apprentice_id", opening.apprentice().id())
                .fact("assessor_id", opening.assessor().id())
                .fact("breakdown_id", opening.breakdownId())
                .fact("scope", scope));
        handle.execute(
                "insert into block_sheets (id, carcase_id, apprentice_id, assessor_id, breakdown_id, opened_at, evidence_seq)"
                        + " values (?, ?, ?, ?, ?, ?, ?)",
                id,
                opening.carcase().id(),
                opening.apprentice().id(),
                opening.assessor().id(),
                opening.breakdownId(),
                clock.instant(),
                record);
        int at = 0;
        for (Place place : opening.scope()) {
            handle.execute(
                    "insert into sheet_steps (sheet_id, place, step_id, side) values (?, ?, ?, ?)",
                    id,
                    ++at,
                    place.stepId(),
                    place.side().word());
        }
    }

    /** Keeps a mark; it takes the place of the one before. */
    public void mark(
            UUID sheet,
            Place place,
            ribmark.competence.Mark mark,
            Optional<String> fault,
            String words,
            Instant observedAt) {
        keep(sheet, place, Optional.of(mark.code()), fault, words, observedAt);
    }

    /** Takes the mark of a step and side back, as if nothing had been seen. */
    public void undo(UUID sheet, Place place) {
        keep(sheet, place, Optional.empty(), Optional.empty(), "", clock.instant());
    }

    private void keep(
            UUID sheet, Place place, Optional<String> mark, Optional<String> fault, String words, Instant observedAt) {
        UUID id = UUID.randomUUID();
        database.write(handle -> {
            String wording = mark.map(given -> wordings.keep(handle)).orElse(null);
            long record = log.append(Entry.of("step-marked")
                    .fact("id", id)
                    .fact("sheet_id", sheet)
                    .fact("step_id", place.stepId())
                    .fact("side", place.side().word())
                    .fact("mark", mark.orElse(null))
                    .fact("fault_id", fault.orElse(null))
                    .fact("wording", wording)
                    .words("words", words)
                    .observedAt(observedAt));
            at(handle, MARK)
                    .bind("id", id)
                    .bind("sheet", sheet)
                    .bind("step", place.stepId())
                    .bind("side", place.side().word())
                    .bind("mark", mark.orElse(null))
                    .bind("fault", fault.orElse(null))
                    .bind("wording", wording)
                    .bind("observed", observedAt)
                    .bind("seq", record)
                    .execute();
        });
    }

    /** Keeps how well a question was answered; the newest answer counts. */
    public void answer(UUID sheet, String step, String question, Answer.Known answered) {
        UUID id = UUID.randomUUID();
        database.write(handle -> {
            long record = log.append(Entry.of("question-answered")
                    .fact("id", id)
                    .fact("sheet_id", sheet)
                    .fact("step_id", step)
                    .fact("question_id", question)
                    .fact("answered", answered.code()));
            handle.execute(
                    "insert into answers (id, sheet_id, step_id, question_id, answered, evidence_seq)"
                            + " values (?, ?, ?, ?, ?, ?)",
                    id,
                    sheet,
                    step,
                    question,
                    answered.code(),
                    record);
        });
    }

    /** Keeps what was typed towards closing, to go on with later; the newest draft is the one found again. */
    public void draft(UUID sheet, Draft draft) {
        UUID id = UUID.randomUUID();
        database.write(handle -> {
            String day = draft.nextDay().isEmpty() ? null : draft.nextDay();
            Entry entry = Entry.of("closing-drafted")
                    .fact("id", id)
                    .fact("sheet_id", sheet)
                    .fact("next_day", day);
            handle.execute(
                    "insert into closing_drafts (id, sheet_id, next_day, evidence_seq) values (?, ?, ?, ?)",
                    id,
                    sheet,
                    day,
                    log.append(draft.into(entry)));
        });
    }

    /** What was typed towards closing a sheet, when it was left open. */
    public Optional<Draft> draft(UUID sheet) {
        return database.reading(handle -> new BlockSheetRows(handle, log, wordings).draft(sheet));
    }

    /** Closes a sheet for good, with the words said at the end. */
    public void close(UUID sheet, LocalDate nextDay, Draft said) {
        database.write(handle -> {
            Entry entry = Entry.of("sheet-closed").fact("sheet_id", sheet).fact("next_day", nextDay);
            long record = log.append(said.into(entry));
            at(
                            handle,
                            "insert into closings (sheet_id, closed_at, next_day, evidence_seq)"
                                    + " values (:sheet, :now, :day, :seq)")
                    .bind("sheet", sheet)
                    .bind("day", nextDay)
                    .bind("seq", record)
                    .execute();
        });
    }

    private Update at(Handle handle, String sql) {
        return handle.createUpdate(sql).bind("now", clock.instant());
    }

    private List<BlockSheet> sheets(String which, Map<String, UUID> of) {
        return sheets(which, "s.evidence_seq", of);
    }

    private List<BlockSheet> sheets(String which, String order, Map<String, UUID> of) {
        return database.reading(handle -> {
            Collection<BlockSheetRows.Opened> opened = handle.createQuery(SHEETS + which + " order by " + order)
                    .bindMap(of)
                    .map(BlockSheetRows.Opened::read)
                    .list();
            return opened.isEmpty()
                    ? List.of()
                    : new BlockSheetRows(handle, log, wordings).sheets(opened, carcases.byId(), people.byId());
        });
    }
}
