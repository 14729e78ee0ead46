package ribmark.admin;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import ribmark.basics.FileProblem;
import ribmark.basics.Refused;
import ribmark.weighupfile.ScoreJson;

/** How a command says no: every problem with its place, to people on the error stream, to programs where they read answers. */
public record Refusal(CommandLine command, OutputFormat format) {

    /** The exit code when a command refused what it was given. */
    static final int REFUSED = 1;

    /** One sentence, without a place. */
    public int of(Refused refused) {
        return of(List.of(new FileProblem("", refused.getMessage(), "")));
    }

    int of(List<FileProblem> problems) {
        if (format == OutputFormat.JSON) {
            print(ScoreJson.of(problems));
        } else {
            people(problems);
        }
        return REFUSED;
    }

    int ofLine(int line, List<FileProblem> problems) {
        if (format == OutputFormat.JSON) {
            print(ScoreJson.of(line, problems));
        } else {
            command.getErr().println("Line " + line + ":");
            people(problems);
        }
        return REFUSED;
    }

    private void print(ObjectNode json) {
        command.getOut().println(json);
        command.getOut().flush();
    }

    private void people(List<FileProblem> problems) {
        PrintWriter err = command.getErr();
        for (FileProblem problem : problems) {
            err.println((problem.at().isEmpty() ? "" : problem.at() + ": ") + problem.headline());
            if (!problem.help().isEmpty()) {
                err.println("    " + problem.help());
            }
        }
        err.flush();
    }
}
