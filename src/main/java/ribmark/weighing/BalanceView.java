package ribmark.weighing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribmark.basics.Side;
import ribmark.basics.Words;
import ribmark.scoring.ReferenceTable.Row;
import ribmark.weighing.Assembly.Placed;
import ribmark.weighing.PageLine.Fact;
import ribmark.weighup.Balance;
import ribmark.weighup.Balances;
import ribmark.weighup.Numbers;
import ribmark.weighup.Reading;
import ribmark.weighup.Reasons;
import ribmark.weighup.WeighUp;
import ribmark.weighup.WeighUpScore;

/** One balance to read: the ledger of the parts in the order they came off, the whole, the gap, and what is to be said of it. */
public record BalanceView(
        String title,
        List<Line> pieces,
        Line together,
        Line whole,
        Line gap,
        String word,
        String sentence,
        List<Fact> facts,
        List<String> sentences,
        BeamView beam) {

    /** A line of the ledger; an empty figure is not known or not expected. */
    public record Line(String name, String kg, String share, String expected) {}

    /** Pieces of one name together. */
    record Group(String name, String beamName, List<Placed> placed) {

        double grams() {
            return Balances.net(placed.stream().map(Placed::reading).toList()).grams();
        }
    }

    static BalanceView ofCarcase(Reckoning reckoning, String carcase) {
        List<Group> groups = groups(reckoning, parts(reckoning, Optional.empty()));
        return of(reckoning, reckoning.score().balance(), carcase, groups, "the carcase")
                .withBeam(BeamView.of(groups, reckoning.score().balance()));
    }

    static BalanceView ofPart(Reckoning reckoning, Balance balance) {
        String name = reckoning.saying().name(balance.of(), reckoning.weighUp());
        List<Placed> parts = reckoning.coarser().stream()
                .filter(placed -> placed.reading().cut().equals(balance.of()))
                .findFirst()
                .map(whole -> ofRow(reckoning, whole.kept().typed().row().orElseThrow()))
                .orElseGet(() -> parts(reckoning, Optional.of(balance.of())));
        String title = "Out of the " + Words.inside(name);
        return of(reckoning, balance, title, groups(reckoning, parts), "the " + Words.inside(name));
    }

    private static BalanceView of(
            Reckoning reckoning, Balance balance, String title, List<Group> groups, String whole) {
        List<Fact> facts = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        Saying.sort(Reasons.of(balance), facts, sentences);
        double all = reckoning.score().balance().wholeG().doubleValue();
        return new BalanceView(
                title,
                groups.stream().map(group -> line(reckoning, group, all)).toList(),
                total("Pieces together", balance.partsG(), all),
                total(Words.capital(whole.substring(4)), balance.wholeG().doubleValue(), all),
                total("Gap", balance.gapG().doubleValue(), all),
                Words.capital(balance.verdict().word()),
                sentence(reckoning, balance, whole),
                facts,
                sentences,
                null);
    }

    private BalanceView withBeam(BeamView drawn) {
        return new BalanceView(title, pieces, together, whole, gap, word, sentence, facts, sentences, drawn);
    }

    /** The same with a question mark at the pieces in doubt. */
    BalanceView doubting(Set<String> names) {
        List<Line> marked = pieces.stream()
                .map(line -> names.contains(QuestionView.bare(line.name()))
                        ? new Line(line.name() + "?", line.kg(), line.share(), line.expected())
                        : line)
                .toList();
        return new BalanceView(title, marked, together, whole, gap, word, sentence, facts, sentences, beam);
    }

    /** The balance in words, its pieces by their names; while something is missing, also how far it has come. */
    private static String sentence(Reckoning reckoning, Balance balance, String whole) {
        List<String> missing = balance.missing().stream()
                .map(ids -> reckoning.saying().missing(ids, reckoning.weighUp()))
                .toList();
        Balance named = new Balance(
                whole.substring(4),
                balance.wholeG(),
                balance.wholeVarianceG2(),
                balance.partsG(),
                balance.partsVarianceG2(),
                missing,
                balance.limits());
        String said = named.sentence();
        String sentence = said.substring(said.indexOf(". ") + 2);
        return balance.verdict() == Balance.Verdict.INCOMPLETE ? sentence + " " + soFar(balance) : sentence;
    }

    private static String soFar(Balance balance) {
        double gap = balance.gapG().doubleValue();
        String doubt = " ± " + Numbers.kilograms(balance.gapExpandedUncertaintyG()) + "\u00a0kg";
        if (balance.moreCameOff()) {
            return "Already " + Numbers.kilograms(-gap) + doubt
                    + " more came off than went on. Look for the slip before you go on.";
        }
        return "So far " + Numbers.kilograms(balance.partsG()) + " of "
                + Numbers.kilograms(balance.wholeG().doubleValue()) + "\u00a0kg; " + Numbers.kilograms(Math.abs(gap))
                + doubt
                + (gap < 0 ? " too much, which the scales can explain." : " still to come.");
    }

    private static List<Placed> parts(Reckoning reckoning, Optional<String> whole) {
        return reckoning.placed().stream()
                .filter(placed -> reckoning.weighUp().wholeOf(placed.reading()).equals(whole))
                .toList();
    }

    private static List<Placed> ofRow(Reckoning reckoning, String row) {
        return reckoning.placed().stream()
                .filter(placed -> placed.reading().cut().equals(row))
                .toList();
    }

    private static List<Group> groups(Reckoning reckoning, List<Placed> parts) {
        Map<String, List<Placed>> byName = new LinkedHashMap<>();
        parts.stream()
                .sorted(java.util.Comparator.comparingInt(placed -> reckoning
                        .pieces()
                        .order(
                                placed.kept().typed().cut(),
                                placed.kept().typed().side())))
                .forEach(placed -> byName.computeIfAbsent(reckoning.name(placed.kept()), n -> new ArrayList<>())
                        .add(placed));
        List<Group> groups = new ArrayList<>();
        byName.forEach((name, placed) -> groups.add(new Group(name, beamName(reckoning, placed.get(0)), placed)));
        return groups;
    }

    private static String beamName(Reckoning reckoning, Placed placed) {
        return reckoning
                .pieces()
                .of(placed.kept())
                .map(p -> p.cut().name())
                .orElse("")
                .toLowerCase(Locale.ROOT);
    }

    private static Line line(Reckoning reckoning, Group group, double all) {
        Reading reading = group.placed().get(0).reading();
        WeighUp weighUp = reckoning.weighUp();
        String expected = weighUp.row(reading.cut())
                .filter(row -> WeighUpScore.atItsMoment(weighUp, row))
                .map(row -> reading.side() == Side.ONCE ? row : row.oneSide())
                .map(Row::expected)
                .map(percent -> Numbers.places(percent, 1))
                .orElse("");
        String again =
                group.placed().size() > 1 ? " (" + Words.count(group.placed().size()) + " readings)" : "";
        return new Line(
                group.name() + again,
                Numbers.kilograms(group.grams()),
                Numbers.places(100 * group.grams() / all, 1),
                expected);
    }

    private static Line total(String name, double grams, double all) {
        return new Line(name, Numbers.kilograms(grams), Numbers.places(100 * grams / all, 1), "");
    }
}
