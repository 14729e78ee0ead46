package ribmark.weighing;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Stream;
import ribmark.basics.Ids;
import ribmark.basics.NotFound;
import ribmark.basics.Refused;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.carcase.Carcase;
import ribmark.carcase.CarcaseStore;
import ribmark.curriculum.Curriculum;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.scales.CheckedInWords;
import ribmark.scales.ScaleCheckStore;
import ribmark.slips.Finding;
import ribmark.web.Allow;
import ribmark.web.Form;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.web.Site;
import ribmark.weighing.EntryView.Weighed;
import ribmark.weighing.PageLine.Fact;
import ribmark.weighing.WeighUpView.Link;

/** Where pieces are put on the scale one by one, and where the balance and every share can be read. */
public final class WeighUpPages {

    private final WeighUpStore store;
    private final WeighedCarcases weighed;
    private final SlipAnswerStore answers;
    private final Answering answering;
    private final CarcaseStore carcases;
    private final BlockSheetStore sheets;
    private final ScaleCheckStore checks;
    private final Supplier<Curriculum> curriculum;
    private final ZoneId zone;

    /** Carcases and sheets say what may be weighed and for whom; questions stand in the way of nothing; the zone is the college's. */
    public WeighUpPages(
            WeighUpStore store,
            WeighedCarcases weighed,
            SlipAnswerStore answers,
            Answering answering,
            CarcaseStore carcases,
            BlockSheetStore sheets,
            ScaleCheckStore checks,
            Supplier<Curriculum> curriculum,
            ZoneId zone) {
        this.store = store;
        this.weighed = weighed;
        this.answers = answers;
        this.answering = answering;
        this.carcases = carcases;
        this.sheets = sheets;
        this.checks = checks;
        this.curriculum = curriculum;
        this.zone = zone;
    }

    /** Adds the addresses. */
    public void addTo(Routes routes) {
        routes.page("/weigh-ups/{carcase}", this::show, Allow.of(Role.ASSESSOR, Role.TUTOR));
        routes.post("/weigh-ups/{carcase}/readings", this::keep, Allow.of(Role.ASSESSOR));
        routes.post("/weigh-ups/{carcase}/readings/{id}/strike", this::strike, Allow.of(Role.ASSESSOR));
    }

    private void show(Context ctx) {
        Carcase carcase = carcase(ctx);
        Form form = prefilled(carcase, Access.signedIn(ctx));
        String piece = ctx.queryParam("piece");
        render(ctx, carcase, piece == null ? form : form.with("piece", piece));
    }

    private void keep(Context ctx) {
        Carcase carcase = carcase(ctx);
        if (!carcase.isAccepted()) {
            throw new Refused(carcase.title() + " is " + carcase.decision().standing()
                    + ". Nothing is weighed until it is accepted.");
        }
        Form form = Form.typed(ctx);
        Weighed on = weighedOn(carcase, Access.signedIn(ctx));
        List<BlockSheet> open =
                sheets.allOf(carcase.id()).stream().filter(BlockSheet::isOpen).toList();
        var typed = new WeighUpForm(form, on.pieces(), on.curriculum(), open, on.wholes()).read();
        if (typed.isEmpty()) {
            render(ctx.status(422), carcase, form);
            return;
        }
        store.keep(carcase.id(), typed.get(), Access.signedIn(ctx));
        String stage = "?stage=" + stage(form.value("stage"), on);
        Site.see(ctx, "/weigh-ups/" + carcase.id() + (isAsked(carcase) ? "/question" : stage));
    }

    private boolean isAsked(Carcase carcase) {
        return answering.asked(carcase).isPresent()
                || answering.askedOfCarcase(carcase).isPresent();
    }

    private void strike(Context ctx) {
        Carcase carcase = carcase(ctx);
        KeptReading reading =
                store.find(carcase.id(), Ids.of(ctx.pathParam("id"))).orElseThrow(NotFound::new);
        if (!reading.counts()) {
            throw new Refused("This reading is off the list already.");
        }
        Form form = Form.typed(ctx);
        String field = "why-" + reading.id();
        String why = form.words(field, "Why it comes off", "Say it in a few words, for example: read wrongly.");
        if (form.wrong()) {
            render(ctx.status(422), carcase, usual(form, carcase, Access.signedIn(ctx)));
            return;
        }
        store.strike(reading, why, Access.signedIn(ctx));
        Site.see(ctx, "/weigh-ups/" + carcase.id());
    }

    private Carcase carcase(Context ctx) {
        return carcases.find(Ids.of(ctx.pathParam("carcase")));
    }

    private Form prefilled(Carcase carcase, Acting acting) {
        return usual(Form.blank(), carcase, acting);
    }

    /** Tray and scale as they were used last. */
    private Form usual(Form form, Carcase carcase, Acting acting) {
        List<KeptReading> counting = counting(carcase);
        String tray = counting.isEmpty()
                ? WeighUpForm.NO_TRAY
                : counting.get(counting.size() - 1)
                        .typed()
                        .tare()
                        .map(tare -> tare.kilograms())
                        .orElse(WeighUpForm.NO_TRAY);
        String scale = store.lastScale(acting.id())
                .filter(id -> curriculum.get().scale(id).isPresent())
                .orElse(curriculum.get().scales().get(0).id());
        return form.with("tray", tray).with("scale", scale).with("sheet", WeighUpForm.AS_SHEETS_SAY);
    }

    private List<KeptReading> counting(Carcase carcase) {
        return store.of(carcase.id()).stream().filter(KeptReading::counts).toList();
    }

    private Weighed weighedOn(Carcase carcase, Acting acting) {
        Curriculum content = curriculum.get();
        return new Weighed(
                content,
                Pieces.of(content, Reckoning.reading(content, carcase)),
                counting(carcase),
                seen(carcase, acting));
    }

    private List<BlockSheet> seen(Carcase carcase, Acting acting) {
        return sheets.allOf(carcase.id()).stream()
                .filter(sheet -> maySee(sheet.id(), acting))
                .toList();
    }

    private boolean maySee(UUID sheet, Acting acting) {
        try {
            sheets.find(sheet, acting);
            return true;
        } catch (NotFound notTheirs) {
            return false;
        }
    }

    private static String stage(String asked, Weighed on) {
        return on.stages().stream().anyMatch(stage -> stage.id().equals(asked)) ? asked : on.nextStage();
    }

    private void render(Context ctx, Carcase carcase, Form form) {
        Acting acting = Access.signedIn(ctx);
        Weighed on = weighedOn(carcase, acting);
        String asked = form.value("stage").isEmpty() ? String.valueOf(ctx.queryParam("stage")) : form.value("stage");
        Optional<Reckoning> reckoning = weighed.reckon(
                carcase, sheets.allOf(carcase.id()).stream().map(BlockSheet::id).toList());
        Map<String, Object> model = new HashMap<>();
        model.put("page", view(carcase, acting, on, reckoning));
        model.put("form", form);
        model.put("writes", acting.as(Role.ASSESSOR));
        model.put("held", carcase.isAccepted() ? null : carcase.decision().standing());
        boolean open =
                List.of("tare", "scale", "sheet", "partOf").stream().anyMatch(field -> form.problem(field) != null);
        model.put("entry", EntryView.of(on, stage(asked, on), new CheckedInWords(checks, zone), open));
        addDoubts(model, carcase, reckoning);
        ctx.render("weighing/weigh-up.html", model);
    }

    /** What the weights say of themselves, reckoned once for the page. */
    private void addDoubts(Map<String, Object> model, Carcase carcase, Optional<Reckoning> reckoning) {
        model.put("question", null);
        model.put("fits", List.of());
        reckoning.ifPresent(r -> {
            Optional<Finding> finding = weighed.finding(r);
            model.put("fits", weighed.findingLines(r, carcase, finding));
            answering
                    .open(carcase, r, finding)
                    .map(question -> new SlipWords(question).title())
                    .or(() -> answering
                            .ofCarcase(carcase, r, finding)
                            .map(question -> CarcaseQuestionView.title(question.carcase())))
                    .ifPresent(title -> model.put("question", title));
        });
    }

    private WeighUpView view(Carcase carcase, Acting acting, Weighed on, Optional<Reckoning> reckoning) {
        List<BlockSheet> seen = seen(carcase, acting);
        List<ReadingView> readings = readings(carcase, on);
        WeighUpView empty =
                WeighUpView.empty(carcase, on.curriculum(), acting.as(Role.ASSESSOR), readings, links(carcase, seen));
        return reckoning
                .map(r -> empty.with(r, on.counting().get(on.counting().size() - 1), ofSheets(r, seen)))
                .orElse(empty);
    }

    private List<ReadingView> readings(Carcase carcase, Weighed on) {
        List<SlipAnswer> answered = answers.of(carcase.id());
        Stream<ReadingView> pieces = store.of(carcase.id()).stream()
                .map(kept -> ReadingView.of(kept, name(on, kept), on.curriculum(), on.sheets(), zone)
                        .asked(answered.stream()
                                .filter(answer -> answer.about().contains(kept.id()))
                                .map(answer -> answer.fact(zone))
                                .toList()));
        return Stream.concat(whole(carcase, answered, on).stream(), pieces).toList();
    }

    /** The weight of the carcase with what was asked about it, once anything was. */
    private Optional<ReadingView> whole(Carcase carcase, List<SlipAnswer> answered, Weighed on) {
        List<Fact> asked = answered.stream()
                .filter(SlipAnswer::isAboutCarcase)
                .map(answer -> answer.fact(zone))
                .toList();
        return asked.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        ReadingView.ofCarcase(carcase, on.curriculum(), zone).asked(asked));
    }

    private static String name(Weighed on, KeptReading kept) {
        return on.pieces().of(kept).map(Piece::name).orElse(kept.typed().cut());
    }

    private static List<PageLine.OfSheet> ofSheets(Reckoning reckoning, List<BlockSheet> seen) {
        return seen.stream()
                .map(sheet ->
                        new PageLine.OfSheet(sheet.id(), sheet.apprentice().name(), reckoning.lines(sheet.id())))
                .filter(ofSheet -> !ofSheet.lines().isEmpty())
                .toList();
    }

    private static List<Link> links(Carcase carcase, List<BlockSheet> seen) {
        List<Link> links = new ArrayList<>();
        links.add(new Link("/carcases/" + carcase.id(), carcase.title()));
        links.add(new Link("/weigh-ups/" + carcase.id() + "/scores", "What did it score?"));
        links.add(new Link("/scales", "Are the scales right?"));
        for (BlockSheet sheet : seen) {
            String whose = sheet.apprentice().name() + "’s ";
            links.add(new Link("/block-sheets/" + sheet.id(), whose + "sheet"));
            links.add(new Link("/block-sheets/" + sheet.id() + "/trim", whose + "trim"));
        }
        return links;
    }
}
