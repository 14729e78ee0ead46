package ribmark;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ribmark.database.ServedFolder;

/** Runs the program on the college's own data. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "Runs Ribmark on the data in a folder, on this machine's loopback address.")
final class ServeCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "${env:RIBMARK_PORT:-" + Settings.PORT + "}",
            converter = PortReader.class,
            description = "Port to listen on. Default: ${DEFAULT-VALUE}. Also RIBMARK_PORT.")
    private Integer port;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            defaultValue = "${env:RIBMARK_DATA:-" + Settings.DATA + "}",
            description = "Folder of the college's data. Default: ${DEFAULT-VALUE}. Also RIBMARK_DATA.")
    private Path data;

    @Option(
            names = "--database-url",
            paramLabel = "URL",
            defaultValue = "${env:RIBMARK_DATABASE_URL}",
            description =
                    "Database address instead of the folder's; refused when a kill could lose marks. Also RIBMARK_DATABASE_URL.")
    private String databaseUrl;

    @Option(
            names = "--content",
            paramLabel = "DIR",
            defaultValue = "${env:RIBMARK_CONTENT}",
            description = "Folder laid over the content that came with the program. Also RIBMARK_CONTENT.")
    private Path content;

    @Override
    public Integer call() throws InterruptedException {
        Settings settings = Settings.inFolder(
                port,
                data,
                Optional.ofNullable(databaseUrl).filter(url -> !url.isBlank()),
                Optional.ofNullable(content));
        ServedFolder served = ServedFolder.alone(data);
        try {
            App app = new App(settings, Clock.systemUTC());
            sayWhere(app.start(), app.firstAdministratorLink());
            untilStopped(app);
            return 0;
        } finally {
            served.close();
        }
    }

    private void sayWhere(String address, Optional<String> firstLink) {
        PrintWriter out = spec.commandLine().getOut();
        out.println("Ribmark listens at " + address);
        firstLink.ifPresent(link -> out.println(
                "No accounts yet. The first administrator begins here, once: " + address + "/new-password/" + link));
    }

    /** Waits for the machine to stop the program, then answers what is under way and closes the database. */
    static void untilStopped(App app) throws InterruptedException {
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            app.close();
            stopped.countDown();
        }));
        stopped.await();
    }
}
