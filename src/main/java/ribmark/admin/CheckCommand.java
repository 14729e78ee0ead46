package ribmark.admin;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import ribmark.anatomy.Formula;
import ribmark.basics.Refused;
import ribmark.contentfiles.ContentFiles;
import ribmark.proof.Check;
import ribmark.proof.CheckJson;
import ribmark.proof.CheckText;

/** Proves content and assessments, and prints what it proved or every problem. */
@Command(
        name = "check",
        description =
                "Proves the curriculum: every file, every reference, every cut on the skeleton, every table. Exit 1 when"
                        + " something is wrong.")
public final class CheckCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "DIR",
            arity = "0..1",
            description =
                    "A folder that holds content/ and assessments/. Default: the files that come with the program.")
    private Path folder;

    @Option(
            names = "--formula",
            paramLabel = "C,T,L,S,Cd",
            converter = FormulaReader.class,
            description = "Proves the breakdown on an animal with these numbers of vertebrae, head to tail.")
    private Formula formula;

    @Option(names = "--explain", paramLabel = "CODE", description = "Explains one code of the check, with an example.")
    private String code;

    @Mixin
    private FormatAndHelp asked;

    @Option(names = "--content", paramLabel = "DIR", description = "The college's own files, laid over the others.")
    private Path content;

    @Override
    public Integer call() {
        try {
            return code == null ? check() : explain();
        } catch (Refused refused) {
            return new Refusal(spec.commandLine(), asked.format()).of(refused);
        }
    }

    private int check() {
        ContentFiles base = folder == null ? ContentFiles.ours() : ContentFiles.in(folder);
        ContentFiles files = content == null ? base : base.under(ContentFiles.in(content));
        Check check = Check.of(files, Optional.ofNullable(formula));
        print(asked.format() == OutputFormat.JSON ? CheckJson.of(check).toString() + "\n" : CheckText.of(check));
        return check.ok() ? 0 : Refusal.REFUSED;
    }

    private int explain() {
        print(CheckText.explain(code.toUpperCase(Locale.ROOT))
                .orElseThrow(() -> new Refused(
                        "There is no code " + code + ". Codes look like C034 and stand at the right of a message.")));
        return 0;
    }

    private void print(String text) {
        spec.commandLine().getOut().print(text);
        spec.commandLine().getOut().flush();
    }

    /** Reads the numbers behind {@code --formula}. */
    static final class FormulaReader implements ITypeConverter<Formula> {

        @Override
        public Formula convert(String written) {
            try {
                return Formula.parse(written);
            } catch (Refused refused) {
                throw new TypeConversionException(refused.getMessage());
            }
        }
    }
}
