package ribmark.weighing;

import java.util.ArrayList;
import java.util.List;
import ribmark.basics.Side;
import ribmark.blocksheet.BlockSheet;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.scoring.TrimMeasure;
import ribmark.scoring.Vertebrae;
import ribmark.weighup.Numbers;
import ribmark.weighup.Reasons;
import ribmark.weighup.TrimReading;

/** The trim measures of one step on one sheet: a field for each side, and the verdict on what was typed. */
public record TrimView(Step step, List<Measured> measures, List<PageLine> lines) {

    /** One measure with a field for each side. */
    public record Measured(String name, String hint, List<Field> fields) {}

    /** One thing to measure on one side. */
    public record Field(TrimMeasure measure, Side side) {

        /** The name of the field. */
        public String id() {
            return TrimView.id(measure.id(), side);
        }

        /** What it is called on the page. */
        public String label() {
            return side == Side.ONCE ? measure.name() : measure.name() + ", " + side.word();
        }

        /** The unit beside the box, where it has one. */
        public String unit() {
            return measure.unit().equals("mm") ? "mm" : null;
        }
    }

    static String id(String measure, Side side) {
        return "trim-" + measure + "-" + side.word();
    }

    static List<Field> fields(BlockSheet sheet, Curriculum curriculum) {
        Vertebrae vertebrae = Reckoning.vertebrae(curriculum, sheet.carcase());
        List<Field> fields = new ArrayList<>();
        for (Step step : curriculum.breakdown().steps()) {
            curriculum
                    .trimAt(step.id())
                    .forEach(measure -> sheet.sidesOf(step.id())
                            .forEach(side -> fields.add(new Field(measure.on(vertebrae), side))));
        }
        return fields;
    }

    static List<TrimView> steps(BlockSheet sheet, Curriculum curriculum, List<TrimReading> readings) {
        List<Field> all = fields(sheet, curriculum);
        Saying saying = new Saying(curriculum);
        List<TrimView> steps = new ArrayList<>();
        for (Step step : curriculum.breakdown().steps()) {
            List<Field> fields = all.stream()
                    .filter(f -> f.measure().step().equals(step.id()))
                    .toList();
            List<PageLine> lines = fields.stream()
                    .flatMap(field -> readings.stream()
                            .filter(r -> r.measure().id().equals(field.measure().id()) && r.side() == field.side()))
                    .map(saying::trim)
                    .toList();
            if (!fields.isEmpty()) {
                steps.add(new TrimView(step, measures(fields), lines));
            }
        }
        return steps;
    }

    private static List<Measured> measures(List<Field> fields) {
        return fields.stream()
                .map(Field::measure)
                .distinct()
                .map(measure -> new Measured(
                        measure.name(),
                        hint(measure),
                        fields.stream().filter(f -> f.measure().equals(measure)).toList()))
                .toList();
    }

    /** How it is measured, its limit, and whose limit that is. */
    private static String hint(TrimMeasure measure) {
        String unit = measure.unit().equals("mm") ? "\u00a0mm" : "";
        String read = measure.isCount() ? "Counted" : "Read to " + Numbers.plain(measure.division()) + unit;
        return measure.text() + " " + read + ". Limit: " + Reasons.limits(measure) + ", " + measure.whose() + ".";
    }
}
