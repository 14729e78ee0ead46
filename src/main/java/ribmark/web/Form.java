package ribmark.web;

import io.javalin.http.Context;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ribmark.basics.Problems;

/** What was typed into a page and what is wrong with it; nothing typed is lost. */
public final class Form {

    /** Longest text a field takes, in characters. */
    public static final int LONGEST = 2000;

    /** A problem with its number on the slip. */
    public record Numbered(int number, String field, String sentence) {}

    private final Map<String, List<String>> values = new LinkedHashMap<>();
    private final Problems problems = new Problems();

    private Form() {}

    /** Nothing typed yet. */
    public static Form blank() {
        return new Form();
    }

    /** Everything that was sent. */
    public static Form typed(Context ctx) {
        return of(ctx.formParamMap());
    }

    /** Everything that was asked in the address. */
    public static Form asked(Context ctx) {
        return of(ctx.queryParamMap());
    }

    private static Form of(Map<String, List<String>> all) {
        Form form = new Form();
        all.forEach((field, sent) ->
                form.values.put(field, sent.stream().map(Form::clean).toList()));
        return form;
    }

    /** The same form with something already in a field. */
    public Form with(String field, String value) {
        values.put(field, List.of(value));
        return this;
    }

    /** What stands in a field, without blanks around it; empty when nothing does. */
    public String value(String field) {
        List<String> sent = values.getOrDefault(field, List.of());
        return sent.isEmpty() ? "" : sent.get(0);
    }

    /** Everything chosen in a field that takes several. */
    public List<String> all(String field) {
        return values.getOrDefault(field, List.of());
    }

    /** Whether this choice is taken. */
    public boolean chosen(String field, String choice) {
        return all(field).contains(choice);
    }

    /** Puts a sentence beside a field. */
    public Form add(String field, String sentence) {
        problems.add(field, sentence);
        return this;
    }

    /** Words that must be there and must fit; the name is the field's own, as on the page. */
    public String words(String field, String name, String example) {
        String typed = value(field);
        if (typed.isEmpty()) {
            add(field, name + ": nothing was typed. " + example);
        }
        return fitting(field, name);
    }

    /** Words that may be left out but must fit. */
    public String fitting(String field, String name) {
        String typed = value(field);
        if (typed.length() > LONGEST) {
            add(
                    field,
                    name + ": " + typed.length() + " characters are too many to keep. Shorten it to " + LONGEST + ".");
        }
        return typed;
    }

    /** One of the choices offered, or a sentence beside the field. */
    public String oneOf(String field, String name, List<String> choices) {
        String typed = value(field);
        if (!choices.contains(typed)) {
            add(
                    field,
                    name.endsWith("?")
                            ? name + " Nothing was chosen. Choose one."
                            : name + ": nothing was chosen. Choose one.");
        }
        return typed;
    }

    /** Whether anything is wrong. */
    public boolean wrong() {
        return problems.any();
    }

    /** The sentence beside a field, or nothing. */
    public String problem(String field) {
        return problems.at(field).orElse(null);
    }

    /** The number that a field's problem has on the slip. */
    public int number(String field) {
        return problems().stream()
                .filter(p -> p.field().equals(field))
                .mapToInt(Numbered::number)
                .findFirst()
                .orElse(0);
    }

    /** All problems, numbered as on the slip. */
    public List<Numbered> problems() {
        List<Numbered> numbered = new ArrayList<>();
        problems.list().forEach(p -> numbered.add(new Numbered(numbered.size() + 1, p.field(), p.sentence())));
        return numbered;
    }

    /** Embeddings, overrides and isolates (Unicode UAX 9, section 2): words in any script stay, but none can pose as others. */
    private static boolean turnsTheLine(int c) {
        return c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    }

    private static String clean(String sent) {
        String composed = Normalizer.normalize(sent, Normalizer.Form.NFC).replace("\r\n", "\n");
        StringBuilder kept = new StringBuilder();
        composed.codePoints()
                .filter(c -> c == '\n' || !Character.isISOControl(c) && Character.getType(c) != Character.SURROGATE)
                .filter(c -> !turnsTheLine(c))
                .forEach(kept::appendCodePoint);
        return kept.toString().strip();
    }
}
