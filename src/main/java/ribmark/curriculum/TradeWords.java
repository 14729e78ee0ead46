package ribmark.curriculum;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The words of the trade with the anatomical names of what they point at: ours, those of elsewhere, and those a step uses. */
public final class TradeWords {

    /** A word as its reader sees it. */
    public record Word(String trade, String means, String where, String bones, List<Known> known) {}

    private final Curriculum curriculum;
    private final BoneWords bones;

    TradeWords(Curriculum curriculum) {
        this.curriculum = curriculum;
        this.bones = new BoneWords(curriculum.skeleton());
    }

    List<Word> ours() {
        return words(terms(true));
    }

    List<Word> elsewhere() {
        return words(terms(false));
    }

    /** The words of ours that these steps use. */
    List<Word> in(List<Step> steps) {
        String text = String.join(" ", steps.stream().flatMap(TradeWords::text).toList())
                .toLowerCase(Locale.ROOT);
        return words(terms(true).filter(term -> isSaid(term, text)));
    }

    private Stream<Term> terms(boolean ours) {
        return curriculum.terms().stream().filter(term -> term.ours() == ours);
    }

    private static boolean isSaid(Term term, String text) {
        String word = Pattern.quote(term.trade().toLowerCase(Locale.ROOT));
        return Pattern.compile("\\b" + word + "(s|es)?\\b").matcher(text).find();
    }

    private static Stream<String> text(Step step) {
        Stream<String> told = Stream.of(
                step.title(),
                step.whatFor(),
                step.landmark().heading(),
                step.landmark().text(),
                step.caution().text(),
                step.hands(),
                step.how());
        Stream<String> faults = step.faults().stream().flatMap(fault -> Stream.of(fault.text(), fault.mend()));
        return Stream.of(told, step.good().stream(), faults).flatMap(lines -> lines);
    }

    private List<Word> words(Stream<Term> terms) {
        return terms.map(this::word).toList();
    }

    private Word word(Term term) {
        return new Word(
                term.trade(),
                term.means(),
                term.where(),
                bones.say(term.bones()),
                Known.of(curriculum, term.restsOn().stream()));
    }
}
