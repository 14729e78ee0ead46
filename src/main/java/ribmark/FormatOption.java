package ribmark;

import picocli.CommandLine.Option;
import ribmark.admin.OutputFormat;

/** For whom a command of the running program prints. */
final class FormatOption {

    @Option(
            names = "--format",
            paramLabel = "text|json",
            defaultValue = "text",
            converter = OutputFormat.Reader.class,
            description = "text or json. Default: ${DEFAULT-VALUE}.")
    private OutputFormat format;

    boolean isJson() {
        return format == OutputFormat.JSON;
    }
}
