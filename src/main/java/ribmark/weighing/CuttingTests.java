package ribmark.weighing;

import java.util.Optional;
import java.util.function.Supplier;
import ribmark.basics.Refused;
import ribmark.blocksheet.BlockSheetStore;
import ribmark.carcase.Carcase;
import ribmark.curriculum.Curriculum;
import ribmark.cuttingtests.CuttingTest;
import ribmark.cuttingtests.CuttingTestStore;
import ribmark.people.Acting;

/** The way from a weigh-up to a cutting test: what it would teach, why it cannot, and entering it. */
public final class CuttingTests {

    private final WeighedCarcases weighed;
    private final CuttingTestStore tests;
    private final BlockSheetStore sheets;
    private final Supplier<Curriculum> curriculum;

    /** Weigh-ups are reckoned by the tables as they stand; sheets tell whether an apprentice was watched. */
    public CuttingTests(
            WeighedCarcases weighed, CuttingTestStore tests, BlockSheetStore sheets, Supplier<Curriculum> curriculum) {
        this.weighed = weighed;
        this.tests = tests;
        this.sheets = sheets;
        this.curriculum = curriculum;
    }

    TestOffered offered(Carcase carcase) {
        return TestOffered.of(
                carcase,
                weighed.reckonNow(carcase).map(Reckoning::score),
                !sheets.allOf(carcase.id()).isEmpty(),
                curriculum.get().tables());
    }

    /** What was told of a carcase, if anything was. */
    Optional<CuttingTest> of(Carcase carcase) {
        return tests.of(carcase.id());
    }

    /** Enters the weigh-up as the cutting test of whoever cut it; refuses what can teach nothing. */
    public void enter(Carcase carcase, String who, Acting by) {
        TestOffered offered = offered(carcase);
        offered.whyNot().ifPresent(why -> {
            throw new Refused(why);
        });
        tests.enter(carcase.id(), offered.percents(), offered.conditions(), who, by);
    }

    void takeBack(CuttingTest test, String why, Acting by) {
        tests.takeBack(test, why, by);
    }
}
