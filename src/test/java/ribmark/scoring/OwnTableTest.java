package ribmark.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.testing.Tables;

/** Cutting tests of the college, worked by hand from the closed form; the weights are invented. */
class OwnTableTest {

    /**
     * Table: 36.3, spread 1.5, worth 5 carcases. Tests 35, 36, 37: mean 36, squares about it 2. By hand: mean (5 × 36.3 + 3 × 36)/8 =
     * 36.1875; shape 5/2 + 3/2 = 4; scale 5 × 2.25/2 + 2/2 + 5 × 3 × 0.3²/(2 × 8) = 5.625 + 1 + 0.084375 = 6.709375; spread √(6.709375/4)
     * = 1.295123.
     */
    @Test
    void three_tests_move_mean_and_spread_by_the_closed_form() {
        Learned learned = Learned.borrowed(36.3, 1.5, 5).with(35).with(36).with(37);
        assertThat(learned.mean()).isCloseTo(36.1875, within(1e-12));
        assertThat(learned.carcases()).isEqualTo(8);
        assertThat(learned.shape()).isEqualTo(4);
        assertThat(learned.scale()).isCloseTo(6.709375, within(1e-12));
        assertThat(learned.spread()).isCloseTo(1.295123, within(5e-7));
    }

    @Test
    void with_no_test_the_table_stays_what_it_is() {
        Learned none = Learned.borrowed(36.3, 1.5, 5);
        assertThat(none.mean()).isEqualTo(36.3);
        assertThat(none.spread()).isCloseTo(1.5, within(1e-12));
        ReferenceTable table = Tables.primals();
        assertThat(new OwnTable(table, Tables.MEDIUM, List.of()).table()).isSameAs(table);
    }

    @Test
    void the_order_of_the_tests_does_not_matter_and_many_tests_find_the_truth() {
        Random random = new Random(20_261_125);
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i < 5_000; i++) {
            shares.add(34 + 0.8 * random.nextGaussian());
        }
        Learned forward = learnt(shares);
        Collections.shuffle(shares, random);
        Learned shuffled = learnt(shares);
        assertThat(shuffled.mean()).isCloseTo(forward.mean(), within(1e-9));
        assertThat(shuffled.spread()).isCloseTo(forward.spread(), within(1e-9));
        assertThat(forward.mean()).isCloseTo(34, within(0.05));
        assertThat(forward.spread()).isCloseTo(0.8, within(0.05));
    }

    private static Learned learnt(List<Double> shares) {
        Learned learned = Learned.borrowed(36.3, 1.5, 5);
        for (double share : shares) {
            learned = learned.with(share);
        }
        return learned;
    }

    /** Percents of a carcase that lost 0.5: 36.3, 26.4, 33.1, 0.5, 3.2 of 99.5; fores 100 × 36.3/99.5 = 36.48241. */
    @Test
    void a_test_teaches_shares_of_what_was_weighed_so_that_the_table_keeps_adding_up() {
        Map<String, Double> percents =
                Map.of("fores", 36.3, "middle", 26.4, "legs-chump-on", 33.1, "kidneys", 0.5, "kidney-fat", 3.2);
        Conditions lamb = new Conditions(20, true, Optional.of("3L"));
        assertThat(OwnTable.whyNot(Tables.primals(), lamb, percents)).isEmpty();
        Map<String, Double> shares = OwnTable.shares(Tables.primals(), lamb, percents);
        assertThat(shares.get("fores")).isCloseTo(36.48241, within(5e-6));
        ReferenceTable own = new OwnTable(Tables.primals(), Tables.MEDIUM, List.of(shares, shares)).table();
        assertThat(own.rows().stream().mapToDouble(Row::expected).sum()).isCloseTo(100, within(1e-9));
        assertThat(own.rows().get(0).expected()).isCloseTo((5 * 36.3 + 2 * 36.48241) / 7, within(5e-6));
        assertThat(own.rows().get(0).grounds())
                .extracting(Ground::fact)
                .last()
                .asString()
                .contains("2 so far; 71 % is still borrowed");
        assertThat(own.rows().get(0).basis()).isEqualTo(Basis.JUDGEMENT);
    }

    @Test
    void without_kidneys_the_joints_are_taken_as_they_would_be_with_them() {
        Map<String, Double> percents = Map.of("fores", 38.0, "middle", 28.0, "legs-chump-on", 34.0);
        Conditions out = new Conditions(20, false, Optional.of("3L"));
        Map<String, Double> shares = OwnTable.shares(Tables.primals(), out, percents);
        assertThat(shares.get("fores")).isCloseTo(38.0 * 0.963, within(1e-9));
        assertThat(shares).doesNotContainKey("kidneys");
    }

    @Test
    void twenty_tests_make_a_row_the_college_s_own() {
        Map<String, Double> test =
                Map.of("fores", 36.0, "middle", 27.0, "legs-chump-on", 33.0, "kidneys", 0.5, "kidney-fat", 3.5);
        ReferenceTable own = new OwnTable(Tables.primals(), Tables.MEDIUM, Collections.nCopies(20, test)).table();
        assertThat(own.rows()).allMatch(row -> row.basis() == Basis.OWN);
        assertThat(own.cutting().borrowedPercent(20)).isEqualTo(20);
    }

    @Test
    void what_the_table_was_not_made_for_or_what_is_not_weighed_teaches_nothing() {
        Map<String, Double> some = Map.of("fores", 36.0);
        Conditions lamb = new Conditions(20, true, Optional.of("3L"));
        assertThat(OwnTable.whyNot(Tables.primals(), lamb, some).orElseThrow()).contains("no whole weight for middle");
        assertThat(OwnTable.whyNot(Tables.primals(), new Conditions(30, true, Optional.of("3L")), some))
                .isPresent();
        assertThat(OwnTable.whyNot(Tables.primals(), new Conditions(20, true, Optional.empty()), some)
                        .orElseThrow())
                .contains("fat class");
    }
}
