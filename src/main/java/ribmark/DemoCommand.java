package ribmark;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ribmark.admin.DemoClock;
import ribmark.admin.DemoCollege.SignIn;

/** Runs the program on an invented college, in a database that is gone when the program ends. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = "Runs Ribmark on an invented college in a database that is gone when you stop it.")
final class DemoCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "${env:RIBMARK_PORT:-" + Settings.PORT + "}",
            converter = PortReader.class,
            description = "Port to listen on, 0 for any that is free. Default: ${DEFAULT-VALUE}. Also RIBMARK_PORT.")
    private Integer port;

    @Option(
            names = "--content",
            paramLabel = "DIR",
            defaultValue = "${env:RIBMARK_CONTENT}",
            description = "Folder laid over the content that came with the program. Also RIBMARK_CONTENT.")
    private Path content;

    @Mixin
    private FormatOption format;

    @Override
    public Integer call() throws JsonProcessingException, InterruptedException {
        App app = filled(Settings.throwAway(port, Optional.ofNullable(content)));
        String address = app.start();
        print(address, app.college().signIns());
        ServeCommand.untilStopped(app);
        return 0;
    }

    /** The program with the college filled in; it does not listen yet. */
    static App filled(Settings settings) {
        App app = App.demo(settings, new DemoClock(Clock.systemUTC()));
        app.college().fill();
        return app;
    }

    /** The line for programs comes first; whoever reads it may go on at once. */
    private void print(String address, List<SignIn> signIns) throws JsonProcessingException {
        PrintWriter out = spec.commandLine().getOut();
        if (format.isJson()) {
            Map<String, Object> line = new LinkedHashMap<>();
            line.put("address", address);
            line.put("signIns", signIns);
            out.println(new ObjectMapper().writeValueAsString(line));
        } else {
            out.println("Ribmark runs on an invented college at " + address);
            out.println("Sign in as one of these, password: " + signIns.get(0).password());
            onePerRole(signIns).forEach(one -> out.printf("  %-14s %s%n", one.role(), one.name()));
            out.println("What to try as each: " + address + "/demo");
            out.println("Everything is gone when you stop it.");
        }
        out.flush();
    }

    private static List<SignIn> onePerRole(List<SignIn> signIns) {
        Set<String> seen = new LinkedHashSet<>();
        return signIns.stream().filter(one -> seen.add(one.role())).toList();
    }
}
