package ribmark.scoring;

/**
 * What is known of one cut's share and its spread, as a normal–inverse-gamma distribution: what a table says counts like so many
 * carcases, and every cutting test adds one (conjugate updating of a normal mean and variance, as in textbooks of Bayesian statistics;
 * from memory). {@code shape} and {@code scale} are those of the inverse gamma for the variance.
 */
public record Learned(double mean, double carcases, double shape, double scale) {

    /** What a table says, worth so many carcases for its mean and for its spread alike. */
    public static Learned borrowed(double expected, double sd, double worth) {
        return new Learned(expected, worth, worth / 2, worth * sd * sd / 2);
    }

    /** The same after one more carcase came out at this share. */
    public Learned with(double share) {
        double off = share - mean;
        return new Learned(
                mean + off / (carcases + 1),
                carcases + 1,
                shape + 0.5,
                scale + carcases * off * off / (2 * (carcases + 1)));
    }

    /** The spread between carcases: the root of scale over shape, which is the table's own spread while nothing was added. */
    public double spread() {
        return Math.sqrt(scale / shape);
    }
}
