package ribmark.carcase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import ribmark.basics.NotFound;
import ribmark.basics.Refused;
import ribmark.evidence.Verifier;
import ribmark.people.Person;
import ribmark.testing.Carcases;
import ribmark.testing.TestApp;
import ribmark.web.Role;

class CarcaseStoreTest {

    private final TestApp app = new TestApp();
    private final Person maeve = app.person("Maeve", Role.ASSESSOR);
    private final CarcaseStore carcases = app.app.carcases();

    @AfterEach
    void stop() {
        app.close();
    }

    @Test
    void a_carcase_comes_back_as_it_was_recorded() {
        Intake intake = Carcases.lambOf("20.120");

        Carcase kept = carcases.add(31, intake, Decision.ACCEPT, "", maeve);

        assertThat(carcases.find(kept.id())).isEqualTo(kept);
        assertThat(kept.intake()).isEqualTo(intake);
        assertThat(kept.name()).isEqualTo("lamb\u00a031");
        assertThat(kept.title()).isEqualTo("Lamb\u00a031");
        assertThat(kept.weightInWords()).isEqualTo("20.120\u00a0kg cold, kidneys in");
        assertThat(kept.recordedBy()).isEqualTo(maeve);
        assertThat(kept.recordedAt()).isEqualTo(app.clock.instant());
    }

    @Test
    void numbers_go_on_from_the_highest_and_the_newest_stands_first() {
        carcases.add(31, Carcases.lambOf("20.120"), Decision.ACCEPT, "", maeve);
        carcases.add(Carcases.lambOf("18.940"), Decision.HOLD, "The mark is blurred", maeve);

        assertThat(carcases.all()).extracting(Carcase::number).containsExactly(32, 31);
        assertThat(carcases.accepted()).extracting(Carcase::number).containsExactly(31);
        assertThat(carcases.nextNumber()).isEqualTo(33);
    }

    @Test
    void a_held_carcase_is_released_by_a_row_that_leaves_the_first_one_standing() {
        Carcase held = carcases.add(Carcases.lambOf("18.940"), Decision.HOLD, "The mark is blurred", maeve);

        carcases.decide(held, Decision.ACCEPT, "Read it under the lamp", maeve);

        Carcase released = carcases.find(held.id());
        assertThat(released.isAccepted()).isTrue();
        assertThat(released.decisions())
                .extracting(Decided::decision, Decided::reason)
                .containsExactly(
                        tuple(Decision.HOLD, "The mark is blurred"), tuple(Decision.ACCEPT, "Read it under the lamp"));
    }

    @Test
    void a_refused_carcase_stays_refused() {
        Carcase refused = carcases.add(Carcases.lambOf("18.940"), Decision.REFUSE, "It smells", maeve);

        assertThatThrownBy(() -> carcases.decide(refused, Decision.ACCEPT, "It does not", maeve))
                .isInstanceOf(Refused.class)
                .hasMessage("Lamb\u00a01 is refused, and stays so.");
    }

    @Test
    void each_region_keeps_its_own_newest_count() {
        Carcase lamb = carcases.add(Carcases.lambOf("20.120"), Decision.ACCEPT, "", maeve);
        assertThat(lamb.formula("7,13,6,4,3")).isEqualTo("7,13,6,4,3");

        carcases.count(lamb, OptionalInt.of(14), OptionalInt.empty(), maeve);
        carcases.count(lamb, OptionalInt.empty(), OptionalInt.of(7), maeve);

        Carcase counted = carcases.find(lamb.id());
        assertThat(counted.thoracic()).hasValue(14);
        assertThat(counted.lumbar()).hasValue(7);
        assertThat(counted.formula("7,13,6,4,3")).isEqualTo("7,14,7,4,3");
    }

    @Test
    void the_log_says_the_same_as_the_tables() {
        Carcase lamb = carcases.add(Carcases.lambOf("20.120"), Decision.HOLD, "Counted twice", maeve);
        carcases.count(lamb, OptionalInt.of(14), OptionalInt.empty(), maeve);

        assertThat(new Verifier(app.app.database(), app.app.log(), CarcaseStore.MIRRORS, List.of())
                        .verify(Optional.empty())
                        .holds())
                .isTrue();
    }

    @Test
    void what_is_not_there_is_not_found() {
        assertThatThrownBy(() -> carcases.find(UUID.randomUUID())).isInstanceOf(NotFound.class);
    }
}
