package ribmark.admin;

import picocli.CommandLine.Option;

/** What every command that prints an answer takes: for whom it prints, and its help. */
final class FormatAndHelp {

    @Option(
            names = "--format",
            paramLabel = "text|json",
            converter = OutputFormat.Reader.class,
            description = "For people (text, the default) or for programs (json).")
    private OutputFormat format = OutputFormat.TEXT;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this.")
    private boolean help;

    OutputFormat format() {
        return format;
    }
}
