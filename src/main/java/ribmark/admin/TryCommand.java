package ribmark.admin;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ribmark.basics.FileProblem;
import ribmark.basics.Refused;
import ribmark.contentfiles.ContentFiles;
import ribmark.moved.Outcome;

/** Tries operations on a skeleton and prints the pieces that come free: the answer to “what if I cut here?”. */
@Command(
        name = "try",
        description =
                "Does operations on a skeleton, in order, and prints the pieces that come free, the largest first.")
public final class TryCommand implements Callable<Integer> {

    private final InputStream standardInput;

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "FILE",
            description =
                    "UTF-8 JSON with skeleton, formula and operations, or with formula and moved (breakdown, line, towards,"
                            + " by, side) for a line that ran elsewhere; - reads standard input.")
    private String file;

    @Mixin
    private FormatAndHelp asked;

    @Option(names = "--content", paramLabel = "DIR", description = "The college's own files, laid over ours.")
    private Path content;

    /** Reads standard input where the file is called {@code -}. */
    public TryCommand(InputStream standardInput) {
        this.standardInput = standardInput;
    }

    @Override
    public Integer call() {
        Refusal refusal = new Refusal(spec.commandLine(), asked.format());
        try {
            TryFile asked = TryFile.read(new InputFile(file, standardInput).read());
            if (!asked.problems().isEmpty()) {
                return refusal.of(asked.problems());
            }
            Trial trial = Trial.of(asked, files());
            return trial.problem().map(problem -> refusal.of(List.of(problem))).orElseGet(() -> print(trial));
        } catch (Refused refused) {
            return refusal.of(List.of(new FileProblem("", refused.getMessage(), "")));
        }
    }

    private ContentFiles files() {
        return content == null ? ContentFiles.ours() : ContentFiles.ours().under(ContentFiles.in(content));
    }

    private int print(Trial trial) {
        PrintWriter out = spec.commandLine().getOut();
        if (asked.format() == OutputFormat.JSON) {
            ObjectNode root = JsonNodeFactory.instance.objectNode();
            ArrayNode list = root.putArray("pieces");
            trial.pieces().forEach(piece -> piece.names().forEach(list.addArray()::add));
            trial.moved().ifPresent(outcome -> add(root.putObject("moved"), outcome));
            out.println(root);
        } else {
            trial.pieces().forEach(piece -> out.println(piece.size() + "  " + String.join(" ", piece.names())));
            trial.moved().ifPresent(outcome -> {
                out.println(outcome.way().says() + ".");
                outcome.sentences().forEach(out::println);
            });
        }
        out.flush();
        return 0;
    }

    private static void add(ObjectNode moved, Outcome outcome) {
        moved.put("says", outcome.way().says());
        ArrayNode sentences = moved.putArray("sentences");
        outcome.sentences().forEach(sentences::add);
        ArrayNode bones = moved.putArray("bones");
        outcome.rows()
                .forEach(row -> bones.addObject()
                        .put("bone", row.part())
                        .put("shouldBeIn", row.shouldBeIn())
                        .put("isIn", row.isIn()));
    }
}
