package ribmark.testing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.proof.ContentInUse;
import ribmark.scoring.Basis;
import ribmark.scoring.CuttingRule;
import ribmark.scoring.CuttingRule.CarcaseClass;
import ribmark.scoring.Ground;
import ribmark.scoring.OtherAnimal;
import ribmark.scoring.OtherAnimal.Grows;
import ribmark.scoring.PairTolerances;
import ribmark.scoring.PermissibleErrors;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Bounds;
import ribmark.scoring.ReferenceTable.GapLimits;
import ribmark.scoring.ReferenceTable.Hot;
import ribmark.scoring.ReferenceTable.KidneysOut;
import ribmark.scoring.ReferenceTable.Losses;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.scoring.Region;
import ribmark.scoring.Scale;
import ribmark.scoring.TrimMeasure;
import ribmark.slips.Model;
import ribmark.weighupfile.References;

/** The lamb tables again, typed by hand; another test holds them against the files. */
public final class Tables {

    public static final Scale BLOCK = new Scale("block", "Block", 5, 2.0);
    public static final Scale RAIL = new Scale("rail", "Rail", 20, 10.0);
    public static final TrimMeasure LOIN_FAT = measure("loin-fat-depth", "mm", 1.0, null, 5.0);
    public static final TrimMeasure CLEARANCE = measure("leg-line-clearance", "mm", 1.0, 0.0, 15.0);
    public static final TrimMeasure FORE_RIBS = measure("fore-rib-count", "count", 1.0, 6.0, 6.0);

    public static final TrimMeasure BEST_END_RIBS = measure("best-end-rib-count", "count", 1.0, 7.0, 7.0);

    public static final CarcaseClass MEDIUM = new CarcaseClass("medium", "fat class 3 or 3L", List.of("3", "3L"));

    public static final PermissibleErrors CLASS_III =
            new PermissibleErrors("III", List.of(step(500, 0.5), step(2000, 1), step(10_000, 1.5)), 2, 10, List.of());

    /** The model of slips and moved lines as it comes with the program; another test looks at its figures. */
    private static final class Shipped {
        static final Model MODEL =
                ContentInUse.read(Optional.empty()).curriculum().weighing().orElseThrow();
    }

    private Tables() {}

    public static References lamb() {
        return new References(
                "lamb",
                "7,13,6,4,3",
                List.of(wholesale(), primals(), joints()),
                List.of(LOIN_FAT, CLEARANCE, FORE_RIBS, BEST_END_RIBS),
                Optional.of(Shipped.MODEL),
                Optional.of(CLASS_III),
                Optional.empty());
    }

    public static ReferenceTable wholesale() {
        KidneysOut out = new KidneysOut(0.963, List.of("middle-kidneys-in"), false, "uk-primals");
        return table(
                "uk-wholesale",
                out,
                pair("fores", 36.3, 1.5, 0.02, Basis.JUDGEMENT),
                pair("middle-kidneys-in", 30.6, 1.68, 0.02, Basis.JUDGEMENT),
                pair("legs-chump-on", 33.1, 1.2, 0.02, Basis.JUDGEMENT));
    }

    public static ReferenceTable primals() {
        return table(
                "uk-primals",
                new KidneysOut(0.963, List.of("kidneys", "kidney-fat"), true, ""),
                pair("fores", 36.3, 1.5, 0.02, Basis.JUDGEMENT),
                pair("middle", 26.9, 1.5, 0.02, Basis.JUDGEMENT, "middle-kidneys-in"),
                pair("legs-chump-on", 33.1, 1.2, 0.02, Basis.JUDGEMENT),
                once("kidneys", 0.5, 0.1, Basis.JUDGEMENT, "middle-kidneys-in"),
                once("kidney-fat", 3.2, 0.75, Basis.DERIVED, "middle-kidneys-in"));
    }

    public static ReferenceTable joints() {
        String[] middle = {"middle", "middle-kidneys-in"};
        return table(
                "uk-joints",
                new KidneysOut(0.963, List.of("kidneys", "kidney-fat"), true, ""),
                once("scrag", 3.8, 0.9, Basis.DERIVED, "fores"),
                pair("shoulders", 32.5, 1.3, 0.02, Basis.JUDGEMENT, "fores"),
                pair("best-ends", 10.0, 0.55, 0.02, Basis.JUDGEMENT, middle),
                pair("loins", 10.0, 1.0, 0.02, Basis.DERIVED, middle),
                pair("breasts", 6.9, 0.7, 0.04, Basis.JUDGEMENT, middle),
                pair("chumps", 6.6, 1.0, 0.04, Basis.JUDGEMENT, "legs-chump-on"),
                pair("legs-chump-off", 26.5, 1.2, 0.02, Basis.JUDGEMENT, "legs-chump-on"),
                once("kidneys", 0.5, 0.1, Basis.JUDGEMENT, "middle-kidneys-in"),
                once("kidney-fat", 3.2, 0.75, Basis.DERIVED, "middle-kidneys-in"));
    }

    private static ReferenceTable table(String id, KidneysOut out, Row... rows) {
        return new ReferenceTable(
                id,
                id,
                "provisional",
                "",
                new Bounds(16, 24, List.of("2", "3", "3L", "3H"), 1.5),
                out,
                new Hot(0.97, 0.006),
                new GapLimits(1, 2),
                new Losses(0.20, 0.10, 0.36, 0.20),
                new OtherAnimal(1.5, 2, grows(rows)),
                new PairTolerances(tolerances(rows), "the college’s own", List.of()),
                new CuttingRule(5, 20, List.of(MEDIUM), List.of()),
                List.of(rows),
                List.of());
    }

    private static PermissibleErrors.Step step(double upTo, double error) {
        return new PermissibleErrors.Step(upTo, error);
    }

    private static Map<String, Double> tolerances(Row... rows) {
        return Stream.of(rows)
                .filter(Row::pair)
                .collect(Collectors.toMap(Row::cut, row -> row.pairSpread() > 0.03 ? 10.0 : 5.0));
    }

    private static List<Grows> grows(Row... rows) {
        String middle = rows[1].cut();
        boolean joints = rows.length > 5;
        Map<String, Double> rib = joints ? Map.of("best-ends", 1.37, "breasts", 0.60) : Map.of(middle, 1.97);
        Map<String, Double> vertebra = joints ? Map.of("loins", 2.0) : Map.of(middle, 2.0);
        return List.of(
                new Grows(Region.THORACIC, rib, grounds(Basis.JUDGEMENT)),
                new Grows(Region.LUMBAR, vertebra, grounds(Basis.DERIVED)));
    }

    private static Row pair(String cut, double expected, double sd, double r, Basis basis, String... of) {
        return new Row(cut, cut, true, r, "as parted", expected, sd, grounds(basis), List.of(of));
    }

    private static Row once(String cut, double expected, double sd, Basis basis, String... of) {
        return new Row(cut, cut, false, 0, "as parted", expected, sd, grounds(basis), List.of(of));
    }

    private static List<Ground> grounds(Basis basis) {
        return List.of(new Ground("a fact", "J", basis));
    }

    private static TrimMeasure measure(String id, String unit, double division, Double lowest, Double highest) {
        return new TrimMeasure(
                id,
                "a-step",
                id,
                unit,
                division,
                limit(lowest),
                limit(highest),
                1,
                "ours",
                "",
                0,
                follows(id),
                grounds(Basis.OWN));
    }

    private static Optional<Region> follows(String id) {
        return id.equals("best-end-rib-count") ? Optional.of(Region.THORACIC) : Optional.empty();
    }

    private static OptionalDouble limit(Double limit) {
        return limit == null ? OptionalDouble.empty() : OptionalDouble.of(limit);
    }
}
