package ribmark.curriculum;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Skeleton;
import ribmark.basics.Side;
import ribmark.basics.Words;

/** Says bones in words: neighbours that are numbered become one run, and both sides are said once. */
public final class BoneWords {

    private static final Pattern NUMBERED = Pattern.compile("(.*\\D) (\\d+)");

    /** Bones of one name that lie on the same sides; numbers are empty for a bone that has none. */
    private record Kin(String name, Set<Side> sides) {}

    private static final List<String> ENDS = List.of("near", "far");

    private final Map<String, Bone> byId;

    /** The names are those of this skeleton. */
    public BoneWords(Skeleton skeleton) {
        this.byId = skeleton.bones().stream()
                .collect(Collectors.toMap(Bone::id, bone -> bone, (a, b) -> a, LinkedHashMap::new));
    }

    /** The bones as words; empty when there are none. */
    public String say(List<String> ids) {
        Map<String, Set<Side>> sidesByName = new LinkedHashMap<>();
        for (String id : ids) {
            Bone bone = byId.get(id.replaceAll("\\..*", ""));
            if (bone != null) {
                sidesByName
                        .computeIfAbsent(plain(bone.name()), name -> new TreeSet<>())
                        .add(bone.side());
            }
        }
        Map<Kin, List<Integer>> kin = new LinkedHashMap<>();
        sidesByName.forEach((name, sides) -> {
            Matcher numbered = NUMBERED.matcher(name);
            boolean has = numbered.matches();
            List<Integer> numbers =
                    kin.computeIfAbsent(new Kin(has ? numbered.group(1) : name, sides), key -> new ArrayList<>());
            if (has) {
                numbers.add(Integer.valueOf(numbered.group(2)));
            }
        });
        return kin.entrySet().stream()
                .map(entry -> say(entry.getKey(), entry.getValue()))
                .collect(Collectors.joining("; "));
    }

    /** The bones as part of a sentence: {@code left rib 6 and left costal cartilage 6}. */
    public String inSentence(List<String> ids) {
        return Words.list(
                Stream.of(say(ids).split("; ")).map(BoneWords::sideFirst).toList());
    }

    private static String sideFirst(String said) {
        return said.replaceAll("^(.*), left and right$", "$1 (left and right)")
                .replaceAll("^(.*), (left|right)$", "$2 $1");
    }

    /**
     * Parts of bones as words, such as {@code L6.near} and {@code T7.left}: a region by its own name where all of it is there, or all
     * of one side of it, then whole bones, then halves split down the middle, then what was sawn across.
     */
    public String sayParts(List<String> parts) {
        Map<String, Set<String>> cuts = new LinkedHashMap<>();
        for (String part : parts) {
            String[] names = part.split("\\.");
            cuts.computeIfAbsent(names[0], bone -> new TreeSet<>())
                    .addAll(List.of(names).subList(1, names.length));
        }
        List<String> whole =
                new ArrayList<>(bones(cuts, halves -> halves.isEmpty() || halves.equals(Set.of("left", "right"))));
        List<String> said = new ArrayList<>(regions(whole));
        said.add(say(whole));
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            said.add(after(side.word() + " half of ", bones(cuts, halves -> halves.equals(Set.of(side.word())))));
        }
        said.add(after("part of ", bones(cuts, halves -> ENDS.stream().anyMatch(halves::contains))));
        return said.stream().filter(words -> !words.isEmpty()).collect(Collectors.joining("; "));
    }

    /** The regions of which all bones, or all of one side, are among these; what is said so is taken out. */
    private List<String> regions(List<String> whole) {
        List<String> said = new ArrayList<>();
        Map<String, List<Bone>> regions = byId.values().stream()
                .collect(Collectors.groupingBy(Bone::region, LinkedHashMap::new, Collectors.toList()));
        regions.forEach((region, all) -> {
            List<String> here =
                    all.stream().map(Bone::id).filter(whole::contains).toList();
            if (here.size() == all.size() || isOneSide(here, all)) {
                Side side = byId.get(here.get(0)).side();
                said.add("all of the " + region + (here.size() == all.size() ? "" : sides(Set.of(side))));
                whole.removeAll(here);
            }
        });
        return said;
    }

    private boolean isOneSide(List<String> here, List<Bone> all) {
        return here.size() > 1
                && all.stream().noneMatch(Bone::isMidline)
                && 2 * here.size() == all.size()
                && here.stream().map(id -> byId.get(id).side()).distinct().count() == 1;
    }

    private String after(String before, List<String> ids) {
        return ids.isEmpty() ? "" : before + say(ids).replace("; ", " and ");
    }

    private List<String> bones(Map<String, Set<String>> cuts, Predicate<Set<String>> which) {
        return cuts.entrySet().stream()
                .filter(cut -> byId.containsKey(cut.getKey()) && which.test(cut.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static String say(Kin kin, List<Integer> numbers) {
        String name = numbers.isEmpty()
                ? kin.name()
                : (numbers.size() > 1 ? many(kin.name()) : kin.name()) + " " + Words.list(runs(numbers));
        return name + sides(kin.sides());
    }

    private static List<String> runs(List<Integer> numbers) {
        List<Integer> sorted = numbers.stream().sorted().toList();
        List<String> runs = new ArrayList<>();
        int from = 0;
        for (int at = 1; at <= sorted.size(); at++) {
            if (at == sorted.size() || sorted.get(at) != sorted.get(at - 1) + 1) {
                runs.addAll(run(sorted.get(from), sorted.get(at - 1)));
                from = at;
            }
        }
        return runs;
    }

    private static List<String> run(int first, int last) {
        if (last - first < 2) {
            return first == last ? List.of("" + first) : List.of("" + first, "" + last);
        }
        return List.of(first + " to " + last);
    }

    private static String sides(Set<Side> sides) {
        if (sides.contains(Side.LEFT) && sides.contains(Side.RIGHT)) {
            return ", left and right";
        }
        return sides.contains(Side.LEFT) ? ", left" : sides.contains(Side.RIGHT) ? ", right" : "";
    }

    private static String many(String name) {
        return name.endsWith("a") ? name + "e" : name + "s";
    }

    private static String plain(String name) {
        String bare = name.replaceAll("\\s*\\([^)]*\\)", "").replaceAll(", (left|right)", "");
        return bare.substring(0, 1).toLowerCase(Locale.ROOT) + bare.substring(1);
    }
}
