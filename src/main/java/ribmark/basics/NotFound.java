package ribmark.basics;

/** What was asked for is not there, or is not for the one who asks: the two look alike. */
public final class NotFound extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Says nothing about why. */
    public NotFound() {
        super("There is nothing here", null, false, false);
    }
}
