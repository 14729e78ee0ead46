package ribmark.admin;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import ribmark.basics.Refused;
import ribmark.competence.Agreement;
import ribmark.competence.Agreement.Level;

/** Says how far assessors agree who judged the same things. */
@Command(
        name = "agree",
        description = "Agreement between assessors, from a CSV file with the columns item,assessor,rating.")
public final class AgreeCommand implements Callable<Integer> {

    private final InputStream standardInput;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The ratings, UTF-8 CSV; - reads standard input.")
    private String file;

    @Option(
            names = "--level",
            required = true,
            paramLabel = "nominal|ordinal|interval",
            converter = LevelReader.class,
            description = "Names, steps in an order (numbers or our marks), or measurements.")
    private Level level;

    @Mixin
    private FormatAndHelp asked;

    @Option(
            names = "--content",
            paramLabel = "DIR",
            description = "Taken as by every command; agreement reads ratings only.")
    private Path content;

    /** Takes what {@code -} reads. */
    public AgreeCommand(InputStream standardInput) {
        this.standardInput = standardInput;
    }

    @Override
    public Integer call() {
        Refusal refusal = new Refusal(spec.commandLine(), asked.format());
        try {
            RatingFile read = RatingFile.read(new InputFile(file, standardInput).read(), level);
            if (!read.problems().isEmpty()) {
                return refusal.of(read.problems());
            }
            print(Agreement.of(read.ratings(), level));
            return 0;
        } catch (Refused refused) {
            return refusal.of(refused);
        }
    }

    private void print(Agreement agreement) {
        var out = spec.commandLine().getOut();
        if (asked.format() == OutputFormat.JSON) {
            out.println(json(agreement));
        } else {
            out.println(many(agreement.items(), "thing") + ", " + many(agreement.assessors(), "assessor") + ", "
                    + many(agreement.ratings(), "rating") + ".");
            line("Percent agreement", agreement.percentAgreement(), "%.1f %%");
            line("Cohen's kappa", agreement.cohenKappa(), "%.3f");
            agreement.notComputable().forEach((name, reason) -> out.println(name + ": not worked out. " + reason));
        }
        out.flush();
    }

    private static String many(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    private void line(String name, OptionalDouble number, String pattern) {
        number.ifPresent(
                n -> spec.commandLine().getOut().println(name + ": " + String.format(Locale.ROOT, pattern, n)));
    }

    private static ObjectNode json(Agreement agreement) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("items", agreement.items());
        json.put("assessors", agreement.assessors());
        json.put("ratings", agreement.ratings());
        json.put("percentAgreement", boxed(agreement.percentAgreement()));
        json.put("cohenKappa", boxed(agreement.cohenKappa()));
        Agreement.NOT_WORKED_OUT.forEach(json::putNull);
        ObjectNode reasons = json.putObject("notComputable");
        agreement.notComputable().forEach(reasons::put);
        return json;
    }

    private static Double boxed(OptionalDouble number) {
        return number.isPresent() ? number.getAsDouble() : null;
    }

    /** Reads the word behind {@code --level}. */
    static final class LevelReader implements ITypeConverter<Level> {

        @Override
        public Level convert(String word) {
            for (Level level : Level.values()) {
                if (level.name().toLowerCase(Locale.ROOT).equals(word)) {
                    return level;
                }
            }
            throw new TypeConversionException("“" + word + "” is not a level. Write nominal, ordinal or interval.");
        }
    }
}
