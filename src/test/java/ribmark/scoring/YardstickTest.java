package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.basics.Refused;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.testing.Tables;

/** One yardstick serves carcases of every kind, one after the other, and none of them changes what another is held against. */
class YardstickTest {

    private static final long SEED = 20261130;
    private static final List<Optional<String>> FAT =
            List.of(Optional.empty(), Optional.of("3L"), Optional.of("2"), Optional.of("5"));
    private static final List<Vertebrae> ANIMALS = List.of(
            Vertebrae.USUAL,
            Vertebrae.USUAL,
            new Vertebrae(Map.of(Region.THORACIC, 1)),
            new Vertebrae(Map.of(Region.LUMBAR, 1)));

    @Test
    void it_says_of_any_carcase_what_its_tables_say() {
        ReferenceTable primals = Tables.primals();
        ReferenceTable joints = Tables.joints();
        Yardstick yardstick = Yardstick.of(List.of(primals, joints));
        Random random = new Random(SEED);
        for (int i = 0; i < 1000; i++) {
            Conditions carcase = new Conditions(
                    12 + random.nextInt(16),
                    random.nextBoolean(),
                    FAT.get(random.nextInt(FAT.size())),
                    ANIMALS.get(random.nextInt(ANIMALS.size())));
            assertThat(yardstick.under(carcase).tables())
                    .as("seed " + SEED + ", " + carcase)
                    .containsExactly(primals.under(carcase), joints.under(carcase));
        }
    }

    @Test
    void each_cut_is_judged_once_by_the_coarser_table() {
        Yardstick yardstick = Yardstick.of(List.of(Tables.wholesale(), Tables.primals(), Tables.joints()));
        assertThat(yardstick.rows().stream().map(Row::cut))
                .doesNotHaveDuplicates()
                .hasSize(13);
        int middle = yardstick.place("middle", 0);
        assertThat(yardstick.row(yardstick.whole(middle)).cut()).isEqualTo("middle-kidneys-in");
        int loins = yardstick.place("loins", yardstick.size() - 1);
        assertThat(yardstick.whole(loins)).as("the nearest whole").isEqualTo(middle);
        assertThat(yardstick.oneSide(loins)).isEqualTo(yardstick.row(loins).oneSide());
        assertThat(yardstick.whole(yardstick.place("fores", 0))).isEqualTo(Yardstick.NONE);
        assertThat(yardstick.place("bone", 3)).isEqualTo(Yardstick.NONE);
    }

    @Test
    void a_table_that_cannot_judge_a_carcase_says_so_every_time() {
        Yardstick yardstick = Yardstick.of(List.of(Tables.wholesale()));
        Conditions out = new Conditions(20, false, Optional.empty());
        for (int i = 0; i < 2; i++) {
            assertThatThrownBy(() -> yardstick.under(out))
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("use uk-primals");
        }
    }
}
