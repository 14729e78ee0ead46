package ribmark.admin;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import picocli.CommandLine;

/** One command run as from the shell: its exit, what it printed and what it said on the error stream. */
record Shell(int exit, String out, String err) {

    static Shell run(Object command, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = new CommandLine(command)
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(args);
        return new Shell(exit, out.toString(), err.toString());
    }

    /** The same with something on standard input. */
    static Shell typed(String input, Function<InputStream, Object> command, String... args) {
        return run(command.apply(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8))), args);
    }

    JsonNode json() throws IOException {
        return new ObjectMapper().readTree(out);
    }
}
