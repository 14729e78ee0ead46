package ribmark;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import ribmark.admin.AgreeCommand;
import ribmark.admin.CheckCommand;
import ribmark.admin.ScoreCommand;
import ribmark.admin.TryCommand;
import ribmark.basics.Refused;
import ribmark.curriculum.Curriculum;
import ribmark.proof.ContentInUse;
import ribmark.weighupfile.References;

/** The commands, and what their exit says: 0 done, 1 refused or found broken, 2 the call made no sense. */
@Command(
        name = "ribmark",
        mixinStandardHelpOptions = true,
        version = "Ribmark 0.1.0",
        description =
                "Training and competency assessment for butchery. Site rules, law and licensed people come first.",
        subcommands = {DemoCommand.class, ServeCommand.class, RoutesCommand.class, VerifyCommand.class})
final class Commands implements Runnable {

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    static int run(String... args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        CommandLine line = new CommandLine(new Commands())
                .addSubcommand(new CheckCommand())
                .addSubcommand(new TryCommand(System.in))
                .addSubcommand(new ScoreCommand(Commands::references, System.in))
                .addSubcommand(new AgreeCommand(System.in))
                .setOut(out)
                .setErr(err);
        CallRefusal refusal = new CallRefusal();
        line.setParameterExceptionHandler(refusal).setExecutionExceptionHandler(refusal);
        int exit = line.execute(args);
        out.flush();
        err.flush();
        return exit;
    }

    private static References references(Optional<Path> own) {
        own.filter(folder -> !Files.isDirectory(folder)).ifPresent(folder -> {
            throw new Refused("There is no folder " + folder + ".");
        });
        ContentInUse content = ContentInUse.read(own);
        if (!content.check().ok()) {
            throw new Refused("The content in " + own.orElseThrow() + " is not sound. Run check on it to see why.");
        }
        Curriculum curriculum = content.curriculum();
        return new References(
                curriculum.breakdown().id(),
                curriculum.breakdown().formula().toString(),
                curriculum.tables(),
                curriculum.trim(),
                curriculum.weighing(),
                curriculum.permissible(),
                curriculum.prices());
    }

    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(), "Name a command, for example: demo");
    }
}
