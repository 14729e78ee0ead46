package ribmark.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import ribmark.carcase.Carcase;
import ribmark.carcase.Reweighed;
import ribmark.curriculum.Curriculum;
import ribmark.scoring.Conditions;
import ribmark.scoring.Vertebrae;
import ribmark.weighing.Assembly.Placed;
import ribmark.weighup.CarcaseReading;
import ribmark.weighup.TrimReading;
import ribmark.weighup.WeighUp;
import ribmark.weighup.WeighUpScore;

/** Everything weighed on one carcase, reckoned through as the {@code score} command does, and put into lines to read. */
final class Reckoning {

    private final Assembly assembly;
    private final WeighUpScore score;
    private final Pieces pieces;
    private final Saying saying;

    /** At least one reading must count. */
    Reckoning(
            Curriculum curriculum,
            CarcaseReading carcase,
            Pieces pieces,
            List<KeptReading> counting,
            List<TrimReading> trim) {
        this.assembly = new Assembly(curriculum, pieces, counting);
        this.pieces = pieces;
        this.saying = new Saying(curriculum);
        WeighUpScore reckoned = WeighUpScore.of(assembly.weighUp(carcase, trim));
        this.score = reckoned.withInner(assembly.inner(reckoned));
    }

    /** How the carcase itself came to the scale. */
    static CarcaseReading reading(Curriculum curriculum, Carcase carcase) {
        boolean counted = carcase.thoracic().isPresent() || carcase.lumbar().isPresent();
        String usual = curriculum.breakdown().formula().toString();
        return new CarcaseReading(
                carcase.ownWeight(),
                carcase.hot(),
                carcase.kidneysIn(),
                carcase.fatClass(),
                counted ? Optional.of(carcase.formula(usual)) : Optional.empty(),
                Assembly.scale(curriculum, carcase.scaleId()),
                carcase.lastWeighed()
                        .flatMap(Reweighed::text)
                        .orElse(carcase.ownWeight().kilograms()));
    }

    /** What tables ask of a carcase. */
    static Conditions conditions(Curriculum curriculum, CarcaseReading carcase) {
        return carcase.conditions(curriculum.tables().get(0).hot())
                .counted(carcase.against(curriculum.breakdown().formula().toString()));
    }

    /** How the vertebrae counted on a carcase differ from the usual ones. */
    static Vertebrae vertebrae(Curriculum curriculum, Carcase carcase) {
        return reading(curriculum, carcase)
                .against(curriculum.breakdown().formula().toString());
    }

    WeighUpScore score() {
        return score;
    }

    WeighUp weighUp() {
        return score.weighUp();
    }

    List<Placed> placed() {
        return assembly.placed();
    }

    List<Placed> coarser() {
        return assembly.coarser().values().stream().flatMap(List::stream).toList();
    }

    Saying saying() {
        return saying;
    }

    Pieces pieces() {
        return pieces;
    }

    /** A line for each cut of the carcase, one for each pair weighed side by side, then one for each piece that is only balanced. */
    List<PageLine> lines() {
        return lines(score, Optional.empty());
    }

    /** The same for what one block sheet freed, judged on the balance of the whole carcase. */
    List<PageLine> lines(UUID sheet) {
        return lines(score.freedOn(sheet.toString()), Optional.of(sheet));
    }

    private List<PageLine> lines(WeighUpScore part, Optional<UUID> sheet) {
        List<PageLine> lines = new ArrayList<>();
        part.cuts().forEach(cut -> lines.add(saying.cut(cut, part.weighUp())));
        part.pairs().forEach(pair -> lines.add(saying.pair(pair)));
        placed().stream()
                .filter(placed ->
                        sheet.isEmpty() || placed.kept().typed().sheet().equals(sheet))
                .filter(placed -> part.balancedOnly().contains(placed.reading()))
                .forEach(placed -> lines.add(saying.balancedOnly(
                        placed.reading(), weighUp(), pieces.of(placed.kept()), name(placed.kept()))));
        return lines;
    }

    /** What a reading's piece is called. */
    String name(KeptReading reading) {
        return pieces.of(reading)
                .map(Piece::name)
                .orElseGet(() -> reading.typed().cut());
    }
}
