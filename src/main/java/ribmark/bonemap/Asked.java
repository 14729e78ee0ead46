package ribmark.bonemap;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Some bones filled in and nothing named, to ask about or to show where something lies. */
final class Asked {

    private final Drawing drawing;
    private final List<String> bones;

    private Asked(Drawing drawing, List<String> bones) {
        this.drawing = drawing;
        this.bones = bones;
    }

    /** In the first view that shows them all, if one does. */
    static Optional<Asked> of(List<Drawing> views, List<String> bones) {
        return bones.isEmpty()
                ? Optional.empty()
                : views.stream()
                        .filter(view -> bones.stream().allMatch(view::shows))
                        .findFirst()
                        .map(view -> new Asked(view, bones));
    }

    Scene scene(String subject) {
        Map<String, List<Portion>> portions = new HashMap<>();
        drawing.limbs().stream().filter(this::isInTheWay).forEach(limb -> fade(limb, portions));
        bones.forEach(bone -> portions.put(bone, List.of(Portion.whole(bone, Fill.SOLID))));
        return new Scene(
                drawing,
                subject,
                "Filled in",
                portions,
                List.of(),
                List.of(),
                List.of(),
                bones.stream()
                        .flatMap(bone -> drawing.bone(bone).stream())
                        .map(Shape::box)
                        .toList());
    }

    /** Whether a limb with none of these bones lies over one of them. */
    private boolean isInTheWay(String limb) {
        return bones.stream().noneMatch(bone -> drawing.group(bone).equals(limb))
                && bones.stream()
                        .anyMatch(bone -> !drawing.lyingOver(bone, limb).isEmpty());
    }

    private void fade(String limb, Map<String, List<Portion>> portions) {
        drawing.bones().keySet().stream()
                .filter(bone -> drawing.group(bone).equals(limb))
                .forEach(bone -> portions.put(bone, List.of(Portion.faint(bone))));
    }
}
