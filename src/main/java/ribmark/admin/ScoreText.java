package ribmark.admin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribmark.scoring.TrimConformity;
import ribmark.slips.Finding;
import ribmark.slips.Model;
import ribmark.weighup.Balance;
import ribmark.weighup.Count;
import ribmark.weighup.FindingText;
import ribmark.weighup.PairChecked;
import ribmark.weighup.Reading;
import ribmark.weighup.Reasons;
import ribmark.weighup.ScoredCut;
import ribmark.weighup.VerdictLine;
import ribmark.weighup.WeighUpScore;
import ribmark.weighupfile.References;

/** A reckoned weigh-up as lines for people, each followed by its reason when that is asked for. */
final class ScoreText {

    private final boolean explain;
    private final List<String> lines = new ArrayList<>();

    private ScoreText(boolean explain) {
        this.explain = explain;
    }

    static List<String> lines(WeighUpScore score, References tables, boolean explain) {
        return new ScoreText(explain).of(score, tables);
    }

    private List<String> of(WeighUpScore score, References tables) {
        Optional<Model> model = tables.weighing();
        add(score.balance().sentence(), Reasons.of(score.balance()));
        for (Balance balance : score.innerBalances()) {
            add("Inside the " + balance.of() + ": " + balance.sentence(), Reasons.of(balance));
        }
        score.reconciliation().ifPresent(tree -> VerdictLine.of(tree).ifPresent(line -> add(line, Reasons.of(tree))));
        score.notes().forEach(lines::add);
        model.ifPresent(m -> score.finding(model).ifPresent(found -> said(score, found, new FindingText(m))));
        for (ScoredCut cut : score.cuts()) {
            add(VerdictLine.of(cut), Reasons.of(cut));
        }
        for (PairChecked pair : score.pairs()) {
            add(VerdictLine.of(pair), Reasons.of(pair));
        }
        for (Reading reading : score.balancedOnly()) {
            lines.add("Balanced only. " + reading.cut() + ": " + reading.net() + ".");
        }
        for (TrimConformity trim : score.trim().measured()) {
            add(VerdictLine.of(trim), Reasons.of(trim));
        }
        score.costing(tables.prices()).ifPresent(worth -> add(worth.sentence(), worth.lines()));
        add(VerdictLine.ofYield(score) + " " + VerdictLine.ofTrim(score), Reasons.ofScores(score));
        lines.add(Reasons.standing(score.weighUp()));
        return lines;
    }

    private void said(WeighUpScore score, Finding found, FindingText text) {
        if (found.saying().isPresent()) {
            Count.all(score.weighUp()).forEach(count -> add(count.sentence(), List.of(Count.BEFORE)));
        }
        List<String> said = text.lines(found);
        lines.addAll(said);
        if (explain && !said.isEmpty()) {
            text.reasons(found).forEach(reason -> lines.add("    " + reason));
        }
    }

    private void add(String line, List<String> reasons) {
        lines.add(line);
        if (explain) {
            reasons.forEach(reason -> lines.add("    " + reason));
        }
    }
}
