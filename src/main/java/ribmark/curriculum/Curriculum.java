package ribmark.curriculum;

import java.util.List;
import java.util.Optional;
import ribmark.anatomy.Formula;
import ribmark.anatomy.Skeleton;
import ribmark.competence.EvidenceRule;
import ribmark.scoring.PermissibleErrors;
import ribmark.scoring.Prices;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.Scale;
import ribmark.scoring.TrimMeasure;
import ribmark.slips.Model;

/**
 * Everything that is taught and judged for one kind of carcase, proven before it is used; the version is a digest of all
 * the files it was read from. Without a weighing model neither slips nor moved lines are looked for.
 */
public record Curriculum(
        String version,
        Breakdown breakdown,
        Skeleton skeleton,
        List<MapRow> map,
        List<Cut> cuts,
        List<Landmark> landmarks,
        List<Term> terms,
        List<ReferenceTable> tables,
        List<TrimMeasure> trim,
        Optional<Model> weighing,
        Optional<Prices> prices,
        EvidenceRule rule,
        List<RestsOn> ruleRestsOn,
        List<Scale> scales,
        Optional<PermissibleErrors> permissible,
        List<MarkWord> marks,
        List<Source> sources,
        Animals animals) {

    /** Reads the same content for an animal with other numbers of vertebrae; refuses one the breakdown does not hold on. */
    @FunctionalInterface
    public interface Animals {

        /** The content for this animal. */
        Curriculum on(Formula formula);
    }

    /**
     * The same content for an animal with these numbers of vertebrae: bones, lines, pieces and limits are those of that animal.
     * Refuses, in one sentence, an animal that cannot be or that the breakdown does not hold on.
     */
    public Curriculum on(Formula formula) {
        return formula.equals(skeleton.formula()) ? this : animals.on(formula);
    }

    /** Whether the bones are those of the animal the breakdown is written for. */
    public boolean isUsual() {
        return skeleton.formula().equals(breakdown.formula());
    }

    /** The same content judged by other tables. */
    public Curriculum judgedBy(List<ReferenceTable> others) {
        return new Curriculum(
                version,
                breakdown,
                skeleton,
                map,
                cuts,
                landmarks,
                terms,
                others,
                trim,
                weighing,
                prices,
                rule,
                ruleRestsOn,
                scales,
                permissible,
                marks,
                sources,
                animals);
    }

    /** The cut with this id, if there is one. */
    public Optional<Cut> cut(String id) {
        return cuts.stream().filter(cut -> cut.id().equals(id)).findFirst();
    }

    /** The landmark with this id, if there is one. */
    public Optional<Landmark> landmark(String id) {
        return landmarks.stream().filter(landmark -> landmark.id().equals(id)).findFirst();
    }

    /** The reference table with this id, if there is one. */
    public Optional<ReferenceTable> table(String id) {
        return tables.stream().filter(table -> table.id().equals(id)).findFirst();
    }

    /** The trim measures taken after a step. */
    public List<TrimMeasure> trimAt(String step) {
        return trim.stream().filter(measure -> measure.step().equals(step)).toList();
    }

    /** The scale with this id, if there is one. */
    public Optional<Scale> scale(String id) {
        return scales.stream().filter(scale -> scale.id().equals(id)).findFirst();
    }

    /** The source with this key, if there is one. */
    public Optional<Source> source(String key) {
        return sources.stream().filter(source -> source.key().equals(key)).findFirst();
    }

    /** The step that frees or leaves this cut; the first of several. */
    public Optional<Step> stepThatFrees(String cut) {
        return breakdown.steps().stream()
                .filter(step -> step.frees().contains(cut) || step.leaves().contains(cut))
                .findFirst();
    }
}
