package ribmark.weighing;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import ribmark.basics.Ids;
import ribmark.blocksheet.AnimalView;
import ribmark.blocksheet.BlockSheet;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.carcase.ThisAnimal;
import ribmark.curriculum.Curriculum;
import ribmark.people.Access;
import ribmark.people.Acting;
import ribmark.web.Allow;
import ribmark.web.Role;
import ribmark.web.Routes;
import ribmark.weighing.WeighUpView.Pair;

/** Where everybody at the block reads what comes free from this animal, with how many bones, and what is still to be weighed. */
public final class ExpectedPages {

    private final WeighedCarcases weighed;
    private final BlockSheetStore sheets;
    private final Supplier<Curriculum> curriculum;
    private final ZoneId zone;

    /** The sheet says which steps are watched; the count on its carcase moves bones and weights. */
    public ExpectedPages(
            WeighedCarcases weighed, BlockSheetStore sheets, Supplier<Curriculum> curriculum, ZoneId zone) {
        this.weighed = weighed;
        this.sheets = sheets;
        this.curriculum = curriculum;
        this.zone = zone;
    }

    /** Adds the address. */
    public void addTo(Routes routes) {
        routes.page(
                "/block-sheets/{id}/pieces",
                this::show,
                Allow.of(Role.ASSESSOR, Role.TUTOR).own(Role.APPRENTICE));
    }

    private void show(Context ctx) {
        Acting acting = Access.signedIn(ctx);
        BlockSheet sheet = sheets.find(Ids.of(ctx.pathParam("id")), acting);
        ThisAnimal animal = ThisAnimal.of(sheet.carcase(), curriculum.get());
        ExpectedView view = ExpectedView.of(sheet, animal, weighed.expected(sheet.carcase()));
        Map<String, Object> model = new HashMap<>();
        model.put("title", "What comes free from " + sheet.carcase().name());
        model.put(
                "pairs",
                List.of(
                        new Pair("Apprentice", sheet.apprentice().name(), false),
                        new Pair("Carcase", sheet.carcase().title(), false),
                        new Pair(animal.caption(), animal.inShort(), true)));
        model.put("sheet", sheet);
        model.put("staff", acting.as(Role.ASSESSOR) || acting.as(Role.TUTOR));
        model.put("animal", AnimalView.of(sheet, animal, zone));
        model.put("stages", view.stages());
        model.put("left", view.leftInWords());
        ctx.render("weighing/pieces.html", model);
    }
}
