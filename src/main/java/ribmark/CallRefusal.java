package ribmark;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;
import ribmark.admin.OutputFormat;
import ribmark.admin.Refusal;
import ribmark.basics.Refused;

/** How the shell is told no: one sentence, exit 1 for what was refused, exit 2 for a call that made no sense. */
final class CallRefusal implements IParameterExceptionHandler, IExecutionExceptionHandler {

    private static final Logger LOG = LoggerFactory.getLogger(CallRefusal.class);

    @Override
    public int handleParseException(ParameterException misread, String[] args) {
        CommandLine command = misread.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(sentence(misread));
        if (command.getParent() == null) {
            command.usage(err);
        } else {
            err.println("See: " + command.getCommandSpec().qualifiedName() + " --help");
        }
        err.flush();
        return command.getCommandSpec().exitCodeOnInvalidInput();
    }

    private static String sentence(ParameterException misread) {
        if (misread instanceof CommandLine.UnmatchedArgumentException unmatched) {
            return unmatched(unmatched);
        }
        if (misread instanceof CommandLine.MissingParameterException missing) {
            return "This needs "
                    + String.join(
                            " and ",
                            missing.getMissing().stream()
                                    .map(CallRefusal::shown)
                                    .toList())
                    + ".";
        }
        if (misread.getCause() instanceof TypeConversionException own && misread.getArgSpec() != null) {
            return (misread.getArgSpec() instanceof OptionSpec option ? option.longestName() + ": " : "")
                    + own.getMessage();
        }
        return misread.getMessage();
    }

    private static String unmatched(CommandLine.UnmatchedArgumentException unmatched) {
        String first = unmatched.getUnmatched().get(0);
        List<String> near = unmatched.getSuggestions();
        return (unmatched.isUnknownOption()
                        ? "There is no option " + first + " here."
                        : "“" + first + "” says nothing here.")
                + (near.isEmpty() ? "" : " Nearest: " + near.get(0) + ".");
    }

    private static String shown(CommandLine.Model.ArgSpec missing) {
        return missing instanceof OptionSpec option
                ? option.longestName() + "=" + option.paramLabel()
                : missing.paramLabel();
    }

    @Override
    public int handleExecutionException(Exception fault, CommandLine command, ParseResult parsed) {
        Refusal refusal = new Refusal(command, format(command.getCommandSpec()));
        if (fault instanceof Refused refused) {
            return refusal.of(refused);
        }
        if (fault instanceof UncheckedIOException || fault instanceof IOException) {
            return refusal.of(new Refused("A file could not be read or written: " + reason(fault)));
        }
        String number = UUID.randomUUID().toString().substring(0, 8);
        LOG.error("fault {}", number, fault);
        return refusal.of(new Refused("The program is at fault, not the call. Look for fault " + number + " above."));
    }

    private static OutputFormat format(CommandSpec command) {
        OptionSpec format = command.findOption("--format");
        return format != null && format.getValue() == OutputFormat.JSON ? OutputFormat.JSON : OutputFormat.TEXT;
    }

    private static String reason(Exception fault) {
        Throwable cause = fault instanceof UncheckedIOException ? fault.getCause() : fault;
        if (cause instanceof NoSuchFileException none) {
            return none.getFile() + " is not there and cannot be made.";
        }
        return cause instanceof AccessDeniedException denied
                ? denied.getFile() + " is closed to this account."
                : cause.getMessage() + ".";
    }
}
