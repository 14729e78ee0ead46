package ribmark.proof;

import ribmark.basics.Refused;
import ribmark.basics.Words;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;

/** A sentence of the skeleton's own, parted into what is the matter and what to do. */
record Saying(String headline, String help) {

    /** Longer than this a headline no longer stands alone on one line (our own rule for messages). */
    static final int LONGEST_HEADLINE = 100;

    private static final String PART = ": ";

    static Saying of(String sentence) {
        int colon = sentence.lastIndexOf(PART);
        String what = colon < 0 ? sentence : sentence.substring(0, colon) + ".";
        String help = colon < 0 ? "Change it, or what stands before it." : sentence.substring(colon + PART.length());
        return what.length() <= LONGEST_HEADLINE
                ? new Saying(what, Words.capital(help))
                : new Saying("This does not fit the skeleton.", Words.capital(sentence));
    }

    static Saying of(Refused refused) {
        return of(refused.getMessage());
    }

    void add(String code, Node at, Findings found, Also... also) {
        found.add(code, at, headline, help, also);
    }
}
