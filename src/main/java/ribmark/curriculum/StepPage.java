package ribmark.curriculum;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.basics.Words;
import ribmark.scoring.Limits;
import ribmark.scoring.TrimMeasure;

/** One step as its reader sees it: every id turned into words, every claim with what it rests on. */
public record StepPage(
        Step step,
        String sides,
        OnAnimal animal,
        Prose how,
        String bones,
        List<Breakdown.Caution> alsoMind,
        List<Landmark> landmarks,
        List<Breakdown.Tool> tools,
        List<Watched> watched,
        List<Limit> limits,
        List<Breakdown.Assumption> assumptions,
        String freed,
        boolean canRunElsewhere,
        List<Step> needs,
        Reasons reasons,
        Step before,
        Step after) {

    /** The animal shown, in words, when it is not the usual one, and what keeps it on the addresses of other steps. */
    public record OnAnimal(String words, String query) {

        private static OnAnimal of(Curriculum curriculum) {
            if (curriculum.isUsual()) {
                return new OnAnimal("", "");
            }
            Object own = curriculum.skeleton().formula();
            return new OnAnimal(
                    "Shown on an animal with vertebrae " + inWords(own) + ", head to tail. The usual one has "
                            + inWords(curriculum.breakdown().formula()) + ".",
                    "?formula=" + own);
        }

        private static String inWords(Object formula) {
            return formula.toString().replace(",", ",\u00a0");
        }
    }

    /** A criterion in words: what is watched, how it is found out, and why it cannot be outweighed, if so. */
    public record Watched(String watch, String how, String critical) {}

    /** A measure taken on a piece, its limit and whose limit that is. */
    public record Limit(String name, String limit, String whose, String text) {}

    /** What each part of the page rests on. */
    public record Reasons(
            List<Known> cautions,
            List<Known> landmarks,
            List<Known> work,
            List<Known> watched,
            List<Known> limits,
            List<Known> assumptions) {}

    static StepPage of(Curriculum curriculum, Step step) {
        Breakdown all = curriculum.breakdown();
        List<Step> order = all.steps();
        int at = order.indexOf(step);
        List<Breakdown.Caution> alsoMind = there(step.alsoMind(), all::caution);
        List<Landmark> landmarks = there(step.landmark().uses(), curriculum::landmark);
        List<Breakdown.Assumption> assumptions = all.assumptions().stream()
                .filter(assumption -> assumption.steps().contains(step.id()))
                .toList();
        return new StepPage(
                step,
                sides(step),
                OnAnimal.of(curriculum),
                Prose.of(step.how()),
                Words.capital(
                        new BoneWords(curriculum.skeleton()).say(step.landmark().bones())),
                alsoMind,
                landmarks,
                there(step.tools(), all::tool),
                step.criteria().stream().map(StepPage::watched).toList(),
                curriculum.trimAt(step.id()).stream().map(StepPage::limit).toList(),
                assumptions,
                freed(curriculum, step),
                !all.linesCutAt(step).isEmpty(),
                there(step.needs(), all::step),
                reasons(curriculum, step, alsoMind, landmarks, assumptions),
                at > 0 ? order.get(at - 1) : null,
                at + 1 < order.size() ? order.get(at + 1) : null);
    }

    /** How often it is done, in words. */
    static String sides(Step step) {
        return step.eachSide() ? "left and right" : "once";
    }

    private static <T> List<T> there(List<String> ids, java.util.function.Function<String, Optional<T>> find) {
        return ids.stream().map(find).flatMap(Optional::stream).toList();
    }

    private static Watched watched(Step.Criterion criterion) {
        String how = switch (criterion.how()) {
            case "measure" -> "measured";
            case "ask" -> "asked";
            default -> "seen";
        };
        return new Watched(
                criterion.watch(),
                how,
                criterion.critical().map(Step.Critical::word).orElse(null));
    }

    private static Limit limit(TrimMeasure measure) {
        return new Limit(measure.name(), Limits.say(measure), measure.whose(), measure.text());
    }

    private static String freed(Curriculum curriculum, Step step) {
        List<String> names = Stream.concat(step.frees().stream(), step.leaves().stream())
                .map(id -> curriculum.cut(id).map(Cut::name).orElse(id))
                .map(name -> name.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + name.substring(1))
                .toList();
        return Words.list(names);
    }

    private static Reasons reasons(
            Curriculum curriculum,
            Step step,
            List<Breakdown.Caution> cautions,
            List<Landmark> landmarks,
            List<Breakdown.Assumption> assumptions) {
        return new Reasons(
                Known.of(curriculum, cautions.stream().flatMap(c -> c.restsOn().stream())),
                Known.of(curriculum, landmarks.stream().flatMap(l -> l.restsOn().stream())),
                Known.of(
                        curriculum,
                        Stream.concat(
                                step.restsOn().stream(),
                                step.questions().stream().flatMap(q -> q.restsOn().stream()))),
                Known.of(curriculum, step.criteria().stream().flatMap(c -> c.restsOn().stream())),
                Known.ofLimits(
                        curriculum,
                        curriculum.trimAt(step.id()).stream()
                                .flatMap(m -> m.grounds().stream())
                                .toList()),
                Known.of(curriculum, assumptions.stream().flatMap(a -> a.restsOn().stream())));
    }
}
