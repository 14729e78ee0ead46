package ribmark.curriculum;

import java.util.List;
import java.util.Optional;
import ribmark.anatomy.Operation;
import ribmark.basics.Side;

/**
 * One thing to do: what for, where, with which tool, how, with which cautions, and what it frees. Its number is its place
 * in the order worked and may change; its id never does.
 */
public record Step(
        String id,
        int number,
        String stageId,
        String title,
        String whatFor,
        boolean eachSide,
        boolean optional,
        List<String> needs,
        Where landmark,
        List<String> tools,
        Caution caution,
        List<String> alsoMind,
        String hands,
        String how,
        List<String> good,
        List<Fault> faults,
        List<Operation> operations,
        List<String> frees,
        List<String> leaves,
        List<RestsOn> restsOn,
        List<Question> questions,
        List<Criterion> criteria) {

    /** Where the knife goes at this step; bones are those of both sides of the usual animal. */
    public record Where(String heading, String text, List<String> uses, List<String> bones) {}

    /** The caution that belongs to this step above all. */
    public record Caution(String heading, String text) {}

    /** What goes wrong here, as the assessor taps it, and how to mend it. */
    public record Fault(String id, String text, String mend, Optional<Critical> critical) {}

    /** One thing the assessor can see, measure or ask. */
    public record Criterion(
            String id, String step, String watch, String how, Optional<Critical> critical, List<RestsOn> restsOn) {}

    /** What the assessor may ask here, and the answer looked for. */
    public record Question(String id, String step, String ask, String answer, List<RestsOn> restsOn) {}

    /** Why something cannot be outweighed by good work elsewhere. */
    public enum Critical {
        SAFETY,
        HYGIENE,
        WRONG_LINE;

        /** The word in files. */
        public String code() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }

        /** The word on the page. */
        public String word() {
            return code().replace('-', ' ');
        }

        /** The one a word in a file names, if it names one. */
        public static Optional<Critical> of(String code) {
            return java.util.Arrays.stream(values())
                    .filter(critical -> critical.code().equals(code))
                    .findFirst();
        }
    }

    /** The sides it is done on: left and right, or once. */
    public List<Side> sides() {
        return eachSide ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.ONCE);
    }

    /** The fault with this id, if the step has it. */
    public Optional<Fault> fault(String faultId) {
        return faults.stream().filter(fault -> fault.id().equals(faultId)).findFirst();
    }

    /** The criteria that cannot be outweighed. */
    public List<Criterion> criticalCriteria() {
        return criteria.stream().filter(c -> c.critical().isPresent()).toList();
    }
}
