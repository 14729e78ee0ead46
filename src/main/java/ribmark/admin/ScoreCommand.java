package ribmark.admin;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ribmark.basics.Refused;
import ribmark.weighup.WeighUpScore;
import ribmark.weighupfile.References;
import ribmark.weighupfile.ScoreJson;
import ribmark.weighupfile.WeighUpFile;

/** Scores a weigh-up written as a file, or many of them, one a line. */
@Command(name = "score", description = "Balances and scores a weigh-up file against its reference table.")
public final class ScoreCommand implements Callable<Integer> {

    private final Function<Optional<Path>, References> references;
    private final InputStream standardInput;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The weigh-up, UTF-8 JSON; - reads standard input.")
    private String file;

    @Option(names = "--explain", description = "Prints where each number comes from.")
    private boolean explain;

    @Option(names = "--lines", description = "One weigh-up a line, one answer a line; as for a file ending in .jsonl.")
    private boolean lines;

    @Mixin
    private FormatAndHelp asked;

    @Option(names = "--content", paramLabel = "DIR", description = "The college's own files, laid over ours.")
    private Path content;

    /** Takes the tables as they stand with or without a college's own folder laid over them. */
    public ScoreCommand(Function<Optional<Path>, References> references, InputStream standardInput) {
        this.references = references;
        this.standardInput = standardInput;
    }

    @Override
    public Integer call() {
        try {
            InputFile input = new InputFile(file, standardInput);
            References tables = references.apply(Optional.ofNullable(content));
            byte[] bytes = input.read();
            return lines || input.endsIn(".jsonl") ? many(bytes, tables) : one(bytes, tables);
        } catch (Refused refused) {
            return refusal().of(refused);
        }
    }

    private int one(byte[] bytes, References tables) {
        WeighUpFile read = WeighUpFile.read(bytes, tables);
        if (read.weighUp().isEmpty()) {
            return refusal().of(read.problems());
        }
        print(WeighUpScore.of(read.weighUp().get()), tables);
        return 0;
    }

    private int many(byte[] bytes, References tables) {
        int exit = 0;
        int number = 0;
        for (byte[] line : split(bytes)) {
            number++;
            if (new String(line, StandardCharsets.ISO_8859_1).isBlank()) {
                continue;
            }
            WeighUpFile read = WeighUpFile.read(line, tables);
            if (read.weighUp().isEmpty()) {
                exit = refusal().ofLine(number, read.problems());
            } else {
                print(WeighUpScore.of(read.weighUp().get()), tables);
            }
        }
        return exit;
    }

    private static List<byte[]> split(byte[] bytes) {
        List<byte[]> lines = new ArrayList<>();
        int start = 0;
        for (int at = 0; at <= bytes.length; at++) {
            if (at == bytes.length || bytes[at] == '\n') {
                lines.add(Arrays.copyOfRange(bytes, start, at));
                start = at + 1;
            }
        }
        return lines;
    }

    private void print(WeighUpScore score, References tables) {
        var out = spec.commandLine().getOut();
        if (asked.format() == OutputFormat.JSON) {
            out.println(ScoreJson.of(score, score.finding(tables.weighing()), score.costing(tables.prices())));
        } else {
            ScoreText.lines(score, tables, explain).forEach(out::println);
        }
        out.flush();
    }

    private Refusal refusal() {
        return new Refusal(spec.commandLine(), asked.format());
    }
}
