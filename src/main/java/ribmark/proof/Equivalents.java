package ribmark.proof;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ribmark.anatomy.Ids;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;

/**
 * Checks that a cut and its equivalent in a published standard hold the same bones, or differ by just those the file names.
 * One whose boundary nobody read names no bones and is only a cross-reference.
 */
final class Equivalents {

    private static final String CODE = "C048";

    private final Ids ids;
    private final Findings found;

    private Equivalents(Skeleton animal, Findings found) {
        this.ids = Ids.of(animal);
        this.found = found;
    }

    static void check(Shelf shelf, Skeleton animal, Findings found) {
        Equivalents equivalents = new Equivalents(animal, found);
        for (Node cut : shelf.cuts().all("cuts[]")) {
            cut.all("same-as[]").forEach(same -> equivalents.check(cut, same));
        }
    }

    private void check(Node cut, Node same) {
        if (!same.get("bones").isThere() && !same.get("differs").isThere()) {
            return;
        }
        if (!same.get("read-in").isThere()) {
            tell(same, "where these bones of %s were read is not said", "Name the source under read-in.");
        } else if (same.get("differs").isThere() && !same.get("note").isThere()) {
            tell(same, "why %s holds other bones is not said", "Say it in a few words under note.");
        } else {
            compare(cut, same);
        }
    }

    private void tell(Node same, String what, String help) {
        found.add(CODE, same.get("number"), Words.capital(what.formatted(name(same))) + ".", help);
    }

    /** One side stands for both, since left mirrors right. */
    private void compare(Node cut, Node same) {
        Side side = cut.get("comes").text().equals("each") ? Side.LEFT : Side.ONCE;
        Set<String> ours = parts(cut.get("bones"), side);
        Set<String> theirs = parts(same.get("bones"), side);
        Set<String> named = parts(same.get("differs"), side);
        Set<String> apart = oneOnly(ours, theirs);
        Set<String> wrong = oneOnly(apart, named);
        if (!wrong.isEmpty()) {
            String told = FreedHere.some(List.copyOf(wrong));
            boolean unnamed = apart.containsAll(wrong);
            found.add(
                    CODE,
                    entry(same.get("bones"), wrong, side),
                    "“" + cut.get("id").text() + "” and " + name(same) + " do not differ by the bones named.",
                    unnamed
                            ? "Only one of the two holds " + told
                                    + ": name that under differs and say why, or mend its bones."
                            : "Both or neither hold " + told + ": take that out of differs, or mend the bones.",
                    new Also(
                            "The bones that differ stand in",
                            entry(same.get("differs"), wrong, side).place()),
                    new Also(
                            "Our bones stand in",
                            entry(cut.get("bones"), wrong, side).place()));
        }
    }

    private static String name(Node same) {
        return same.get("system").text() + " " + same.get("number").text();
    }

    private Set<String> parts(Node list, Side side) {
        Set<String> parts = new LinkedHashSet<>();
        list.texts().forEach(entry -> parts.addAll(expand(entry, side)));
        return parts;
    }

    private List<String> expand(String entry, Side side) {
        return side == Side.ONCE ? ids.expand(entry) : ids.expand(entry, side);
    }

    private static Set<String> oneOnly(Set<String> some, Set<String> others) {
        Set<String> either = new LinkedHashSet<>(some);
        either.addAll(others);
        either.removeIf(part -> some.contains(part) && others.contains(part));
        return either;
    }

    /** The entry that names one of these, or one of their kind; else the list. */
    private Node entry(Node list, Set<String> parts, Side side) {
        return list.items().stream()
                .filter(item -> expand(item.text(), side).stream().anyMatch(parts::contains))
                .findFirst()
                .or(() -> list.items().stream()
                        .filter(item -> parts.stream().anyMatch(part -> isOfKind(item, part, side)))
                        .findFirst())
                .orElse(list);
    }

    private boolean isOfKind(Node item, String part, Side side) {
        return expand(item.text(), side).stream()
                .anyMatch(other -> Shown.kind(other).equals(Shown.kind(part)));
    }
}
