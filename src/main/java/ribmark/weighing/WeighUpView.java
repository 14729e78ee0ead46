package ribmark.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.UUID;
import ribmark.basics.Words;
import ribmark.carcase.Carcase;
import ribmark.curriculum.Curriculum;
import ribmark.scoring.ReferenceTable;
import ribmark.weighup.Numbers;
import ribmark.weighup.PairChecked;
import ribmark.weighup.Reasons;
import ribmark.weighup.WeighUpScore;

/** The weigh-up of a carcase as it is read. */
public record WeighUpView(
        UUID id,
        String title,
        List<Pair> strip,
        String last,
        BalanceView balance,
        List<BalanceView> inner,
        List<PageLine> lines,
        List<PageLine.OfSheet> sheets,
        String score,
        List<String> notes,
        String standing,
        List<ReferenceTable> tables,
        List<ReadingView> readings,
        List<Link> links) {

    /** A pair of the ticket strip; kept says that the caption stays on a phone. */
    public record Pair(String caption, String value, boolean kept) {}

    /** Where one can go from here. */
    public record Link(String href, String words) {}

    static List<Pair> strip(Carcase carcase, Curriculum curriculum) {
        return List.of(
                new Pair("Carcase", carcase.title(), false),
                new Pair(
                        (carcase.hot() ? "Hot" : "Cold") + ", kidneys " + (carcase.kidneysIn() ? "in" : "out"),
                        carcase.ownWeight().toString(),
                        true),
                new Pair("Scale", ReadingView.scaleInWords(Assembly.scale(curriculum, carcase.scaleId())), true),
                new Pair("Weighed by", carcase.recordedBy().name(), true));
    }

    static String title(Carcase carcase, boolean writes) {
        return writes ? "Weigh " + carcase.name() + " as it comes apart" : "Weigh-up of " + carcase.name();
    }

    /** Nothing weighed yet. */
    static WeighUpView empty(
            Carcase carcase, Curriculum curriculum, boolean writes, List<ReadingView> readings, List<Link> links) {
        return new WeighUpView(
                carcase.id(),
                title(carcase, writes),
                strip(carcase, curriculum),
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                null,
                List.of(),
                null,
                List.of(),
                readings,
                links);
    }

    /** The same with everything reckoned; a line that is all one apprentice's stands with theirs. */
    WeighUpView with(Reckoning reckoning, KeptReading newest, List<PageLine.OfSheet> ofSheets) {
        return new WeighUpView(
                id,
                title,
                strip,
                Words.inside(reckoning.name(newest)) + ", " + newest.net(),
                BalanceView.ofCarcase(reckoning, strip.get(0).value()),
                reckoning.score().innerBalances().stream()
                        .map(balance -> BalanceView.ofPart(reckoning, balance))
                        .toList(),
                reckoning.lines().stream()
                        .filter(line -> ofSheets.stream()
                                .noneMatch(sheet -> sheet.lines().contains(line)))
                        .toList(),
                ofSheets,
                scores(reckoning.score()),
                notes(reckoning.score()),
                Reasons.standing(reckoning.weighUp()),
                reckoning.weighUp().tables(),
                readings,
                links);
    }

    /** What has to be said and is not said by a line of its own. */
    private static List<String> notes(WeighUpScore score) {
        List<String> pairs = score.pairs().stream().map(PairChecked::sentence).toList();
        return score.notes().stream().filter(note -> !pairs.contains(note)).toList();
    }

    private static String scores(WeighUpScore score) {
        List<String> parts = new ArrayList<>();
        scored(parts, "Yield", score.yieldScore());
        scored(parts, "Trim", score.trimScore());
        return parts.isEmpty()
                ? null
                : Words.list(parts)
                        + ", each of 100. Yield is the mean of the cuts weighed, by what is expected of each.";
    }

    private static void scored(List<String> parts, String what, OptionalDouble score) {
        score.ifPresent(s -> parts.add(what + " score\u00a0" + Numbers.places(s, 0)));
    }
}
