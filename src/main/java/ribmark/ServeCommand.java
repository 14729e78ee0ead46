package ribmark;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

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
            defaultValue = "${env:RIBMARK_PORT:-" + Settings.PORT + "}",
            description = "Port to listen on. Default: ${DEFAULT-VALUE}. Also RIBMARK_PORT.")
    private int port;

    @Option(
            names = "--data",
            defaultValue = "${env:RIBMARK_DATA:-" + Settings.DATA + "}",
            description = "Folder of the college's data. Default: ${DEFAULT-VALUE}. Also RIBMARK_DATA.")
    private Path data;

    @Option(
            names = "--database-url",
            defaultValue = "${env:RIBMARK_DATABASE_URL}",
            description =
                    "Database address instead of the folder's; refused when a kill could lose marks. Also RIBMARK_DATABASE_URL.")
    private String databaseUrl;

    @Option(
            names = "--content",
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
        App app = new App(settings, Clock.systemUTC());
        String address = app.start();
        spec.commandLine().getOut().println("Ribmark listens at " + address);
        app.firstAdministratorLink()
                .ifPresent(link -> spec.commandLine()
                        .getOut()
                        .println("No accounts yet. The first administrator begins here, once: " + address
                                + "/new-password/" + link));
        untilStopped(app);
        return 0;
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
