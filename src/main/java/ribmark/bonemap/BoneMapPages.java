package ribmark.bonemap;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribmark.anatomy.Bone;
import ribmark.anatomy.Formula;
import ribmark.basics.NotFound;
import ribmark.basics.Refused;
import ribmark.basics.Words;
import ribmark.curriculum.Curriculum;
import ribmark.curriculum.Step;
import ribmark.curriculum.StepPicture;
import ribmark.curriculum.Term;
import ribmark.moved.Way;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Where the whole skeleton is looked at, and the files of all its pictures. */
public final class BoneMapPages {

    /** A bone as listed, with the words the trade has for it. */
    public record Row(String id, String name, String latin, String region, String trade) {}

    /** One view of the skeleton and its parts drawn larger. */
    public record View(StepPicture picture, List<Part> parts) {}

    /** A part of the sheet. */
    public record Part(String name, StepPicture.File file) {}

    private static final Allow READERS = Allow.of(Role.ASSESSOR, Role.TUTOR, Role.APPRENTICE);

    /** Words for more bones than this say nothing about one of them: ours. */
    private static final int SO_MANY_BONES = 6;

    private final BoneMap map;
    private final BonePictures pictures;
    private final Curriculum curriculum;

    /** The pages show this map. */
    public BoneMapPages(BoneMap map) {
        this.map = map;
        this.pictures = new BonePictures(map);
        this.curriculum = map.curriculum();
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/bones", this::bones, READERS);
        routes.file(
                "/bone-map/steps/{step}.svg",
                ctx -> step(ctx, BoneMap::touched, s -> s.whole(BonePictures.IN_A_PART)),
                READERS);
        routes.file(
                "/bone-map/steps/{step}/close.svg",
                ctx -> step(ctx, BoneMap::touched, s -> s.closeUp(BonePictures.NARROW)),
                READERS);
        routes.file(
                "/bone-map/steps/{step}/pieces.svg",
                ctx -> step(ctx, BoneMap::pieces, s -> s.whole(BonePictures.IN_A_PART)),
                READERS);
        routes.file(
                "/bone-map/steps/{step}/pieces-close.svg",
                ctx -> step(ctx, BoneMap::pieces, s -> s.closeUp(BonePictures.NARROW)),
                READERS);
        routes.file(
                BonePictures.ASKED + "{bones}.svg", ctx -> asked(ctx, s -> s.whole(BonePictures.IN_A_PART)), READERS);
        routes.file(
                BonePictures.ASKED + "{bones}/close.svg",
                ctx -> asked(ctx, s -> s.closeUp(BonePictures.NARROW)),
                READERS);
        String ran = BonePictures.RAN + "{line}/{towards}/{by}/{side}/{view}";
        routes.file(ran + ".svg", ctx -> ran(ctx, s -> s.whole(BonePictures.IN_A_PART)), READERS);
        routes.file(ran + "/close.svg", ctx -> ran(ctx, s -> s.closeUp(BonePictures.NARROW)), READERS);
        routes.file("/bone-map/{view}.svg", this::view, READERS);
        routes.file("/bone-map/{view}/{crop}.svg", this::crop, READERS);
    }

    private void step(Context ctx, BiFunction<BoneMap, Step, Optional<Scene>> scenes, Function<Scene, String> drawing) {
        BoneMap animal = animal(ctx);
        Step step = animal.curriculum().breakdown().step(ctx.pathParam("step")).orElseThrow(NotFound::new);
        Scene scene = scenes.apply(animal, step).orElseThrow(NotFound::new);
        send(ctx, animal, () -> drawing.apply(scene));
    }

    /** The animal asked for; a picture of one that cannot be is not there. */
    private BoneMap animal(Context ctx) {
        String formula = ctx.queryParam("formula");
        try {
            return formula == null ? map : map.on(curriculum.on(Formula.parse(formula)));
        } catch (Refused nobodyHasIt) {
            throw new NotFound();
        }
    }

    /** Any few bones may be asked for, so these are not kept. */
    private void asked(Context ctx, Function<Scene, String> drawing) {
        List<String> bones = List.of(ctx.pathParam("bones").split("-"));
        Scene scene = Optional.of(bones)
                .filter(few -> few.size() <= BonePictures.MOST_ASKED)
                .flatMap(map::asked)
                .orElseThrow(NotFound::new);
        answer(ctx, drawing.apply(scene));
        keepLong(ctx);
    }

    private void ran(Context ctx, Function<Scene, String> drawing) {
        List<String> words =
                Stream.of("line", "towards", "by", "side").map(ctx::pathParam).toList();
        BoneMap animal = animal(ctx);
        Scene scene = Way.of(animal.curriculum().breakdown(), words)
                .map(way -> animal.ran(way).get(ctx.pathParam("view")))
                .orElseThrow(NotFound::new);
        send(ctx, animal, () -> drawing.apply(scene));
    }

    private void view(Context ctx) {
        String view = known(ctx.pathParam("view"));
        Optional<String> formula = Optional.ofNullable(ctx.queryParam("formula"));
        if (formula.isPresent()) {
            answer(ctx, map.plain(varied(view, formula.get())).whole(BonePictures.ACROSS));
        } else {
            send(ctx, map, () -> map.plain(map.drawing(view)).whole(BonePictures.ACROSS));
        }
    }

    private String known(String view) {
        return Optional.of(view).filter(map.views()::contains).orElseThrow(NotFound::new);
    }

    private Drawing varied(String view, String formula) {
        try {
            return map.drawing(view, Formula.parse(formula));
        } catch (Refused nobodyHasIt) {
            throw new NotFound();
        }
    }

    private void crop(Context ctx) {
        Drawing drawing = map.drawing(known(ctx.pathParam("view")));
        String name = ctx.pathParam("crop");
        if (name.equals("whole")) {
            send(ctx, map, () -> map.plain(drawing).whole(BonePictures.NARROW));
            return;
        }
        Box box = Optional.ofNullable(drawing.crops().get(name)).orElseThrow(NotFound::new);
        send(ctx, map, () -> new SvgWriter(map.plain(drawing), box, BonePictures.IN_A_PART).write());
    }

    /** A picture is drawn once, and kept by the browser for as long as the content stays the same. */
    private void send(Context ctx, BoneMap animal, Supplier<String> drawing) {
        answer(ctx, animal.file(ctx.path(), drawing));
        keepLong(ctx);
    }

    private void keepLong(Context ctx) {
        if (pictures.version().equals(ctx.queryParam("v"))) {
            ctx.header("Cache-Control", "private, max-age=31536000, immutable");
        }
    }

    private static void answer(Context ctx, String svg) {
        ctx.contentType("image/svg+xml").result(svg);
    }

    private void bones(Context ctx) {
        List<Bone> all = curriculum.skeleton().bones();
        ctx.render(
                "bonemap/bones.html",
                Map.of(
                        "title",
                                "Every bone of the "
                                        + curriculum.breakdown().title().toLowerCase(java.util.Locale.ROOT),
                        "count", Words.count(all.size(), "bone", "bones"),
                        "views", map.views().stream().map(this::shown).toList(),
                        "rows", all.stream().map(this::row).toList()));
    }

    private View shown(String view) {
        List<Part> parts = new ArrayList<>();
        map.drawing(view).crops().keySet().forEach(crop -> parts.add(new Part(crop, pictures.part(view, crop))));
        return new View(pictures.whole(view), parts);
    }

    private Row row(Bone bone) {
        String trade = curriculum.terms().stream()
                .filter(term -> term.bones().contains(bone.id()) && term.bones().size() <= SO_MANY_BONES)
                .map(Term::trade)
                .distinct()
                .collect(Collectors.joining(", "));
        return new Row(bone.id(), bone.name(), bone.latin(), bone.region(), trade);
    }
}
