package ribmark.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import ribmark.basics.Words;
import ribmark.contentfiles.Codes;
import ribmark.contentfiles.ContentProblem;
import ribmark.contentfiles.ContentProblem.Place;
import ribmark.curriculum.Curriculum;

/** The check as a person reads it, in lines of at most 80 signs. */
public final class CheckText {

    private static final int WIDTH = 80;
    private static final String INDENT = "      ";

    /** Ours: more than this at once nobody reads; the rest is counted. */
    private static final int MOST = 50;

    private CheckText() {}

    /** What was proven in a few lines, or every problem. */
    public static String of(Check check) {
        return check.ok() ? proven(check) : problems(check.problems());
    }

    /** What a code means, with a bad example and a good one, or nothing when there is no such code. */
    public static java.util.Optional<String> explain(String code) {
        return Codes.all().stream()
                .filter(c -> c.code().equals(code))
                .findFirst()
                .map(CheckText::explained);
    }

    private static String explained(Codes.Code code) {
        return code.code() + "  " + code.about() + "\n\n"
                + wrap(code.more(), "") + "\n"
                + wrap("At the block: " + code.why(), "") + "\n\n"
                + "Not so, in " + code.example().file() + ":\n"
                + indented(code.example().bad()) + "\n\n"
                + "But so:\n" + indented(code.example().good()) + "\n";
    }

    private static String indented(String lines) {
        return lines.lines().map(line -> INDENT + line).collect(Collectors.joining("\n"));
    }

    private static String proven(Check check) {
        List<String> lines = new ArrayList<>();
        check.proofs().forEach(proof -> lines.addAll(proven(proof)));
        check.curricula().forEach(curriculum -> lines.addAll(counted(curriculum)));
        lines.add("Version " + check.version());
        return String.join("\n", lines) + "\n";
    }

    private static List<String> proven(Proof proof) {
        String without = proof.piecesWithout().entrySet().stream()
                .map(entry -> ", " + entry.getValue() + " with " + entry.getKey() + " left out")
                .collect(Collectors.joining());
        String others = proof.alsoOn().isEmpty()
                ? "It was proven on this animal alone."
                : "It holds on "
                        + Words.count(
                                proof.alsoOn().size(),
                                "other animal that breakdown.yaml names.",
                                "other animals that breakdown.yaml names.");
        return List.of(
                wrap(
                        Words.capital(proof.breakdown()) + ": " + proof.steps() + " steps in "
                                + Words.count(proof.stages(), "stage", "stages") + ", proven on " + proof.bones()
                                + " bones, " + proof.joints() + " joints (" + proof.formula() + ").",
                        ""),
                wrap("Each step frees what it says" + orders(proof) + ".", ""),
                wrap("Every bone ends in exactly one of " + proof.pieces().size() + " pieces" + without + ".", ""),
                others);
    }

    private static String orders(Proof proof) {
        return proof.orders()
                .map(held -> String.format(
                        Locale.ROOT,
                        held.all()
                                ? " in each of the %,d orders its needs allow"
                                : " in %,d of the orders its needs allow",
                        held.many()))
                .orElse(", in its turn");
    }

    private static List<String> counted(Curriculum curriculum) {
        return List.of(wrap(
                Words.capital(Words.count(curriculum.tables().size(), "table adds", "tables add")) + " up to 100 %, "
                        + Words.count(curriculum.trim().size(), "trim limit", "trim limits") + " and "
                        + Words.count(curriculum.sources().size(), "source", "sources") + " are in order.",
                ""));
    }

    private static String problems(List<ContentProblem> problems) {
        String told = problems.stream().limit(MOST).map(CheckText::told).collect(Collectors.joining("\n"));
        String count = Words.capital(Words.count(problems.size(), "problem", "problems")) + ".";
        String more = problems.size() > MOST ? " The first " + MOST + " are shown." : "";
        return told + "\n" + count + more + "\n";
    }

    private static String told(ContentProblem problem) {
        StringBuilder lines = new StringBuilder(head(problem)).append('\n');
        lines.append(wrap(problem.headline(), "")).append('\n');
        if (!problem.at().shown().isBlank()) {
            lines.append(shown(problem.at()));
        }
        problem.also()
                .forEach(also -> lines.append(wrap(also.what() + " " + place(also.at()) + ".", ""))
                        .append('\n'));
        lines.append(wrap("At the block: " + problem.why(), "")).append('\n');
        return lines.append(wrap("Do: " + problem.help(), "    ")).append('\n').toString();
    }

    private static String head(ContentProblem problem) {
        String where = problem.file() + ", line " + problem.line() + ", column " + problem.column();
        return where
                + " ".repeat(Math.max(2, WIDTH - where.length() - problem.code().length()))
                + problem.code();
    }

    private static String place(Place at) {
        return at.file() + ", line " + at.line();
    }

    /** The line with a wave under the stretch meant; a long line is shown from a little before it. */
    private static String shown(Place at) {
        String line = at.shown().replaceAll("\\p{Cntrl}", " ");
        int room = WIDTH - INDENT.length();
        int begins = line.length() - line.stripLeading().length();
        boolean near =
                at.column() - 1 - begins < room / 2 || line.stripTrailing().length() - begins <= room;
        int from = near ? begins : at.column() - 1 - room / 3;
        String cut = line.substring(Math.min(from, line.length()), Math.min(line.length(), from + room))
                .stripTrailing();
        int wave = Math.max(0, at.column() - 1 - from);
        int length = Math.max(1, Math.min(at.length(), cut.length() - wave));
        return INDENT + cut + "\n" + INDENT + " ".repeat(wave) + "~".repeat(length) + "\n";
    }

    private static String wrap(String text, String indent) {
        StringBuilder lines = new StringBuilder();
        int column = 0;
        for (String word : text.strip().split("\\s+")) {
            if (column > 0 && column + 1 + word.length() > WIDTH) {
                lines.append('\n').append(indent);
                column = indent.length();
            } else if (column > 0) {
                lines.append(' ');
                column++;
            }
            lines.append(word);
            column += word.length();
        }
        return lines.toString();
    }
}
