package ribmark.proof;

import java.util.List;

/** Faults to be seeded one at a time into the small college. */
final class Seeds {

    private static final String FRONT = "content/kid/front.yaml";
    private static final String BACK = "content/kid/back.yaml";
    private static final String KID = "content/kid/breakdown.yaml";
    private static final String LINES = "content/kid/lines.yaml";
    private static final String CUTS = "content/goat/cuts.yaml";
    private static final String MARKS = "content/goat/landmarks.yaml";
    private static final String MAP = "content/goat/bone-map.csv";
    private static final String TABLE = "assessments/kid/references/small.yaml";
    private static final String TRIM = "assessments/kid/trim.yaml";
    private static final String RULE = "assessments/kid/evidence.yaml";
    private static final String MODEL = "assessments/kid/weighing-model.yaml";
    private static final String ASKED = "assessments/kid/questions.yaml";

    /** What stands in a file, what is put in its place, and after the sign « the spot the check must point at. */
    record Seed(String code, String file, String good, String bad) {

        Check check() {
            return SmallCollege.sound().with(file, good, bad.replace("«", "")).check();
        }
    }

    static final List<Seed> ALL = List.of(
            new Seed("C002", KID, "dressing: Head and feet off.", "dressing: Head off«: feet off."),
            new Seed("C002", "content/sources.yaml", "title: Common practice", "title: «\"Common practice"),
            new Seed("C002", KID, "title: Kid", "«title Kid"),
            new Seed("C002", KID, "stages: [front, back]", "stages: «[front, back"),
            new Seed("C002", FRONT, "title: Front", "title: «@Front"),
            new Seed("C002", FRONT, "what-for: The front comes off.", "what-for: The front comes off.\n   extra«: 1"),
            new Seed("C003", KID, "assumptions:\n", "assumptions:\n«\t"),
            new Seed("C004", KID, "title: Kid\n", "title: Kid\n«title: Goat\n"),
            new Seed("C004", FRONT, "    hands: One", "    hands: Two\n    «hands: One"),
            new Seed("C005", KID, "title: Kid", "title: «&name Kid"),
            new Seed("C005", KID, "title: Kid", "title: «!text Kid"),
            new Seed("C006", RULE, "rule:", "a: 1\n«---\nrule:"),
            new Seed("C008", KID, "stages: [front, back]", "stages: [front, back, «close]"),
            new Seed("C008", KID, "skeleton: goat", "skeleton: «sheep"),
            new Seed("C010", KID, "title: Kid", "title: Kid\n«colour: brown"),
            new Seed("C010", FRONT, "good: [It is done.]", "good: [It is done.]\n    «goods: []"),
            new Seed("C010", TABLE, "moment: as parted, expected: 40.5", "moment: as parted, «mean: 1, expected: 40.5"),
            new Seed("C011", KID, "{id: knife, name: Knife, ", "«{id: knife, "),
            new Seed("C011", BACK, "    tools: [saw]\n", ""),
            new Seed("C012", RULE, "sheets: 3", "sheets: «three"),
            new Seed("C012", RULE, "sheets: 3", "sheets: «2.5"),
            new Seed("C012", KID, "version: \"1\"", "version: «1"),
            new Seed("C012", BACK, "optional: true", "optional: «yes"),
            new Seed("C012", TRIM, "highest: 5.0", "highest: «5 mm"),
            new Seed("C012", KID, "stages: [front, back]", "stages: «front, back"),
            new Seed("C013", CUTS, "becomes: saleable", "becomes: «sold"),
            new Seed("C013", BACK, "sides: each", "sides: «both"),
            new Seed("C013", FRONT, "critical: safety", "critical: «safty"),
            new Seed("C013", TRIM, "unit: mm", "unit: «cm"),
            new Seed("C013", BACK, "plane: across", "plane: «acros"),
            new Seed("C014", KID, "heading: Edge to the bone", "heading: «Edge to the bone, point away, never turned"),
            new Seed("C014", FRONT, "id: front-off", "id: «Front_off"),
            new Seed("C014", FRONT, "good: [It is done.]", "good: «[]"),
            new Seed(
                    "C014",
                    FRONT,
                    "rests-on: [{fact: \"invented for the tests\", source: OWN, basis: own}]",
                    "rests-on: «[]"),
            new Seed("C014", RULE, "within-days: 180", "within-days: «0"),
            new Seed("C014", RULE, "since: \"2026-09-01\"", "since: «\"2026-13-01\""),
            new Seed("C014", BACK, "- sever: [PS]", "- «sever: [PS]\n        lift: [L1]"),
            new Seed("C020", MARKS, "id: hip", "id: «front-line"),
            new Seed("C020", FRONT, "id: crooked", "id: «slipped"),
            new Seed("C021", BACK, "needs: [front-off]", "needs: [«front-of]"),
            new Seed("C021", BACK, "frees: [leg]", "frees: [«legs]"),
            new Seed("C021", ASKED, "step: clean", "step: «cleaning"),
            new Seed("C021", TRIM, "step: legs-off", "step: «leg-off"),
            new Seed(
                    "C022",
                    "content/goat/joints.csv",
                    "PS,Seam,joint,ILIL,ILIR,OWN,far,far",
                    "PS,Seam,joint,ILIL,«ILIX,OWN,far,far"),
            new Seed(
                    "C022",
                    "content/goat/skeleton.csv",
                    "L1,L1 of an invented animal,,M",
                    "«L1,L1 of an invented animal,M"),
            new Seed("C023", CUTS, "[C1..C(last), T1, ", "[C1..C(last), «T9, "),
            new Seed("C023", MARKS, "joints: [\"IS-1(s)\"]", "joints: [«\"IS-7(s)\"]"),
            new Seed("C023", FRONT, "bones: [\"R1(s)\"]", "bones: [«\"R1(t)\"]"),
            new Seed("C023", BACK, "sever: [PS]", "sever: [«L1]"),
            new Seed("C024", FRONT, "id: front\n", "id: «forward\n"),
            new Seed("C024", TABLE, "id: small", "id: «smaller"),
            new Seed("C025", FRONT, "tools: [knife]", "tools: [«knive]"),
            new Seed("C025", FRONT, "source: OWN", "source: «ONW"),
            new Seed("C025", BACK, "uses: [hip]", "uses: [«hop]"),
            new Seed("C025", CUTS, "rows: [legs]", "rows: [legs, «leggs]"),
            new Seed("C026", BACK, "bones: [\"ILI(s)\", \"FEM(s)\"]", "bones: [\"ILI(s)\", «\"R3(s)\"]"),
            new Seed("C026", MARKS, "joints: [\"HIP-(s)\"]", "joints: [«\"SI-(s)\"]"),
            new Seed(
                    "C027",
                    KID,
                    "  - {id: saw, name: Saw, text: For bone.}",
                    "  - {id: saw, name: Saw, text: For bone.}\n  - {id: «axe, name: Axe, text: For nothing.}"),
            new Seed(
                    "C028",
                    CUTS,
                    "bones: [T2..T(last), L1..L(last), S1..S(last), Cd1..Cd(last), \"R2(s)..R(last)(s)\"]",
                    "bones: [«T2..T3, L1..L(last), S1..S(last), Cd1..Cd(last), \"R2(s)..R(last)(s)\"]"),
            new Seed("C021", LINES, "steps: [front-off]", "steps: [«front-of]"),
            new Seed("C023", LINES, "sever: [IV-C(last)-T1]", "sever: [«IV-C2-T2]"),
            new Seed("C029", LINES, "go-over: [T1, \"R1(s)\"]", "go-over: [T1, \"R1(s)\", «C2]"),
            new Seed("C029", LINES, "go-over: [T1, \"R1(s)\"]", "go-over: «[\"R1(s)\"]"),
            new Seed(
                    "C029",
                    LINES,
                    "operations:\n            - sever: [IV-C(last)-T1]",
                    "«operations:\n            - sever: [IV-C(last)-T1, IV-C1-C2]"),
            new Seed(
                    "C029",
                    LINES,
                    "sever: [IV-C(last)-T1]",
                    "sever: [IV-C(last)-T1]\n            - sever: [«IV-C(last)-T1]"),
            new Seed("C029", LINES, "sever: [IV-C(last)-T1]", "sever: [«IV-C(last)-T1, \"IS-1(s)\"]"),
            new Seed("C029", LINES, "steps: [front-off]", "steps: «[mark, legs-off]"),
            new Seed("C029", LINES, "towards: head", "towards: «front"),
            new Seed("C030", FRONT, "needs: []", "needs: [«front-off]"),
            new Seed("C030", FRONT, "needs: [look]", "needs: [look, «clean]"),
            new Seed("C031", BACK, "needs: [legs-off]", "needs: [legs-off, «clean]"),
            new Seed("C032", BACK, "- sever: [PS]", "- sever: [PS]\n      - sever: [«PS]"),
            new Seed("C032", BACK, "saw: [\"FEM(s)\"]", "saw: [«\"FEM(s).far\"]"),
            new Seed("C033", FRONT, "frees: [front]\n    leaves: [back]", "«frees: [front]\n    leaves: []"),
            new Seed("C034", CUTS, "bones: [C1..C(last), T1, \"R1(s)\"]", "bones: [C1..C(last), T1]"),
            new Seed(
                    "C035",
                    CUTS,
                    "becomes: saleable\n    bones: [\"FEM(s).far\"]",
                    "becomes: «parted\n    bones: [\"FEM(s).far\"]"),
            new Seed(
                    "C036",
                    CUTS,
                    "cuts:\n",
                    "cuts:\n  - {id: «rack, name: Rack, comes: once, becomes: saleable, bones: [L1], rows: [], text: Ribs.,"
                            + " rests-on: [{fact: none, source: OWN, basis: own}]}\n"),
            new Seed("C037", KID, "formula: \"2,3,2,1,1\"", "formula: «\"2,3,2,1,90\""),
            new Seed(
                    "C038",
                    BACK,
                    "needs: [legs-off]\n    landmark:\n      heading: At the line\n      text: Feel for it first.\n      uses: [front-line]",
                    "needs: [«shank]\n    landmark:\n      heading: At the line\n      text: Feel for it first.\n      uses: [front-line]"),
            new Seed("C039", BACK, "needs: [legs-off]", "needs: []"),
            new Seed("C040", TABLE, "expected: 40.5", "expected: 45.0"),
            new Seed("C041", TRIM, "highest: 5.0", "highest: «0.2"),
            new Seed("C041", TABLE, "highest-kg: 9", "highest-kg: «4"),
            new Seed("C044", TABLE, "expected: 40.5, sd: 1.5", "expected: 40.5, sd: «2.5"),
            new Seed("C045", MODEL, "points: [{row: fronts, points: -2}", "points: «[{row: fronts, points: -2.5}"),
            new Seed("C025", MODEL, "row: saddles", "row: «sadles"),
            new Seed("C042", TABLE, "pair: true, pair-spread: 0.02", "pair: true, pair-spread: «0"),
            new Seed(
                    "C046",
                    FRONT,
                    "sides: once\n    optional: false\n    needs: [mark]",
                    "sides: «each\n    optional: false\n    needs: [mark]"),
            new Seed("C047", BACK, "frees: [shank]\n    leaves: [leg]", "frees: [«leg]\n    leaves: [shank]"),
            new Seed(
                    "C026",
                    BACK,
                    "uses: [hip]\n      bones: [\"FEM(s)\"]",
                    "uses: [hip, front-line]\n      bones: [\"FEM(s)\", «\"R1(s)\"]"),
            new Seed("C046", TABLE, "pair: true, pair-spread: 0.02", "pair: false, pair-spread: 0"),
            new Seed("C048", CUTS, "[T2..T(last), L1..L(last), Cd1", "[T2..T(last), «L1, Cd1"),
            new Seed(
                    "C048",
                    CUTS,
                    "bones: [\"ILI(s)\", \"FEM(s).near\"], read-in",
                    "bones: [\"ILI(s)\", «\"FEM(s)\"], read-in"),
            new Seed("C048", CUTS, "number: \"12\"", "number: «\"12\", differs: [L1]"),
            new Seed(
                    "C048",
                    CUTS,
                    "number: \"14\"\n        note: There the sacrum goes with the legs.",
                    "number: «\"14\""),
            new Seed("C023", CUTS, "differs: [S1]", "differs: [«S7]"),
            new Seed("C025", CUTS, "read-in: BOOK", "read-in: «BOK"),
            new Seed("C050", ASKED, "step: mark", "step: look"),
            new Seed("C051", CUTS, "source: BOOK, basis: published", "source: CP, basis: «published"),
            new Seed("C025", MAP, "lateral,line,hip,hip", "lateral,line,hip,«hop"),
            new Seed("C060", MAP, "dorsal,bone,FEMR,FEMR", "dorsal,hidden,FEMR,FEMR"),
            new Seed("C061", MAP, "dorsal,bone,FEMR,FEMR", "dorsal,bone,«FEMX,FEMR"),
            new Seed("C061", MAP, "lateral,shift,T,T3", "lateral,shift,T,«T8"),
            new Seed("C062", MAP, "lateral,bone,T1,T1", "lateral,«bon,T1,T1"),
            new Seed("C062", MAP, "\"100,100 140,100", "\"«100,100 140;100"),
            new Seed("C062", MAP, "dorsal,bone,FEMR,FEMR", "dorsal,bone,«FEML,FEMR"),
            new Seed("C062", MAP, "lateral,with,leg,S1", "lateral,with,leg,«hind"));

    private Seeds() {}
}
