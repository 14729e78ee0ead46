package ribmark.basics;

/** The rules say no, in one sentence written for the reader. */
public final class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** The sentence is shown as it stands. */
    public Refused(String sentence) {
        super(sentence, null, false, false);
    }
}
