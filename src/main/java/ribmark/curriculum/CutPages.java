package ribmark.curriculum;

import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;

/** Every named piece of the carcase on one page: what it is, which bones make it, where it comes free, what others call it. */
public final class CutPages {

    /** A piece as its reader sees it. */
    public record Row(
            String id,
            String name,
            String comes,
            String becomes,
            String text,
            String bones,
            List<Step> freed,
            List<Elsewhere> elsewhere,
            List<Known> known) {}

    /** The same piece in a published standard, and how far the two were compared. */
    public record Elsewhere(String called, String note, String compared) {}

    private static final Map<Cut.Becomes, String> BECOMES = Map.of(
            Cut.Becomes.PARTED, "parted further",
            Cut.Becomes.SALEABLE, "sold",
            Cut.Becomes.BONE, "goes to bone",
            Cut.Becomes.OFFCUT, "an offcut");

    private final Curriculum curriculum;
    private final BoneWords words;

    /** The cuts are those of this curriculum. */
    public CutPages(Curriculum curriculum) {
        this.curriculum = curriculum;
        this.words = new BoneWords(curriculum.skeleton());
    }

    /** Adds the address. */
    public void addTo(Routes routes) {
        routes.page("/cuts", this::all, Allow.of(Role.ASSESSOR, Role.TUTOR, Role.APPRENTICE));
    }

    private void all(Context ctx) {
        List<Row> rows = curriculum.cuts().stream().map(this::row).toList();
        ctx.render("curriculum/cuts.html", Map.of("title", "Every cut of the " + animal(), "rows", rows));
    }

    private String animal() {
        return curriculum.breakdown().title().toLowerCase(Locale.ROOT);
    }

    private Row row(Cut cut) {
        List<String> bones =
                cut.sides().stream().flatMap(side -> cut.bones(side).stream()).toList();
        List<Step> freed = curriculum.breakdown().steps().stream()
                .filter(step -> step.frees().contains(cut.id()) || step.leaves().contains(cut.id()))
                .toList();
        return new Row(
                cut.id(),
                cut.name(),
                cut.each() ? "left and right" : "once",
                BECOMES.get(cut.becomes()),
                cut.text(),
                words.say(bones),
                freed,
                cut.sameAs().stream().map(this::elsewhere).toList(),
                known(cut));
    }

    private Elsewhere elsewhere(Cut.SameAs same) {
        return new Elsewhere(same.system() + ", " + same.number(), same.note().orElse(""), compared(same));
    }

    private String compared(Cut.SameAs same) {
        if (same.readIn().isEmpty()) {
            return "Number and name only; the bones were not compared.";
        }
        return same.differs().isEmpty()
                ? "Compared bone by bone: the same bones."
                : "Compared bone by bone: the two differ in " + words.say(same.differs()) + ", whole or in part.";
    }

    /** What the piece rests on, then where each number, and each boundary, was read. */
    private List<Known> known(Cut cut) {
        Stream<RestsOn> numbers = cut.sameAs().stream()
                .flatMap(same -> Stream.concat(
                        Stream.of(ground(same, same.source(), same.basis(), "Number ")),
                        same.readIn().stream().map(source -> ground(same, source, "published", "Boundary of "))));
        return Known.of(curriculum, Stream.concat(cut.restsOn().stream(), numbers));
    }

    private static RestsOn ground(Cut.SameAs same, String source, String basis, String what) {
        return new RestsOn(what + same.number(), source, basis, Optional.empty(), Optional.empty());
    }
}
