package ribmark.testing;

import java.util.Random;

/**
 * Something that holds for every case there is, tried on cases drawn by chance: two hundred, or as many as the system property
 * {@code drills} says. Each try has a seed of its own; a failure names it, and {@code -Dseed=} that number begins with it.
 */
public final class Property {

    /** How many cases are tried. */
    public static final int TRIES = Integer.getInteger("drills", 200);

    private static final long SEED = Long.getLong("seed", 20_261_130);

    private Property() {}

    /** One case: everything in it is drawn from the generator. */
    public interface Try {
        void with(Random random) throws Exception;
    }

    /** Tries it, and fails with the seed of the first case in which it does not hold. */
    public static void holds(Try one) {
        for (long seed = SEED; seed < SEED + TRIES; seed++) {
            try {
                one.with(new Random(seed));
            } catch (Exception | AssertionError broken) {
                throw new AssertionError("with -Dseed=" + seed + ": " + broken, broken);
            }
        }
    }

    /** A number between two others. */
    public static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** Some of these characters, at most so many. */
    public static String text(Random random, String alphabet, int most) {
        int[] signs = alphabet.codePoints().toArray();
        return random.ints(random.nextInt(most + 1), 0, signs.length)
                .map(at -> signs[at])
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
