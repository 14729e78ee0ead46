package ribmark.contentfiles;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What every code of the check means, read from the file {@code codes.yaml} beside this class. */
public final class Codes {

    /** One code: what it is about, why it matters at the block, more words, and an example of bad and good. */
    public record Code(String code, String about, String why, String more, Example example) {}

    /** One file with a fault and without it: the one text stands in place of the other. */
    public record Example(String file, String bad, String good) {}

    private static final Map<String, Code> ALL = load();

    private Codes() {}

    static Code of(String code) {
        Code found = ALL.get(code);
        if (found == null) {
            throw new IllegalArgumentException("No code " + code);
        }
        return found;
    }

    /** Every code, in the order of the file. */
    public static List<Code> all() {
        return List.copyOf(ALL.values());
    }

    private static Map<String, Code> load() {
        try (InputStream in = Codes.class.getResourceAsStream("codes.yaml")) {
            Findings found = new Findings();
            Map<String, Code> all = new LinkedHashMap<>();
            TextFile.of("codes.yaml", in.readAllBytes(), found)
                    .flatMap(text -> StrictYaml.read(text, found))
                    .orElseThrow()
                    .get("codes")
                    .items()
                    .forEach(node -> all.put(node.get("code").text(), code(node)));
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Code code(Node node) {
        return new Code(
                node.get("code").text(),
                node.get("about").text(),
                node.get("why").text(),
                node.get("more").text(),
                new Example(
                        node.get("file").text(),
                        node.get("bad").text().stripTrailing(),
                        node.get("good").text().stripTrailing()));
    }
}
