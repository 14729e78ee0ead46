package ribmark.signing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ribmark.testing.Watched.READY;

import java.util.List;
import java.util.UUID;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.basics.NotFound;
import ribmark.basics.Refused;
import ribmark.people.Person;
import ribmark.testing.Watched;

class SignOffStoreTest {

    private final Watched college = new Watched();
    private final SignOffStore store = college.app.app.signOffs();
    private final Person ada = college.apprentice("Ada");
    private final Person maeve = college.assessor("Maeve");

    @AfterEach
    void stop() {
        college.close();
    }

    @Test
    void a_sign_off_is_read_back_with_name_day_and_words() {
        SignOff signed = sign("Three clean lines.");

        assertThat(store.find(signed.id())).isEqualTo(signed);
        assertThat(signed.assessor()).isEqualTo(maeve);
        assertThat(signed.signedAt()).isEqualTo(college.app.clock.instant());
        assertThat(signed.convinced()).isEqualTo("Three clean lines.");
        assertThat(signed.stands()).isTrue();
    }

    @Test
    void a_withdrawal_is_a_later_row_and_the_next_sign_off_is_another_turn() {
        SignOff first = sign("Clean.");
        store.withdraw(first, college.assessor("Osric"), "Another lamb.");
        SignOff second = sign("Clean again.");

        assertThat(store.allOf(ada.id(), READY)).extracting(SignOff::turn).containsExactly(1, 2);
        assertThat(store.find(first.id()).withdrawal().orElseThrow().reason()).isEqualTo("Another lamb.");
        assertThat(second.stands()).isTrue();
        assertThat(college.app.app.verify().holds()).isTrue();
    }

    @Test
    void words_stand_nowhere_but_with_the_evidence() {
        sign("A sentence about Ada.");

        assertThat(college.app.app.log().newest(1).get(0).text()).doesNotContain("A sentence about Ada.");
        assertThat(college.app.app.log().newest(1).get(0).facts()).containsKeys("id", "step_id", "sheets");
    }

    /** S-46, also where two people do it at the same second: the table itself refuses. */
    @Test
    void nobody_signs_for_themselves_and_nothing_is_withdrawn_twice() {
        SignOff signed = sign("Clean.");
        store.withdraw(signed, maeve, "Wrong step.");

        assertThatThrownBy(() -> store.sign(ada.id(), READY, ada, List.of(), "Me."))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> store.withdraw(store.find(signed.id()), maeve, "Again."))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> college.app
                        .app
                        .database()
                        .write(handle -> handle.execute(
                                "insert into sign_offs (id, apprentice_id, step_id, turn, assessor_id, signed_at, evidence_seq)"
                                        + " values (?, ?, 'x', 1, ?, current_timestamp, 1)",
                                UUID.randomUUID(),
                                ada.id(),
                                ada.id())))
                .isInstanceOf(UnableToExecuteStatementException.class);
        assertThatThrownBy(() -> college.app.app.database().write(handle -> handle.execute("delete from sign_offs")))
                .isInstanceOf(UnableToExecuteStatementException.class);
    }

    @Test
    void what_was_never_signed_is_not_there() {
        assertThatThrownBy(() -> store.find(UUID.randomUUID())).isInstanceOf(NotFound.class);
        assertThat(store.all()).isEmpty();
    }

    private SignOff sign(String convinced) {
        return store.sign(ada.id(), READY, maeve, List.of(UUID.randomUUID()), convinced);
    }
}
