package ribmark.blocksheet;

import java.util.List;
import java.util.Optional;
import ribmark.curriculum.Step;

/** A step as it was worded under one version of the content: what a mark was judged by. */
public record Worded(String version, String title, Caution caution, List<Fault> faults, List<Criterion> criteria) {

    /** The caution that belonged to the step above all. */
    public record Caution(String heading, String text) {}

    /** What could be tapped as a reason, and how it was to be mended; critical is empty for ordinary workmanship. */
    public record Fault(String id, String text, String mend, String critical) {}

    /** What was watched; critical is empty where it could be outweighed. */
    public record Criterion(String watch, String critical) {}

    static Worded of(Step step, String version) {
        return new Worded(
                version,
                step.title(),
                new Caution(step.caution().heading(), step.caution().text()),
                step.faults().stream()
                        .map(fault -> new Fault(fault.id(), fault.text(), fault.mend(), word(fault.critical())))
                        .toList(),
                step.criteria().stream()
                        .map(criterion -> new Criterion(criterion.watch(), word(criterion.critical())))
                        .toList());
    }

    private static String word(Optional<Step.Critical> critical) {
        return critical.map(Step.Critical::word).orElse("");
    }

    /** The fault with this id, as it was worded. */
    Optional<Fault> fault(String id) {
        return faults.stream().filter(fault -> fault.id().equals(id)).findFirst();
    }

    /** The version in few letters. */
    public String inShort() {
        return inShort(version);
    }

    /** So many letters of a version tell it from every other. */
    static String inShort(String version) {
        return version.substring(0, 12);
    }
}
