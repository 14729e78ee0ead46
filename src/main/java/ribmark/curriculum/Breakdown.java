package ribmark.curriculum;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import ribmark.anatomy.Formula;

/** The whole curriculum for one kind of carcase, in the order worked. */
public record Breakdown(
        String id,
        String title,
        String version,
        Formula formula,
        String dressing,
        Optional<AtIntake> atIntake,
        List<Stage> stages,
        List<Line> lines,
        List<Assumption> assumptions,
        List<Tool> tools,
        List<Caution> cautions) {

    /** A line or choice that other colleges draw otherwise, and the steps it makes a difference to. */
    public record Assumption(String id, String text, String others, List<String> steps, List<RestsOn> restsOn) {}

    /** A tool that steps name. */
    public record Tool(String id, String name, String text) {}

    /** A caution that holds for every step. */
    public record Caution(String id, String heading, String text, List<RestsOn> restsOn) {}

    /** What is asked of a carcase when it comes in; a weight or count outside is questioned, a warm one needs an action. */
    public record AtIntake(
            BigDecimal lowestKg,
            BigDecimal highestKg,
            BigDecimal meatAtMostC,
            BigDecimal kidneysAtMostC,
            int countsDifferBy,
            List<RestsOn> restsOn) {}

    /** All steps in the order worked. */
    public List<Step> steps() {
        return stages.stream().flatMap(stage -> stage.steps().stream()).toList();
    }

    /** The step with this id, if there is one. */
    public Optional<Step> step(String id) {
        return steps().stream().filter(step -> step.id().equals(id)).findFirst();
    }

    /** The stage with this id, if there is one. */
    public Optional<Stage> stage(String id) {
        return stages.stream().filter(stage -> stage.id().equals(id)).findFirst();
    }

    /** The line with this id, if there is one that can run elsewhere. */
    public Optional<Line> line(String id) {
        return lines.stream().filter(line -> line.id().equals(id)).findFirst();
    }

    /** The lines this step cuts that can run elsewhere. */
    public List<Line> linesCutAt(Step step) {
        return lines.stream().filter(line -> line.isCutAt(step)).toList();
    }

    /** The tool with this id, if there is one. */
    public Optional<Tool> tool(String id) {
        return tools.stream().filter(tool -> tool.id().equals(id)).findFirst();
    }

    /** The standing caution with this id, if there is one. */
    public Optional<Caution> caution(String id) {
        return cautions.stream().filter(caution -> caution.id().equals(id)).findFirst();
    }
}
