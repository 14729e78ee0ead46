package ribmark.competence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import ribmark.basics.Words;

/** How carcases and people are named in a sentence about what is missing. */
final class Naming {

    private Naming() {}

    static List<String> distinct(
            List<SheetEvidence> sheets, Function<SheetEvidence, String> id, Function<SheetEvidence, String> name) {
        Map<String, String> names = new LinkedHashMap<>();
        sheets.forEach(sheet -> names.putIfAbsent(id.apply(sheet), name.apply(sheet)));
        return List.copyOf(names.values());
    }

    /** The word all names begin with, such as lamb in lamb 29 and lamb 31; carcase when they share none. */
    static String kind(List<String> carcases) {
        List<String> words = carcases.stream()
                .map(name -> name.contains(" ") ? name.substring(0, name.indexOf(' ')) : "")
                .distinct()
                .toList();
        return words.size() == 1 && !words.get(0).isEmpty() ? words.get(0) : "carcase";
    }

    /** The names without the word they share: 29 and 31. */
    static String bare(List<String> carcases) {
        String kind = kind(carcases);
        return Words.list(carcases.stream()
                .map(name -> name.startsWith(kind + " ") ? name.substring(kind.length() + 1) : name)
                .toList());
    }

    static String article(String noun) {
        return "aeiou".indexOf(Character.toLowerCase(noun.charAt(0))) < 0 ? "a" : "an";
    }
}
