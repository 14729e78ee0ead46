package ribmark.bonemap;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.curriculum.StepPicture;
import ribmark.moved.Way;

/** The addresses of the pictures, their sizes and their words, for pages to show. */
public final class BonePictures implements StepPicture.Book {

    /** How wide pictures are shown, in pixels: in a part of a page, across a page, and on a telephone; ours. */
    static final double IN_A_PART = 740;

    static final double ACROSS = 960;
    static final double NARROW = 356;

    /** Where pictures of some bones alone are. */
    static final String ASKED = "/bone-map/bones/";

    /** Where pictures of lines that ran elsewhere are. */
    static final String RAN = "/bone-map/ran/";

    /** A picture of more bones than that points at none of them: ours. */
    static final int MOST_ASKED = 6;

    private final BoneMap map;

    /** The pictures are those of this map. */
    public BonePictures(BoneMap map) {
        this.map = map;
    }

    @Override
    public List<StepPicture> of(Curriculum curriculum, Step step) {
        return new BonePictures(map.on(curriculum)).of(step);
    }

    private List<StepPicture> of(Step step) {
        String at = "/bone-map/steps/" + step.id();
        return Stream.of(
                        map.touched(step).map(scene -> picture(scene, at + ".svg", at + "/close.svg", IN_A_PART)),
                        map.pieces(step)
                                .map(scene -> picture(scene, at + "/pieces.svg", at + "/pieces-close.svg", IN_A_PART)))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Some bones alone, without their names; nothing when they are too many or no view shows them all. */
    public Optional<StepPicture> asked(List<String> bones) {
        String at = ASKED + String.join("-", bones);
        return Optional.of(bones)
                .filter(few -> few.size() <= MOST_ASKED)
                .flatMap(map::asked)
                .map(scene -> picture(scene, at + ".svg", at + "/close.svg", IN_A_PART));
    }

    /** A line that ran elsewhere, in each view it can be seen in. */
    public List<StepPicture> ran(Curriculum curriculum, Way way) {
        return new BonePictures(map.on(curriculum)).ran(way);
    }

    private List<StepPicture> ran(Way way) {
        return map.ran(way).entrySet().stream()
                .map(seen -> {
                    String at = RAN + String.join("/", way.words()) + "/" + seen.getKey();
                    return picture(seen.getValue(), at + ".svg", at + "/close.svg", IN_A_PART);
                })
                .toList();
    }

    /** What a question shows: a line that ran elsewhere by its words, else some bones alone. */
    public Optional<StepPicture> shown(List<String> shows) {
        return Way.of(map.curriculum().breakdown(), shows)
                .map(way -> ran(way).stream().findFirst())
                .orElseGet(() -> asked(shows));
    }

    /** The whole skeleton in one view. */
    StepPicture whole(String view) {
        String at = "/bone-map/" + view;
        return picture(map.plain(map.drawing(view)), at + ".svg", at + "/whole.svg", ACROSS);
    }

    /** A part of the skeleton, larger. */
    StepPicture.File part(String view, String crop) {
        Box box = map.drawing(view).crops().get(crop);
        return file("/bone-map/" + view + "/" + crop + ".svg", box, IN_A_PART);
    }

    private StepPicture picture(Scene scene, String wide, String narrow, double pixels) {
        return new StepPicture(
                scene.heading(),
                scene.title(),
                scene.view(),
                file(wide, scene.drawing().field(), pixels),
                file(narrow, scene.closeUpBox(), NARROW),
                scene.marks().stream()
                        .map(mark -> new StepPicture.Words(mark.mark(), mark.meaning()))
                        .toList());
    }

    private StepPicture.File file(String address, Box box, double pixels) {
        return new StepPicture.File(
                address + "?v=" + version() + map.animal(),
                Math.round(pixels),
                Math.round(box.height() * pixels / box.width()));
    }

    /** Changes when any content does, so that browsers may keep a picture for a year. */
    String version() {
        return map.curriculum().version().substring(0, 10);
    }
}
