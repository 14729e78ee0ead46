package ribmark.bonemap;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import ribmark.anatomy.Bone;
import ribmark.bonemap.Lettering.Lead;
import ribmark.bonemap.Lettering.Letter;
import ribmark.curriculum.MapPoint;
import ribmark.curriculum.MapRow.Role;

/** Writes a scene as one file of scalable vector graphics that needs no style sheet and no script. */
final class SvgWriter {

    private static final double FAINT = 0.38;
    private static final double GRISTLE = 1.7;

    /** Narrower than this for the whole sheet, lines inside vertebrae are left out. */
    static final double TOO_SMALL_FOR_DETAILS = 500.0 / 1600;

    private final Scene scene;
    private final Box window;
    private final double scale;
    private final StringBuilder svg = new StringBuilder();
    private final Map<String, String> clips = new LinkedHashMap<>();

    SvgWriter(Scene scene, Box window, double pixels) {
        this.scene = scene;
        this.window = window;
        this.scale = pixels / window.width();
    }

    String write() {
        StringBuilder shapes = new StringBuilder();
        scene.drawing().all(Role.CONTEXT).forEach(soft -> shapes.append(outline(soft)));
        scene.drawing().all(Role.BONE).stream().filter(this::inSight).forEach(bone -> shapes.append(bone(bone)));
        scene.lines().forEach(line -> shapes.append(line(line)));
        List<Letter> letters = new Lettering(scene, window, scale).letters();
        letters.forEach(letter -> letter.lead().map(Lead::svg).ifPresent(shapes::append));
        letters.forEach(letter -> shapes.append(letter.svg()));
        head();
        return svg.append(shapes).append("</g></svg>\n").toString();
    }

    private void head() {
        String box = String.join(
                " ",
                Curve.number(window.left()),
                Curve.number(window.top()),
                Curve.number(window.width()),
                Curve.number(window.height()));
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"" + box + "\" width=\""
                + Math.round(window.width() * scale) + "\" height=\"" + Math.round(window.height() * scale)
                + "\" role=\"img\" aria-labelledby=\"title desc\">\n<title id=\"title\">" + text(scene.title())
                + "</title>\n<desc id=\"desc\">" + text(scene.description()) + "</desc>\n<defs>");
        used().forEach(fill -> svg.append(fill.definition(scale)));
        clips.forEach((path, id) -> svg.append("<clipPath id=\"" + id + "\"><path d=\"" + path + "\"/></clipPath>"));
        svg.append("</defs>\n<rect x=\"" + Curve.number(window.left()) + "\" y=\"" + Curve.number(window.top())
                + "\" width=\"100%\" height=\"100%\" fill=\"" + Ink.LEAF + "\"/>\n"
                + "<g stroke-linejoin=\"round\" stroke-linecap=\"round\">\n");
    }

    private Set<Fill> used() {
        return scene.portions().values().stream()
                .flatMap(List::stream)
                .map(Portion::fill)
                .filter(Fill::isPattern)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Fill.class)));
    }

    private boolean inSight(Shape shape) {
        return shape.box().meets(window);
    }

    private static String outline(Shape soft) {
        return "<path d=\"" + soft.curve().path() + "\" fill=\"" + Ink.PAPER + "\" stroke=\"" + Ink.RULE
                + "\" stroke-width=\"1.2\"/>\n";
    }

    private String bone(Shape bone) {
        StringBuilder all =
                new StringBuilder("<g id=\"" + bone.id() + "\"><title>" + text(name(bone.id())) + "</title>");
        for (Portion portion : scene.portions(bone.id())) {
            all.append(portion(bone, portion));
        }
        return all.append("</g>\n").toString();
    }

    private String name(String id) {
        return scene.drawing().animal().bone(id).map(Bone::name).orElse(id);
    }

    private String portion(Shape bone, Portion portion) {
        StringBuilder all =
                new StringBuilder(openClips(portion) + (portion.faint() ? "<g opacity=\"" + FAINT + "\">" : ""));
        boolean gristle = bone.stroke() < GRISTLE;
        boolean solid = portion.fill() == Fill.SOLID;
        String fill = portion.fill() == Fill.PLAIN && gristle
                ? Ink.BUFF
                : portion.fill().paint();
        String ink = solid ? Ink.LEAF : gristle ? Ink.RULE : Ink.INK;
        double width = portion.fill().edge() * Math.max(bone.stroke(), (gristle ? 0.75 : 0.95) / scale);
        all.append(path(bone, fill, ink, width));
        for (Shape detail : details(bone)) {
            all.append(path(detail, "none", solid ? Ink.LEAF : Ink.INK, Math.max(detail.stroke(), 0.6 / scale)));
        }
        return all.append("</g>".repeat(portion.clips().size() + (portion.faint() ? 1 : 0)))
                .toString();
    }

    private List<Shape> details(Shape bone) {
        boolean vertebra =
                scene.drawing().animal().bone(bone.id()).map(Bone::isMidline).orElse(false);
        return vertebra && scale < TOO_SMALL_FOR_DETAILS
                ? List.of()
                : scene.drawing().all(Role.DETAIL).stream()
                        .filter(detail -> detail.of().equals(bone.id()))
                        .toList();
    }

    private static String path(Shape shape, String fill, String ink, double width) {
        return "<path d=\"" + shape.curve().path() + "\" fill=\"" + fill + "\" stroke=\"" + ink + "\" stroke-width=\""
                + decimals(width) + "\"/>";
    }

    private String openClips(Portion portion) {
        StringBuilder open = new StringBuilder();
        for (List<MapPoint> clip : portion.clips()) {
            String path = clip.stream().map(Curve::pair).collect(Collectors.joining("L", "M", "Z"));
            String id = clips.computeIfAbsent(path, each -> "clip-" + (clips.size() + 1));
            open.append("<g clip-path=\"url(#" + id + ")\">");
        }
        return open.toString();
    }

    private String line(DrawnLine line) {
        double black = Math.max(3.4, 1.8 / scale);
        double white = Math.max(8, 4.2 / scale);
        String path = "<path d=\"" + line.shape().curve().path() + "\" fill=\"none\" stroke=\"";
        List<String> lengths = line.stroke().dashes().stream()
                .map(breadths -> decimals(black * breadths))
                .toList();
        String dashes = lengths.isEmpty() ? "" : " stroke-dasharray=\"" + String.join(" ", lengths) + "\"";
        return "<g id=\"line-" + line.shape().id() + "\">" + path + Ink.LEAF + "\" stroke-width=\"" + decimals(white)
                + "\"/>" + path + Ink.INK + "\" stroke-linecap=\"butt\" stroke-width=\"" + decimals(black) + "\""
                + dashes + "/></g>\n";
    }

    static String decimals(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    static String text(String raw) {
        return raw.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
