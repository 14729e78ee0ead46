package ribmark.bonemap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import ribmark.curriculum.MapPoint;

/** Finds for every word of a picture where it can stand without lying over another word or, if it may move, over a bone. */
final class Lettering {

    /** Sizes in pixels on the screen, and how wide a letter is in them: ours, tried out on three sizes of screen. */
    private static final double SMALL = 11;

    private static final double HEAVY = 16;
    private static final double HEAVY_WHERE_NARROW = 13;
    private static final double NARROW = 500;
    private static final double WIDTH_OF_LETTER = 0.58;
    private static final double HEIGHT_OF_LINE = 0.9;

    /** A word farther from what it names than this, in pixels, gets a line to it. */
    private static final double FAR = 16;

    /** Below so many pixels a unit, the whole sheet on a telephone, numbers would lie on each other. */
    private static final double TOO_SMALL_FOR_NUMBERS = SvgWriter.TOO_SMALL_FOR_DETAILS;

    private static final double HALO = 3;

    private final Scene scene;
    private final Box window;
    private final double scale;
    private final Ground ground;
    private final List<Box> taken = new ArrayList<>();

    Lettering(Scene scene, Box window, double scale) {
        this.scene = scene;
        this.window = window;
        this.scale = scale;
        this.ground = new Ground(scene, window);
    }

    /** A word at its place, with a line to what it names when it stands apart. */
    record Letter(
            String text, MapPoint at, double size, double halo, boolean heavy, boolean onBlack, Optional<Lead> lead) {

        String svg() {
            return "<text x=\"" + Curve.number(at.x()) + "\" y=\"" + Curve.number(at.y() + size * 0.36)
                    + "\" font-family=\"Verdana, 'DejaVu Sans', sans-serif\" font-size=\"" + Curve.number(size)
                    + "\"" + (heavy ? " font-weight=\"700\"" : "") + " text-anchor=\"middle\" fill=\""
                    + (onBlack ? Ink.LEAF : Ink.INK)
                    + "\" stroke=\"" + (onBlack ? Ink.INK : Ink.LEAF) + "\" stroke-width=\"" + Curve.number(halo)
                    + "\" paint-order=\"stroke\">" + SvgWriter.text(text) + "</text>\n";
        }
    }

    /** A thin line from a word to what it names, in ink over white. */
    record Lead(MapPoint from, MapPoint to, double width) {

        String svg() {
            String path = "<path d=\"M" + Curve.pair(from) + "L" + Curve.pair(to) + "\" fill=\"none\" stroke=\"";
            return path + Ink.LEAF + "\" stroke-width=\"" + SvgWriter.decimals(width * 3.5) + "\"/>" + path + Ink.INK
                    + "\" stroke-width=\"" + SvgWriter.decimals(width) + "\"/>\n";
        }
    }

    List<Letter> letters() {
        List<Letter> letters = new ArrayList<>();
        scene.tags().stream()
                .filter(tag -> !tag.free() && scale >= TOO_SMALL_FOR_NUMBERS)
                .forEach(tag -> fixed(tag).ifPresent(letters::add));
        scene.tags().stream().filter(Tag::free).forEach(tag -> free(tag).ifPresent(letters::add));
        return letters;
    }

    private double size(Tag tag) {
        double heavy = window.width() * scale < NARROW ? HEAVY_WHERE_NARROW : HEAVY;
        return (tag.heavy() ? heavy : SMALL) / scale;
    }

    private Box box(MapPoint at, String text, double size) {
        return Box.centred(at, text.length() * size * WIDTH_OF_LETTER, size * HEIGHT_OF_LINE);
    }

    /** A word that looks for a place keeps away from the others. */
    private Box roomy(MapPoint at, String text, double size) {
        return Box.centred(at, (text.length() + 1.5) * size * WIDTH_OF_LETTER, size * 1.5);
    }

    private Optional<Letter> fixed(Tag tag) {
        for (String text : tag.texts()) {
            Box box = box(tag.at(), text, size(tag));
            if (window.holds(box) && taken.stream().noneMatch(box::meets)) {
                taken.add(box);
                return Optional.of(letter(tag, text, tag.at(), Optional.empty()));
            }
        }
        return Optional.empty();
    }

    private Letter letter(Tag tag, String text, MapPoint at, Optional<Lead> lead) {
        return new Letter(text, at, size(tag), HALO / scale, tag.heavy(), isOnBlack(at), lead);
    }

    /** On a solid bone a word is written white on black. */
    private boolean isOnBlack(MapPoint at) {
        return scene.drawing().bones().values().stream()
                .filter(bone -> scene.portions(bone.id()).get(0).fill() == Fill.SOLID)
                .anyMatch(bone -> Halving.inside(at, bone.curve().flat()));
    }

    private Optional<Letter> free(Tag tag) {
        if (!window.holds(tag.at())) {
            return Optional.empty();
        }
        String text = tag.texts().get(0);
        Function<MapPoint, Box> shape = at -> roomy(at, text, size(tag));
        Optional<MapPoint> place =
                ground.best(tag, shape, taken).or(() -> ground.bare().best(tag, shape, taken));
        return place.map(at -> {
            Box box = box(at, text, size(tag));
            taken.add(box);
            return letter(tag, text, at, lead(box, tag.nearest(box)));
        });
    }

    private Optional<Lead> lead(Box box, MapPoint to) {
        MapPoint from = box.nearest(to);
        return to.minus(from).length() * scale < FAR
                ? Optional.empty()
                : Optional.of(new Lead(from, to, Math.max(1, 1 / scale)));
    }
}
