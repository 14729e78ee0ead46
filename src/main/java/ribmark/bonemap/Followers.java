package ribmark.bonemap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Skeleton;
import ribmark.curriculum.MapRow;
import ribmark.curriculum.MapRow.Role;

/** Which region of the spine each bone and line moves with, as the rows of one view say. */
final class Followers {

    private static final Pattern NUMBERED = Pattern.compile("([A-Za-z]+)([0-9]+)[LR]?");

    private final Skeleton animal;
    private final Map<String, String> goesWith = new HashMap<>();
    private final Map<String, String> lines = new HashMap<>();
    private final Map<String, String> ends = new HashMap<>();

    Followers(Skeleton animal, List<MapRow> rows) {
        this.animal = animal;
        rows.forEach(row -> {
            if (row.role() == Role.WITH) {
                goesWith.put(row.id(), row.of());
            } else if (row.role() == Role.LINE_WITH) {
                lines.put(row.id(), row.of());
            } else if (row.role() == Role.END) {
                ends.put(row.id(), row.of());
            }
        });
    }

    /** The place of the region a bone moves with, from the head on; every bone moves with one. */
    int region(String boneId) {
        Bone bone = animal.bone(boneId).orElseThrow();
        Optional<Integer> own = bone.isMidline() ? place(boneId) : Optional.empty();
        return own.orElseGet(() -> end(bone.region()).flatMap(this::place).orElseGet(() -> beside(bone)));
    }

    /** The place of the region a whole line moves with; nothing when its points move one by one. */
    Optional<Integer> regionOfLine(String line) {
        return Optional.ofNullable(lines.get(line)).flatMap(this::end).flatMap(this::place);
    }

    /** The place of the region the last point of a line moves with, where it alone does. */
    Optional<Integer> regionOfEnd(String line) {
        return Optional.ofNullable(ends.get(line)).flatMap(this::end).flatMap(this::place);
    }

    /** The limb each bone belongs to, or its region when that belongs to no limb. */
    Map<String, String> groups() {
        Map<String, String> groups = new HashMap<>();
        animal.bones().forEach(bone -> {
            String next = goesWith.getOrDefault(bone.region(), "");
            groups.put(bone.id(), goesWith.containsKey(next) ? next : bone.region());
        });
        return groups;
    }

    /** Where the chain of what goes with what ends; nothing when it does not begin. */
    private Optional<String> end(String from) {
        List<String> way = new ArrayList<>(List.of(from));
        String now = from;
        while (goesWith.containsKey(now) && !way.contains(goesWith.get(now))) {
            now = goesWith.get(now);
            way.add(now);
        }
        return Optional.of(now);
    }

    private Optional<Integer> place(String vertebra) {
        Matcher numbered = NUMBERED.matcher(vertebra);
        int place = numbered.matches() ? animal.regions().indexOf(numbered.group(1)) : -1;
        return place < 0 ? Optional.empty() : Optional.of(place);
    }

    /** A rib moves with the vertebrae of its own region. */
    private int beside(Bone bone) {
        return animal.bones().stream()
                .filter(other -> other.isMidline() && other.region().equals(bone.region()))
                .flatMap(other -> place(other.id()).stream())
                .findFirst()
                .orElse(0);
    }
}
