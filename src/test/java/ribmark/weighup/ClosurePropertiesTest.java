package ribmark.weighup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ribmark.testing.Property.between;
import static ribmark.testing.Property.holds;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What holds when the weights of any tree of wholes and parts are made to agree. */
class ClosurePropertiesTest {

    /** Balances that each have parts of their own; the first also has the wholes of the others as parts. */
    private record Tree(double[][] signs, double[] grams, double[] variances, double[] losses) {

        static Tree drawn(Random random, boolean lossy) {
            int balances = 1 + random.nextInt(4);
            List<double[]> signs = new ArrayList<>();
            for (int row = 0; row < balances; row++) {
                double[] whole = new double[balances];
                whole[0] = -1;
                whole[row] = 1;
                signs.add(whole);
                for (int parts = 1 + random.nextInt(4); parts > 0; parts--) {
                    double[] part = new double[balances];
                    part[row] = -1;
                    signs.add(part);
                }
            }
            int count = signs.size();
            return new Tree(
                    signs.toArray(double[][]::new),
                    random.doubles(count, 100, 9_000).toArray(),
                    random.doubles(count, 1, 500).toArray(),
                    random.doubles(balances, 0, lossy ? 900 : 1e-9).toArray());
        }

        double[] residuals(double[] of) {
            double[] residuals = new double[losses.length];
            for (int entry = 0; entry < of.length; entry++) {
                for (int row = 0; row < residuals.length; row++) {
                    residuals[row] += signs[entry][row] * of[entry];
                }
            }
            return residuals;
        }

        Closure closure(double[] residuals) {
            return new Closure(signs, residuals, variances, losses);
        }

        double[] adjustments() {
            return adjustments(residuals(grams));
        }

        double[] adjustments(double[] residuals) {
            Closure closure = closure(residuals);
            return IntStream.range(0, grams.length)
                    .mapToDouble(closure::adjustment)
                    .toArray();
        }

        double cost(double[] moved) {
            return IntStream.range(0, moved.length)
                    .mapToDouble(i -> moved[i] * moved[i] / variances[i])
                    .sum();
        }
    }

    private static double[] less(double[] one, double[] other) {
        return IntStream.range(0, one.length)
                .mapToDouble(i -> one[i] - other[i])
                .toArray();
    }

    @Test
    void once_adjusted_every_whole_is_its_parts() {
        holds(random -> {
            Tree tree = Tree.drawn(random, false);
            for (double left : tree.residuals(less(tree.grams(), tree.adjustments()))) {
                assertThat(left).isCloseTo(0, within(1e-5));
            }
        });
    }

    @Test
    void no_other_weights_that_agree_lie_nearer_to_what_was_read() {
        holds(random -> {
            Tree tree = Tree.drawn(random, false);
            double[] least = tree.adjustments();
            double[] drawn = random.doubles(least.length, -50, 50).toArray();
            double[] free = less(drawn, tree.adjustments(tree.residuals(drawn)));
            double[] other = less(least, free);
            assertThat(tree.cost(other)).isGreaterThanOrEqualTo(tree.cost(least) * (1 - 1e-9) - 1e-6);
        });
    }

    @Test
    void weights_that_agree_already_stay_as_they_are() {
        holds(random -> {
            Tree tree = Tree.drawn(random, true);
            double[] nothing = new double[tree.losses().length];
            assertThat(tree.closure(nothing).globalTest()).isZero();
            for (double moved : tree.adjustments(nothing)) {
                assertThat(moved).isZero();
            }
        });
    }

    @Test
    void the_global_test_is_never_below_nothing_and_grows_with_the_square_of_what_is_left() {
        holds(random -> {
            Tree tree = Tree.drawn(random, true);
            double[] residuals = tree.residuals(tree.grams());
            double test = tree.closure(residuals).globalTest();
            double[] twice = less(residuals, less(new double[residuals.length], residuals));
            assertThat(test).isNotNegative();
            assertThat(tree.closure(twice).globalTest()).isCloseTo(4 * test, within(4e-9 * test));
        });
    }

    @Test
    void the_order_of_the_entries_does_not_matter() {
        holds(random -> {
            Tree tree = Tree.drawn(random, true);
            List<Integer> order = new ArrayList<>(
                    IntStream.range(0, tree.grams().length).boxed().toList());
            Collections.shuffle(order, random);
            Closure one = tree.closure(tree.residuals(tree.grams()));
            Closure other = new Closure(
                    order.stream().map(i -> tree.signs()[i]).toArray(double[][]::new),
                    tree.residuals(tree.grams()),
                    order.stream().mapToDouble(i -> tree.variances()[i]).toArray(),
                    tree.losses());
            assertThat(other.globalTest()).isCloseTo(one.globalTest(), within(1e-9 * one.globalTest()));
            for (int at = 0; at < order.size(); at++) {
                assertThat(other.adjustment(at)).isCloseTo(one.adjustment(order.get(at)), within(1e-6));
                assertThat(other.z(at)).isCloseTo(one.z(order.get(at)), within(1e-6));
            }
        });
    }

    @Test
    void in_kilograms_everything_is_a_thousandth_and_the_tests_are_the_same() {
        holds(random -> {
            Tree grams = Tree.drawn(random, true);
            Tree kilograms = new Tree(
                    grams.signs(),
                    times(1e-3, grams.grams()),
                    times(1e-6, grams.variances()),
                    times(1e-6, grams.losses()));
            Closure one = grams.closure(grams.residuals(grams.grams()));
            Closure other = kilograms.closure(kilograms.residuals(kilograms.grams()));
            assertThat(other.globalTest()).isCloseTo(one.globalTest(), within(1e-8 * one.globalTest()));
            assertThat(1000 * other.adjustment(0)).isCloseTo(one.adjustment(0), within(1e-6));
            assertThat(other.z(0)).isCloseTo(one.z(0), within(1e-6));
        });
    }

    private static double[] times(double factor, double[] values) {
        return java.util.Arrays.stream(values).map(v -> factor * v).toArray();
    }

    @Test
    void no_entry_stands_out_by_more_than_all_together() {
        holds(random -> {
            Tree tree = Tree.drawn(random, true);
            Closure closure = tree.closure(tree.residuals(tree.grams()));
            for (int entry = 0; entry < tree.grams().length; entry++) {
                assertThat(closure.z(entry) * closure.z(entry))
                        .isLessThanOrEqualTo(closure.globalTest() * (1 + 1e-9) + 1e-9);
            }
        });
    }

    @Test
    void a_matrix_times_its_inverse_is_one() {
        holds(random -> {
            int size = 1 + random.nextInt(6);
            double[][] matrix = new double[size][];
            for (int row = 0; row < size; row++) {
                matrix[row] = random.doubles(size, -1, 1).toArray();
                matrix[row][random.nextInt(size)] += 0.5;
                matrix[row][row] += between(random, size + 1, size + 5);
            }
            Collections.shuffle(java.util.Arrays.asList(matrix), random);
            double[][] inverse = SmallMatrix.inverse(matrix);
            for (int row = 0; row < size; row++) {
                for (int column = 0; column < size; column++) {
                    double sum = 0;
                    for (int i = 0; i < size; i++) {
                        sum += matrix[row][i] * inverse[i][column];
                    }
                    assertThat(sum).isCloseTo(row == column ? 1 : 0, within(1e-9));
                }
            }
        });
    }
}
