package ribmark;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.util.LogbackMDCAdapter;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;

class LogLinesTest {

    @Test
    void a_warning_is_one_line_on_standard_error_and_a_remark_is_none() {
        PrintStream err = System.err;
        ByteArrayOutputStream kept = new ByteArrayOutputStream();
        System.setErr(new PrintStream(kept, true, StandardCharsets.UTF_8));
        try {
            LoggerContext context = new LoggerContext();
            context.setMDCAdapter(new LogbackMDCAdapter());
            new LogLines().configure(context);
            Logger log = context.getLogger("ribmark.web.Errors");
            log.info("all is well");
            log.warn("one\nand more");
        } finally {
            System.setErr(err);
        }
        assertThat(kept.toString(StandardCharsets.UTF_8))
                .matches("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d\\.\\d{3}Z WARN  Errors one and more\\R");
    }

    @Test
    void the_program_logs_this_way() {
        assertThat(ServiceLoader.load(ch.qos.logback.classic.spi.Configurator.class))
                .singleElement()
                .isInstanceOf(LogLines.class);
    }
}
