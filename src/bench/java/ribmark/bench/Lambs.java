package ribmark.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import ribmark.basics.Side;
import ribmark.basics.Weight;
import ribmark.curriculum.Curriculum;
import ribmark.proof.ContentInUse;
import ribmark.scoring.ReferenceTable;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.scoring.Scale;
import ribmark.weighup.CarcaseReading;
import ribmark.weighup.Reading;
import ribmark.weighup.WeighUp;

/** Made-up lambs cut as the finest table of the lamb expects, the sides of each pair weighed apart; the same ones in every run. */
final class Lambs {

    static final int MANY = 100;

    static final Curriculum CONTENT = ContentInUse.read(Optional.empty()).curriculum();
    static final ReferenceTable TABLE = CONTENT.table("uk-joints").orElseThrow();

    private static final Scale RAIL = new Scale("rail", "Rail", 20, 10);
    private static final Scale BLOCK = new Scale("block", "Block", 5, 2);

    private Lambs() {}

    static List<WeighUp> many() {
        Random random = new Random(20261130);
        return Stream.generate(() -> lamb(random)).limit(MANY).toList();
    }

    private static WeighUp lamb(Random random) {
        long grams = 16_500 + random.nextInt(7_000);
        var carcase = new CarcaseReading(new Weight(grams), false, true, Optional.of("3L"), Optional.empty(), RAIL);
        List<Reading> readings = new ArrayList<>();
        for (Row row : TABLE.rows()) {
            double of = grams * (row.expected() + row.sd() * random.nextGaussian() / 4) / 100;
            if (row.pair()) {
                readings.add(reading(row, Side.LEFT, of / 2));
                readings.add(reading(row, Side.RIGHT, of / 2));
            } else {
                readings.add(reading(row, Side.ONCE, of));
            }
        }
        return new WeighUp(
                carcase,
                List.of(TABLE),
                readings,
                List.of(),
                CONTENT.breakdown().formula().toString());
    }

    private static Reading reading(Row row, Side side, double grams) {
        return Reading.of(row.cut(), side, new Weight(5 * Math.round(grams / 5)), BLOCK);
    }
}
