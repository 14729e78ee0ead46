package ribmark;

import java.time.ZoneId;
import java.util.function.Supplier;
import ribmark.curriculum.Curriculum;
import ribmark.cuttingtests.TablePages;
import ribmark.scales.ScalePages;
import ribmark.web.Routes;
import ribmark.weighing.ExpectedPages;
import ribmark.weighing.ScorePages;
import ribmark.weighing.SlipQuestionPages;
import ribmark.weighing.TrimPages;
import ribmark.weighing.WeighUpPages;

/** The pages of everything that is weighed, measured and scored, wired by hand. */
final class AtTheScale {

    private final Stores stores;
    private final Supplier<Curriculum> curriculum;
    private final ZoneId zone;

    AtTheScale(Stores stores, ZoneId zone) {
        this.stores = stores;
        this.curriculum = stores.content::curriculum;
        this.zone = zone;
    }

    void addTo(Routes routes) {
        new SlipQuestionPages(stores.answering, stores.carcases, curriculum).addTo(routes);
        new WeighUpPages(
                        stores.weighUps,
                        stores.weighed,
                        stores.slipAnswers,
                        stores.answering,
                        stores.carcases,
                        stores.sheets,
                        stores.scaleChecks,
                        curriculum,
                        zone)
                .addTo(routes);
        new ScorePages(stores.weighed, stores.keptScores, stores.cuttingTests, stores.carcases, curriculum, zone)
                .addTo(routes);
        new TablePages(stores.ownTables, stores.carcases, curriculum, zone).addTo(routes);
        new ScalePages(stores.scaleChecks, curriculum, zone).addTo(routes);
        new ExpectedPages(stores.weighed, stores.sheets, curriculum, zone).addTo(routes);
        new TrimPages(stores.weighUps, stores.weighed, stores.sheets, curriculum).addTo(routes);
    }
}
