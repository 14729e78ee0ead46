package ribmark.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import ribmark.anatomy.Ids;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Side;
import ribmark.contentfiles.Node;
import ribmark.contentfiles.Shelf;
import ribmark.curriculum.Cut.Holding;

/** Which parts of bones each cut holds in one animal. */
final class CutBook {

    private final Ids ids;
    private final Map<String, Node> cuts = new LinkedHashMap<>();
    private final Map<String, List<Holding>> holdings = new LinkedHashMap<>();

    CutBook(Shelf shelf, Skeleton animal) {
        this.ids = Ids.of(animal);
        for (Node cut : shelf.cuts().all("cuts[]")) {
            cuts.put(cut.get("id").text(), cut);
            holdings.put(cut.get("id").text(), holdings(cut, ids));
        }
    }

    /** What one piece of this cut holds: first each side as taught, then each side with an optional step left out. */
    static List<Holding> holdings(Node cut, Ids ids) {
        List<Side> sides = cut.get("comes").text().equals("each") ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.ONCE);
        List<Holding> all = new ArrayList<>();
        for (String name : List.of("bones", "or")) {
            List<String> written = cut.get(name).texts();
            for (Side side : written.isEmpty() ? List.<Side>of() : sides) {
                all.add(new Holding(side, parts(written, side, ids)));
            }
        }
        return all;
    }

    private static List<String> parts(List<String> written, Side side, Ids ids) {
        return written.stream()
                .flatMap(each -> (side == Side.ONCE ? ids.expand(each) : ids.expand(each, side)).stream())
                .toList();
    }

    List<String> ids() {
        return List.copyOf(cuts.keySet());
    }

    Node node(String cut) {
        return cuts.get(cut);
    }

    /** Both what is taught and what is left when an optional step is not done. */
    List<Holding> of(String cut) {
        return holdings.getOrDefault(cut, List.of());
    }

    boolean hasBones(String cut) {
        return !of(cut).isEmpty();
    }

    boolean isParted(String cut) {
        return cuts.get(cut).get("becomes").text().equals("parted");
    }

    /** Bone, trim and waste gather at the block from many steps. */
    boolean isLeftOver(String cut) {
        return List.of("bone", "offcut").contains(cuts.get(cut).get("becomes").text());
    }

    /** The first cut of all that holds exactly these parts. */
    Optional<String> named(List<String> parts) {
        return holdings.entrySet().stream()
                .filter(entry -> entry.getValue().stream().anyMatch(holding -> same(holding, parts)))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** The entries of a list of bones that name a part the free piece lacks, or are nearest to one it has too much. */
    List<Node> entries(Node list, Side side, List<String> free) {
        List<String> parts = parts(list.texts(), side, ids);
        List<String> tooMuch =
                parts.stream().filter(part -> !free.contains(part)).toList();
        List<String> missing =
                free.stream().filter(part -> !parts.contains(part)).toList();
        return !tooMuch.isEmpty()
                ? entries(list, tooMuch::contains)
                : entries(
                        list,
                        part -> missing.stream()
                                .anyMatch(other -> Shown.kind(part).equals(Shown.kind(other))));
    }

    private List<Node> entries(Node list, Predicate<String> which) {
        return list.items().stream()
                .filter(entry -> ids.expand(entry.text()).stream().anyMatch(which))
                .limit(2)
                .toList();
    }

    /** Whether these are its parts, in any order. */
    static boolean same(Holding holding, List<String> parts) {
        List<String> held = holding.parts();
        return held.size() == parts.size()
                && (held.equals(parts)
                        || parts.contains(held.get(0)) && Set.copyOf(parts).equals(new HashSet<>(held)));
    }
}
