package ribmark.weighing;

import io.javalin.http.Context;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import ribmark.basics.Ids;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.curriculum.Curriculum;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;
import ribmark.weighing.TrimView.Field;
import ribmark.weighing.WeighUpView.Pair;
import ribmark.weighup.Numbers;

/** Where the keeper of a block sheet types what rule, gauge and counting say of the pieces, and the verdict stands beside it at once. */
public final class TrimPages {

    private static final Pattern MEASURED = Pattern.compile("[-−]?[0-9]{1,4}([.,][0-9]{1,3})?");
    private static final Pattern COUNTED = Pattern.compile("[0-9]{1,4}");

    private final WeighUpStore store;
    private final WeighedCarcases weighed;
    private final BlockSheetStore sheets;
    private final Supplier<Curriculum> curriculum;

    /** The sheet says which steps are watched, the curriculum what is measured there. */
    public TrimPages(
            WeighUpStore store, WeighedCarcases weighed, BlockSheetStore sheets, Supplier<Curriculum> curriculum) {
        this.store = store;
        this.weighed = weighed;
        this.sheets = sheets;
        this.curriculum = curriculum;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/block-sheets/{id}/trim", this::show, Allow.of(Role.ASSESSOR, Role.TUTOR));
        routes.post("/block-sheets/{id}/trim", this::keep, Allow.of(Role.ASSESSOR));
    }

    private void show(Context ctx) {
        BlockSheet sheet = sheet(ctx);
        Form form = Form.blank();
        kept(sheet).forEach(form::with);
        render(ctx, sheet, form);
    }

    private void keep(Context ctx) {
        BlockSheet sheet = sheet(ctx);
        Acting acting = Access.signedIn(ctx);
        sheet.mayBeWrittenBy(acting);
        Form form = Form.typed(ctx);
        List<Field> fields = TrimView.fields(sheet, curriculum.get());
        fields.forEach(field -> check(form, field));
        if (form.wrong()) {
            render(ctx.status(422), sheet, form);
            return;
        }
        Map<String, String> before = kept(sheet);
        for (Field field : fields) {
            String typed = plain(form.value(field.id()));
            if (!typed.equals(before.getOrDefault(field.id(), ""))) {
                Optional<String> value = Optional.of(typed).filter(text -> !text.isEmpty());
                store.measure(sheet.id(), field.measure().id(), field.side(), value, acting);
            }
        }
        Site.see(ctx, "/block-sheets/" + sheet.id() + "/trim");
    }

    private BlockSheet sheet(Context ctx) {
        return sheets.find(Ids.of(ctx.pathParam("id")), Access.signedIn(ctx));
    }

    private Map<String, String> kept(BlockSheet sheet) {
        Map<String, String> kept = new HashMap<>();
        store.trimOf(List.of(sheet.id()))
                .forEach(trim -> kept.put(TrimView.id(trim.measure(), trim.side()), trim.value()));
        return kept;
    }

    private static void check(Form form, Field field) {
        String typed = form.value(field.id());
        String said = field.label() + ": “" + shortened(typed) + "” ";
        boolean count = field.measure().isCount();
        if (typed.isEmpty()) {
            return;
        }
        if (!count && Numbers.couldBeThousands(typed)) {
            form.add(
                    field.id(),
                    said + "could be thousands or thousandths. Type it with a point, for example "
                            + typed.replace(',', '.') + ".");
        } else if (!(count ? COUNTED : MEASURED).matcher(typed).matches()) {
            form.add(
                    field.id(),
                    said + "cannot be read. "
                            + (count
                                    ? "Type a whole number, for example 2."
                                    : "Type figures, for example " + example(field) + "."));
        } else if (typed.matches("[-−].*") && field.measure().lowest().isEmpty()) {
            form.add(field.id(), said + "is less than nothing. Type it without the minus.");
        }
    }

    private static String example(Field field) {
        return BigDecimal.valueOf(field.measure().division())
                .multiply(BigDecimal.valueOf(4))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String shortened(String typed) {
        return typed.length() <= 40 ? typed : typed.substring(0, 40) + "…";
    }

    /** A point for the comma, a plain sign. */
    private static String plain(String typed) {
        return typed.replace(',', '.').replace('−', '-');
    }

    private void render(Context ctx, BlockSheet sheet, Form form) {
        Acting acting = Access.signedIn(ctx);
        boolean writes = acting.as(Role.ASSESSOR) && sheet.isOpen() && sheet.isKeptBy(acting.id());
        List<Pair> strip = List.of(
                new Pair("Apprentice", sheet.apprentice().name(), false),
                new Pair("Carcase", sheet.carcase().title(), false),
                new Pair("Watched by", sheet.assessor().name(), true));
        Map<String, Object> model = new HashMap<>();
        model.put("sheet", sheet);
        model.put("strip", strip);
        model.put("title", "How " + sheet.carcase().name() + " was trimmed");
        model.put("writes", writes);
        model.put("steps", TrimView.steps(sheet, curriculum.get(), weighed.trim(sheet)));
        model.put("form", form);
        ctx.render("weighing/trim.html", model);
    }
}
