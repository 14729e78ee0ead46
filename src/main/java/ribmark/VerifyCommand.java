package ribmark;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ribmark.basics.Refused;
import ribmark.database.Database;
import ribmark.evidence.EvidenceLog;
import ribmark.evidence.Head;
import ribmark.evidence.HeadFile;
import ribmark.evidence.Verification;
import ribmark.evidence.Verifier;

/** Walks the evidence log of a college and says whether anybody altered it; works while the program runs. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description = "Walks the evidence log and names the first record that does not fit. Exit 1 when one does not.")
final class VerifyCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            defaultValue = "${env:RIBMARK_DATA:-" + Settings.DATA + "}",
            description = "Folder of the college's data. Default: ${DEFAULT-VALUE}. Also RIBMARK_DATA.")
    private Path data;

    @Option(
            names = "--head",
            paramLabel = "FILE",
            description =
                    "A head kept elsewhere, as printed on a report: a file with the number of records and the digest.")
    private Path head;

    @Option(
            names = "--content",
            paramLabel = "DIR",
            description = "Taken as by every command; the log is the same under any content.")
    private Path content;

    @Mixin
    private FormatOption format;

    @Override
    public Integer call() throws IOException {
        if (Files.notExists(data.resolve("ribmark.mv.db"))) {
            throw new Refused(
                    "There is no database in " + data + ". Name the folder of the college's data with --data.");
        }
        Verification found = verify();
        print(found);
        return found.holds() ? 0 : 1;
    }

    private Verification verify() throws IOException {
        Settings settings = Settings.inFolder(0, data, Optional.empty(), Optional.ofNullable(content));
        try (Database database = Database.openToRead(settings.url(), settings.keys())) {
            EvidenceLog log = new EvidenceLog(database, Clock.systemUTC(), () -> "");
            Verifier verifier = new Verifier(database, log, Stores.mirrors(), Stores.quoted());
            Verification against = verifier.verify(given());
            return against.holds() ? verifier.verify(new HeadFile(data.resolve("evidence.head")).read()) : against;
        }
    }

    private Optional<Head> given() throws IOException {
        if (head == null) {
            return Optional.empty();
        }
        if (!Files.isRegularFile(head)) {
            throw new Refused("There is no file " + head + ". --head names a file with a head kept elsewhere.");
        }
        return Optional.of(Head.parse(Files.readString(head)));
    }

    private void print(Verification found) throws JsonProcessingException {
        PrintWriter out = spec.commandLine().getOut();
        if (format.isJson()) {
            out.println(new ObjectMapper().writeValueAsString(found));
            return;
        }
        out.println(found.holds() ? "The evidence log holds." : "The evidence log does not hold.");
        out.println(found.why());
        out.println("Records: " + found.records());
        out.println("Head: " + found.records() + " " + found.head());
    }
}
