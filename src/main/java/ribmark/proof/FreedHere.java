package ribmark.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ribmark.anatomy.Animal;
import ribmark.anatomy.Joint;
import ribmark.anatomy.Part;
import ribmark.anatomy.Piece;
import ribmark.basics.Words;
import ribmark.contentfiles.ContentProblem.Also;
import ribmark.contentfiles.Findings;
import ribmark.contentfiles.Node;
import ribmark.curriculum.Cut.Holding;

/** Checks that a step frees exactly the pieces it names, and gives those pieces their names. */
final class FreedHere {

    /** So many bones are named in a message before it is cut short (our own line). */
    private static final int NAMED = 8;

    private final Node step;
    private final CutBook cuts;
    private final Map<List<String>, Freed> names;
    private final Findings found;

    FreedHere(Node step, CutBook cuts, Map<List<String>, Freed> names, Findings found) {
        this.step = step;
        this.cuts = cuts;
        this.names = names;
        this.found = found;
    }

    /** Whether all is as the step says. */
    boolean check(List<Piece> before, List<Piece> after, Animal animal) {
        Set<List<String>> fresh = before == after ? new LinkedHashSet<>() : fresh(before, after);
        Set<List<String>> present =
                new LinkedHashSet<>(after.stream().map(Piece::names).toList());
        Map<Node, Holding> absent = new LinkedHashMap<>();
        for (Node named : named()) {
            for (Holding holding : wanted(named.text(), present)) {
                Optional<List<String>> piece = exactly(holding, present);
                piece.ifPresent(parts -> {
                    names.put(parts, Working.freed(named.text(), holding, parts));
                    fresh.remove(parts);
                });
                if (piece.isEmpty()) {
                    absent.putIfAbsent(named, holding);
                }
            }
        }
        boolean sound = absent.isEmpty() && fresh.isEmpty();
        absent.entrySet().stream()
                .findFirst()
                .ifPresentOrElse(
                        first -> notFree(first.getKey(), first.getValue(), absent.keySet(), fresh, animal),
                        () -> fresh.stream().findFirst().ifPresent(this::unnamed));
        return sound;
    }

    private List<Node> named() {
        List<Node> all = new ArrayList<>(step.get("frees").items());
        all.addAll(step.get("leaves").items());
        return all;
    }

    /** One holding for each side: the one that is there, or else the one that is taught. */
    private List<Holding> wanted(String cut, Set<List<String>> present) {
        Map<Object, Holding> bySide = new LinkedHashMap<>();
        for (Holding holding : cuts.of(cut)) {
            Holding taken = bySide.putIfAbsent(holding.side(), holding);
            if (taken != null
                    && exactly(taken, present).isEmpty()
                    && exactly(holding, present).isPresent()) {
                bySide.put(holding.side(), holding);
            }
        }
        return List.copyOf(bySide.values());
    }

    private static Optional<List<String>> exactly(Holding holding, Set<List<String>> pieces) {
        return pieces.stream().filter(parts -> CutBook.same(holding, parts)).findFirst();
    }

    /** The pieces that came apart here: those that share the piece they were before with another. */
    private static Set<List<String>> fresh(List<Piece> before, List<Piece> after) {
        Map<Piece, List<Piece>> becameOf = new LinkedHashMap<>();
        List<Piece> others = new ArrayList<>(after);
        others.removeAll(new HashSet<>(before));
        for (Piece piece : others) {
            Piece from = before.stream()
                    .filter(old -> old.parts().stream().anyMatch(part -> isOf(part, piece.first())))
                    .findFirst()
                    .orElseThrow();
            becameOf.computeIfAbsent(from, old -> new ArrayList<>()).add(piece);
        }
        Set<List<String>> fresh = new LinkedHashSet<>();
        becameOf.values().stream()
                .filter(pieces -> pieces.size() > 1)
                .forEach(pieces -> pieces.forEach(piece -> fresh.add(piece.names())));
        return fresh;
    }

    /** Whether a part is this old part or was sawn from it. */
    private static boolean isOf(Part old, Part part) {
        boolean sameBone = old.bone().id().equals(part.bone().id());
        boolean sameSide =
                !old.halves().isSided() || old.halves().side() == part.halves().side();
        List<?> ends = part.halves().ends();
        int depth = old.halves().ends().size();
        return sameBone
                && sameSide
                && ends.size() >= depth
                && ends.subList(0, depth).equals(old.halves().ends());
    }

    private void notFree(Node named, Holding holding, Set<Node> absent, Set<List<String>> fresh, Animal animal) {
        Optional<List<String>> nearest = fresh.stream()
                .filter(parts -> parts.stream().anyMatch(holding.parts()::contains))
                .max(Comparator.comparingLong(parts ->
                        parts.stream().filter(holding.parts()::contains).count()));
        List<String> holds = allThere(holding, animal) ? animal.heldBy(holding.parts()) : List.of();
        String help = !holds.isEmpty() && holds.size() <= NAMED
                ? stillHeld(holds, animal)
                : nearest.map(parts -> difference(holding.parts(), parts))
                        .orElse(
                                "What it should hold still hangs on other bones, or hangs together no more. Look at the operations.");
        found.add(
                "C034",
                named,
                "“" + named.text() + "” does not come free here with the bones it is said to hold.",
                help,
                places(named, holding, absent, nearest.orElse(List.of())));
    }

    /** Where the other halves of the cause may stand: the bones of the cut, its sides, and what the step does. */
    private Also[] places(Node named, Holding holding, Set<Node> absent, List<String> free) {
        Node cut = cuts.node(named.text());
        List<Also> places = new ArrayList<>();
        for (Node list : List.of(cut.get("bones"), cut.get("or"))) {
            List<Node> entries = cuts.entries(list, holding.side(), free);
            for (Node entry : entries.isEmpty() && list.isThere() ? List.of(list) : entries) {
                places.add(new Also("Its bones stand in", entry.place()));
            }
        }
        places.add(new Also("How often it comes stands in", cut.get("comes").place()));
        step.get("operations").items().forEach(operation -> {
            Deeds.written(operation).stream()
                    .findFirst()
                    .ifPresent(id -> places.add(new Also("The step works in", id.place())));
            if (operation.get("plane").isThere()) {
                places.add(new Also(
                        "The saw goes as told in", operation.get("plane").place()));
            }
        });
        absent.stream().skip(1).forEach(other -> places.add(new Also("Nor does another, in", other.place())));
        return places.toArray(Also[]::new);
    }

    /** Names every joint and soft edge that still ties it to the rest. */
    private static String stillHeld(List<String> holds, Animal animal) {
        String named = Words.list(holds.stream()
                .map(hold -> soft(hold, animal) ? "the soft edge " + hold : hold)
                .toList());
        return "It is still held by " + named + ". Sever it in this step or before, or mend the bones of the cut.";
    }

    private static boolean allThere(Holding holding, Animal animal) {
        return animal.parts().stream()
                .map(Part::name)
                .collect(Collectors.toSet())
                .containsAll(holding.parts());
    }

    private static boolean soft(String hold, Animal animal) {
        return animal.skeleton()
                .joint(hold.replaceAll("\\..*", ""))
                .filter(Joint::isSoft)
                .isPresent();
    }

    private static String difference(List<String> wanted, List<String> free) {
        List<String> lacking =
                wanted.stream().filter(part -> !free.contains(part)).toList();
        List<String> extra =
                free.stream().filter(part -> !wanted.contains(part)).toList();
        List<String> says = new ArrayList<>();
        if (!lacking.isEmpty()) {
            says.add("lacks " + some(lacking));
        }
        if (!extra.isEmpty()) {
            says.add("holds " + some(extra) + " too");
        }
        return "What comes free " + Words.list(says) + ". Mend the operations here, or the bones of the cut.";
    }

    private void unnamed(List<String> parts) {
        String help = cuts.named(parts)
                .map(cut -> "It is “" + cut + "”: add it to frees or leaves.")
                .orElse("It holds " + some(parts) + ". Add a cut for it and name it in frees or leaves.");
        found.add(
                "C033", step.key("frees"), "A piece with " + bones(parts) + " comes free here and is not named.", help);
    }

    static String bones(List<String> parts) {
        return Words.count(parts.size(), "bone", "bones");
    }

    static String some(List<String> parts) {
        return parts.size() <= NAMED
                ? Words.list(parts)
                : String.join(", ", parts.subList(0, NAMED)) + " and " + (parts.size() - NAMED) + " more";
    }
}
