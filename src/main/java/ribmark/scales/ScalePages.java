package ribmark.scales;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import ribmark.basics.Weight;
import ribmark.basics.Words;
import ribmark.curriculum.Curriculum;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.scoring.PermissibleErrors;
import ribmark.scoring.Scale;
import ribmark.web.Allow;
import ribmark.web.Choice;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;

/** The scales of the college, and the check weight put on each every morning. */
public final class ScalePages {

    /** One scale: what it can tell apart, what it may be wrong by, and when it was last checked. */
    public record Row(String name, String division, String permitted, String checked) {}

    /** One check as it is read. */
    public record Past(String when, String scale, String nominal, String reading, String found, String by) {}

    private static final double EXAMPLE_G = 2000;
    private static final int SHOWN = 30;

    private final ScaleCheckStore store;
    private final Supplier<Curriculum> curriculum;
    private final ZoneId zone;

    /** The curriculum brings the scales; the zone is the college's. */
    public ScalePages(ScaleCheckStore store, Supplier<Curriculum> curriculum, ZoneId zone) {
        this.store = store;
        this.curriculum = curriculum;
        this.zone = zone;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/scales", ctx -> render(ctx, Form.blank()), Allow.of(Role.ASSESSOR, Role.TUTOR));
        routes.post("/scales/checks", this::keep, Allow.of(Role.ASSESSOR));
    }

    private void keep(Context ctx) {
        Form form = Form.typed(ctx);
        String scale = form.oneOf(
                "scale",
                "Scale",
                curriculum.get().scales().stream().map(Scale::id).toList());
        Optional<Weight> nominal = weight(form, "nominal", "Check weight");
        if (nominal.isPresent() && nominal.get().grams() == 0) {
            form.add(
                    "nominal", "Check weight: nothing weighs 0.000 kg. Type what is stamped on it, for example 2.000.");
        }
        Optional<Weight> reading = weight(form, "reading", "The scale shows");
        if (form.wrong()) {
            render(ctx.status(422), form);
            return;
        }
        Scale checked = curriculum.get().scale(scale).orElseThrow();
        store.keep(checked, nominal.orElseThrow(), reading.orElseThrow(), Access.signedIn(ctx));
        Site.see(ctx, "/scales");
    }

    private static Optional<Weight> weight(Form form, String field, String name) {
        String typed = form.value(field);
        Optional<String> whyNot = Weight.whyNot(typed);
        whyNot.ifPresent(why -> form.add(field, name + ": " + why));
        return whyNot.isPresent() ? Optional.empty() : Optional.of(Weight.ofKilograms(typed));
    }

    private void render(Context ctx, Form form) {
        Acting acting = Access.signedIn(ctx);
        Curriculum content = curriculum.get();
        CheckedInWords checked = new CheckedInWords(store, zone);
        Map<String, Object> model = new HashMap<>();
        model.put(
                "scales",
                content.scales().stream().map(scale -> row(scale, checked)).toList());
        model.put(
                "choices",
                content.scales().stream()
                        .map(scale -> new Choice(scale.id(), scale.name(), checked.of(scale.id())))
                        .toList());
        model.put("past", store.all().stream().limit(SHOWN).map(this::past).toList());
        model.put("writes", acting.as(Role.ASSESSOR));
        model.put("form", form);
        ctx.render("scales/scales.html", model);
    }

    private static Row row(Scale scale, CheckedInWords checked) {
        String ofClass = scale.permissible()
                .map(PermissibleErrors::accuracyClass)
                .map(name -> ", class " + name)
                .orElse("");
        return new Row(
                scale.name(),
                figure(scale.divisionG()) + "\u00a0g" + ofClass,
                permitted(scale),
                Words.capital(checked.of(scale.id())));
    }

    /** What it may be wrong by in use under a check weight one often finds. */
    private static String permitted(Scale scale) {
        OptionalDouble permitted = scale.permissibleG(EXAMPLE_G);
        return permitted.isEmpty()
                ? "no limit is known for it"
                : figure(permitted.getAsDouble()) + "\u00a0g under " + new Weight((long) EXAMPLE_G);
    }

    private static String figure(double grams) {
        return grams == Math.rint(grams) ? Long.toString((long) grams) : String.format(Locale.ROOT, "%.1f", grams);
    }

    private Past past(ScaleCheck check) {
        String name = curriculum.get().scale(check.scale()).map(Scale::name).orElse(check.scale());
        return new Past(
                Words.moment(check.at(), zone),
                name,
                check.nominal().kilograms(),
                check.reading().kilograms(),
                CheckedInWords.found(check),
                check.by().name());
    }
}
