package ribmark;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ribmark.admin.DemoClock;
import ribmark.web.Route;

/** Lists every address and who may open it, with the one that only the demo has. */
@Command(
        name = "routes",
        mixinStandardHelpOptions = true,
        description = "Lists every address: method, path, who may open it.")
final class RoutesCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--content",
            paramLabel = "DIR",
            description = "Folder laid over the content that came with the program.")
    private Path content;

    @Mixin
    private FormatOption format;

    @Override
    public Integer call() throws JsonProcessingException {
        PrintWriter out = spec.commandLine().getOut();
        List<Route> routes;
        Settings settings = Settings.throwAway(0, Optional.ofNullable(content));
        try (App app = App.demo(settings, new DemoClock(Clock.systemUTC()))) {
            routes = app.routes();
        }
        if (format.isJson()) {
            out.println(new ObjectMapper()
                    .writeValueAsString(
                            routes.stream().map(RoutesCommand::shown).toList()));
        } else {
            routes.forEach(route ->
                    out.printf("%-4s  %-50s  %s%n", route.method(), route.path(), String.join(", ", route.mayOpen())));
        }
        return 0;
    }

    private static Map<String, Object> shown(Route route) {
        Map<String, Object> shown = new LinkedHashMap<>();
        shown.put("method", route.method());
        shown.put("path", route.path());
        shown.put("mayOpen", route.mayOpen());
        shown.put("own", route.own());
        shown.put("shows", route.shows());
        return shown;
    }
}
