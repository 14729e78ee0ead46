package ribmark.bonemap;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Part;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.curriculum.BoneWords;
import ribmark.curriculum.MapPoint;

/**
 * The words on the bones: the id of a bone of the midline that has a number, the number alone on a rib, the name of any other
 * bone; gristle of the ribs and the small bones of the joints are left without.
 */
final class Naming {

    private static final Pattern NUMBERED = Pattern.compile("([A-Za-z]+)([0-9]+)[LR]?");

    private final Drawing drawing;
    private final BoneWords words;

    Naming(Drawing drawing) {
        this.drawing = drawing;
        this.words = new BoneWords(drawing.animal());
    }

    /** The words on these bones. */
    List<Tag> tags(List<String> ids, boolean heavy) {
        return ids.stream().flatMap(id -> tag(id, ids, heavy).stream()).toList();
    }

    private Optional<Tag> tag(String id, List<String> all, boolean heavy) {
        Optional<Shape> shape = drawing.bone(id);
        Optional<Bone> bone = drawing.animal().bone(id);
        if (shape.isEmpty() || bone.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> short_ = number(bone.get());
        if (short_.isPresent()) {
            String digits = short_.get().replaceAll("\\D", "");
            return Optional.of(Tag.fixed(shape.get().label(), short_.get(), digits));
        }
        boolean nameless = NUMBERED.matcher(id).matches();
        boolean said = bone.get().side() == Side.RIGHT && all.contains(id.substring(0, id.length() - 1) + "L");
        return nameless || said ? Optional.empty() : Optional.of(near(shape.get(), name(id), heavy));
    }

    private static Tag near(Shape bone, String text, boolean heavy) {
        return Tag.near(anchor(bone), bone.points(), text, heavy);
    }

    /** The id of a numbered bone of the midline, the number of a rib; nothing for other bones. */
    private Optional<String> number(Bone bone) {
        Matcher numbered = NUMBERED.matcher(bone.id());
        if (!numbered.matches()) {
            return Optional.empty();
        }
        return bone.isMidline()
                ? Optional.of(bone.id())
                : Optional.of(numbered.group(2)).filter(number -> isRib(bone));
    }

    /** A rib is a sided bone in a region that vertebrae have too. */
    private boolean isRib(Bone bone) {
        return drawing.animal().bones().stream()
                .filter(other -> other.isMidline() && other.region().equals(bone.region()))
                .flatMap(other -> Optional.of(NUMBERED.matcher(other.id())).filter(Matcher::matches).stream())
                .anyMatch(vertebra -> drawing.animal().regions().contains(vertebra.group(1)));
    }

    private String name(String id) {
        return words.say(List.of(id)).replaceAll(", (left|right)$", "");
    }

    /** A spot on the bone. */
    static MapPoint anchor(Shape bone) {
        List<MapPoint> outline = bone.curve().flat();
        MapPoint middle = bone.box().middle();
        return Halving.inside(middle, outline) || !Halving.inside(bone.label(), outline) ? middle : bone.label();
    }

    /** What the short words stand for, one row for each row of like bones. */
    List<Mark> marks(List<String> ids) {
        Map<String, List<Bone>> rows = new LinkedHashMap<>();
        ids.stream()
                .filter(drawing::shows)
                .flatMap(id -> drawing.animal().bone(id).stream())
                .filter(bone -> number(bone).isPresent())
                .forEach(bone -> rows.computeIfAbsent(bone.id().replaceAll("[0-9]+[LR]?", ""), row -> new ArrayList<>())
                        .add(bone));
        return rows.values().stream().map(this::mark).toList();
    }

    private Mark mark(List<Bone> row) {
        String short_ =
                row.stream().flatMap(bone -> number(bone).stream()).distinct().collect(Collectors.joining(" "));
        return new Mark(short_, say(row.stream().map(Bone::id).toList()));
    }

    /** Bones in words. */
    String say(List<String> ids) {
        return Words.capital(words.say(ids));
    }

    /** Bones in words, inside a sentence: a region by its own name where all of it is there. */
    String sayIds(List<String> ids) {
        return words.sayParts(ids);
    }

    /** Parts of bones in words. */
    String sayParts(List<Part> parts) {
        return Words.capital(words.sayParts(parts.stream().map(Part::name).toList()));
    }
}
