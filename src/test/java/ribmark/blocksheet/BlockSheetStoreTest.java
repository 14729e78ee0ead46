package ribmark.blocksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.basics.NotFound;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.competence.Mark;
import ribmark.people.Acting;
import ribmark.people.Person;
import ribmark.testing.AtTheBlock;
import ribmark.web.Role;

class BlockSheetStoreTest {

    private static final Place LEFT = new Place("fores-cut", Side.LEFT);
    private static final Place RIGHT = new Place("fores-cut", Side.RIGHT);
    private static final Set<Place> BOTH = new LinkedHashSet<>(List.of(LEFT, RIGHT));

    private final AtTheBlock block = new AtTheBlock();
    private final BlockSheetStore sheets = block.app.app.sheets();

    @AfterEach
    void stop() {
        block.close();
    }

    @Test
    void what_was_opened_is_read_back_in_the_order_worked() {
        UUID id = open(block.maeve);

        BlockSheet sheet = sheets.find(id).orElseThrow();

        assertThat(sheet.scope()).containsExactly(LEFT, RIGHT);
        assertThat(sheet.apprentice()).isEqualTo(block.ada);
        assertThat(sheet.assessor()).isEqualTo(block.maeve);
        assertThat(sheet.carcase().number()).isEqualTo(31);
        assertThat(sheets.openOf(block.lamb.id())).containsExactly(sheet);
        assertThat(sheets.closedOf(block.ada.id())).isEmpty();
    }

    @Test
    void the_newest_mark_of_a_place_counts_and_one_taken_back_is_none() {
        UUID id = open(block.maeve);
        mark(id, LEFT, Mark.UNAIDED, "");
        mark(id, RIGHT, Mark.NOT_YET, "The line slid.");
        mark(id, LEFT, Mark.PROMPTED, "After a word.");
        sheets.undo(id, RIGHT);

        BlockSheet sheet = sheets.find(id).orElseThrow();

        assertThat(sheet.marks()).hasSize(1);
        assertThat(sheet.mark(LEFT).orElseThrow().mark()).isEqualTo(Mark.PROMPTED);
        assertThat(sheet.mark(LEFT).orElseThrow().words()).isEqualTo("After a word.");
        assertThat(sheet.mark(RIGHT)).isEmpty();
        assertThat(block.app.app.verify().holds()).isTrue();
    }

    @Test
    void the_tables_themselves_refuse_a_mark_on_a_step_that_is_not_on_the_sheet_and_a_sheet_of_oneself() {
        UUID id = open(block.maeve);

        assertThatThrownBy(() -> mark(id, new Place("fores-saw", Side.ONCE), Mark.UNAIDED, ""))
                .isInstanceOf(UnableToExecuteStatementException.class);
        assertThatThrownBy(() -> sheets.open(new Opening(block.lamb, block.maeve, block.maeve, "lamb", BOTH)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("Nobody marks themselves");
        assertThat(sheets.all()).hasSize(1);
    }

    @Test
    void what_was_kept_cannot_be_rewritten() {
        UUID id = open(block.maeve);
        mark(id, LEFT, Mark.NOT_YET, "");

        assertThatThrownBy(() -> block.app.app.database().write(h -> h.execute("update marks set mark = 'unaided'")))
                .isInstanceOf(UnableToExecuteStatementException.class);
        assertThatThrownBy(() -> block.app.app.database().write(h -> h.execute("delete from marks")))
                .isInstanceOf(UnableToExecuteStatementException.class);
    }

    @Test
    void a_sheet_is_closed_once_with_what_was_said() {
        UUID id = open(block.maeve);
        mark(id, LEFT, Mark.UNAIDED, "");
        mark(id, RIGHT, Mark.PROMPTED, "");
        Draft said = new Draft(Map.of("wholesale", "Seen."), "well", "change", "next", "2026-11-27");
        sheets.close(id, LocalDate.of(2026, 11, 27), said);

        assertThat(sheets.closedOf(block.ada.id())).hasSize(1);
        assertThat(sheets.find(id).orElseThrow().closing().orElseThrow().stage("wholesale"))
                .isEqualTo("Seen.");
        assertThatThrownBy(() -> sheets.close(id, LocalDate.of(2026, 11, 27), said))
                .isInstanceOf(UnableToExecuteStatementException.class);
    }

    @Test
    void who_may_not_see_a_sheet_finds_nothing() {
        UUID id = open(block.maeve);
        Person petra = block.app.person("Petra", Role.ADMINISTRATOR);

        assertThat(sheets.find(id, new Acting(block.maeve, Role.ASSESSOR)).id()).isEqualTo(id);
        assertThatThrownBy(() -> sheets.find(id, new Acting(petra, Role.ADMINISTRATOR)))
                .isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> sheets.find(id, new Acting(block.ada, Role.APPRENTICE)))
                .isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> sheets.find(UUID.randomUUID(), new Acting(block.maeve, Role.ASSESSOR)))
                .isInstanceOf(NotFound.class);
    }

    private UUID open(Person assessor) {
        return sheets.open(new Opening(block.lamb, block.ada, assessor, "lamb", BOTH));
    }

    private void mark(UUID sheet, Place place, Mark mark, String words) {
        sheets.mark(sheet, place, mark, Optional.empty(), words, block.app.clock.instant());
    }
}
