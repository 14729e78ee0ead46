package ribmark.contentfiles;

import java.util.List;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.ContentProblem.Place;

/** Says in plain words why a file cannot be read as YAML, in place of the parser's own words. */
record YamlFault(String when, String code, boolean atTheOpening, String headline, String help) {

    /** The first whose words occur in what the parser says is taken. */
    private static final List<YamlFault> KNOWN = List.of(
            new YamlFault(
                    "(TAB)",
                    "C003",
                    false,
                    "A tab stands here where spaces are needed.",
                    "Replace each tab by two spaces. A tab looks like spaces, so every line could mean something else."),
            new YamlFault(
                    "mapping values are not allowed",
                    "C002",
                    false,
                    "A second colon in this line makes it unclear where the value begins.",
                    "Put the text in quotes, from its first letter to its last."),
            new YamlFault(
                    "unknown escape character",
                    "C002",
                    false,
                    "A backslash in this quoted text starts a sign that does not exist.",
                    "Use single quotes, or write the backslash twice."),
            new YamlFault(
                    "quoted scalar",
                    "C002",
                    true,
                    "A quote is opened here and never closed.",
                    "Close it with the same sign at the end of the text."),
            new YamlFault(
                    "while parsing a flow",
                    "C002",
                    true,
                    "A bracket is opened here and not closed where it should be.",
                    "Close it, or look for a comma that is missing before the next entry."),
            new YamlFault(
                    "could not find expected ':'",
                    "C002",
                    true,
                    "This line has no colon after its first word.",
                    "Write a word, a colon and a space, then the value."),
            new YamlFault(
                    "cannot start any token",
                    "C002",
                    false,
                    "A text that begins with this sign needs quotes.",
                    "Put the text in quotes, from its first letter to its last."),
            new YamlFault(
                    "sequence entries are not allowed",
                    "C002",
                    false,
                    "A dash stands where a value is expected.",
                    "Begin the list on the next line, two spaces further in."),
            new YamlFault(
                    "but found",
                    "C002",
                    false,
                    "This line does not stand under its neighbours.",
                    "Give it as many spaces at the start as the lines it belongs with."),
            new YamlFault(
                    "",
                    "C002",
                    false,
                    "From here on the file cannot be read as YAML.",
                    "Look at this line and the one before: a colon, a quote, a bracket or the spaces at the start."));

    static void say(MarkedYamlEngineException e, TextFile text, Findings found) {
        String said = e.getContext() + " " + e.getProblem();
        YamlFault fault = KNOWN.stream()
                .filter(known -> said.contains(known.when))
                .findFirst()
                .orElseThrow();
        Mark noticed = e.getProblemMark().or(e::getContextMark).orElseThrow();
        Mark opened = e.getContextMark().orElse(noticed);
        Place at = text.place(fault.atTheOpening ? opened : noticed);
        if (fault.atTheOpening && opened.getLine() != noticed.getLine() && noticed.getLine() < text.lines()) {
            found.add(fault.code, at, fault.headline, fault.help, new Also("Noticed in", text.place(noticed)));
        } else {
            found.add(fault.code, at, fault.headline, fault.help);
        }
    }
}
