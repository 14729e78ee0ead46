package ribmark.bonemap;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribmark.basics.Newest;
import ribmark.competence.Standing;
import ribmark.curriculum.Step;
import ribmark.curriculum.StepPicture;

/**
 * Where an apprentice stands, drawn on the whole animal and on the parts of it that a telephone can show. A file says nothing of
 * whose it is; the page does.
 */
public final class StandingPictures {

    /** The name under which the whole sheet is asked for. */
    private static final String WHOLE = "whole";

    /** A picture with its parts drawn larger, and its words. */
    public record Shown(StepPicture picture, List<Part> parts) {}

    /** A part of the sheet, larger. */
    public record Part(String name, StepPicture.File file) {}

    /** Files are drawn for a little less than they are shown at, so that their words are read with ease; in pixels, ours. */
    private static final double WIDE = 640;

    private static final double NARROW = 300;

    /** So many files are remembered, for a reader who comes back: ours. */
    private static final int FILES = 40;

    private final BoneMap map;
    private final Newest<List<String>, Optional<String>> files = new Newest<>(FILES);

    /** The pictures are drawn on this map. */
    public StandingPictures(BoneMap map) {
        this.map = map;
    }

    /** What a page shows; the files are asked for below this address, by the name of each part. */
    public Shown shown(String whose, Map<String, Standing> held, String at) {
        StandingScene standings = standings(held);
        Scene scene = standings.scene();
        List<Part> parts = new ArrayList<>();
        crops(standings).forEach((name, box) -> parts.add(new Part(name, file(at, name, box, BonePictures.NARROW))));
        StepPicture.File whole = file(at, WHOLE, scene.drawing().field(), BonePictures.ACROSS);
        List<StepPicture.Words> words = scene.marks().stream()
                .map(mark -> new StepPicture.Words(mark.mark(), mark.meaning()))
                .toList();
        return new Shown(
                new StepPicture(scene.heading(), whose + ": " + scene.heading(), scene.view(), whole, whole, words),
                parts);
    }

    /** The file of one part; nothing for a part that is not shown. */
    public Optional<String> file(Map<String, Standing> held, String part) {
        List<String> key = new ArrayList<>(List.of(part));
        held.forEach((step, standing) -> key.add(step + " " + standing.word()));
        return files.get(key, unknown -> drawn(standings(held), part));
    }

    private Optional<String> drawn(StandingScene standings, String part) {
        Scene scene = standings.scene();
        return part.equals(WHOLE)
                ? Optional.of(scene.whole(WIDE))
                : Optional.ofNullable(crops(standings).get(part)).map(box -> new SvgWriter(scene, box, NARROW).write());
    }

    private StandingScene standings(Map<String, Standing> held) {
        return new StandingScene(
                map.curriculum(), drawing(), step -> held.getOrDefault(step.id(), Standing.NOT_STARTED));
    }

    private Drawing drawing() {
        return map.drawing(map.views().get(0));
    }

    /** The parts that together show every step that has a bone in sight. */
    private Map<String, Box> crops(StandingScene standings) {
        List<Step> left = new ArrayList<>(map.curriculum().breakdown().steps());
        Map<String, Box> crops = new LinkedHashMap<>();
        drawing().crops().forEach((name, box) -> {
            if (left.removeIf(step -> standings
                    .largest(step)
                    .filter(bone -> box.holds(Naming.anchor(bone)))
                    .isPresent())) {
                crops.put(name, box);
            }
        });
        return crops;
    }

    private static StepPicture.File file(String at, String part, Box box, double pixels) {
        return new StepPicture.File(
                at + part + ".svg", Math.round(pixels), Math.round(box.height() * pixels / box.width()));
    }
}
